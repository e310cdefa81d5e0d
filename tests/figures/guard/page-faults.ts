import type { BrowserContext, Page } from '@playwright/test';

/** One thing that goes wrong on the page while somebody works on it. */
export interface PageFault {
  readonly name: string;
  /** Sets it going, for all that is loaded from here on: after the letters were typed, or before. */
  arm(context: BrowserContext): Promise<unknown>;
  /** What the person does then, on the page loaded again. */
  act?(page: Page): Promise<unknown>;
  /** Where the page says so, in words. */
  readonly told?: string;
  /** The letters are typed and looked for again while it lasts: another way keeps them. */
  readonly lasts?: true;
  /** Nothing at all can be kept: the letters are looked for on the page that was not left. */
  readonly keepsNothing?: true;
}

const FAILED = '[data-testid=part-failed]';
const HALT = '[data-testid=halt]';
const WAITING = '[data-testid=waiting]';
const BAR = '[role=alert] p';
const says = (words: string): string => `text=/${words}/`;

export const missing = (file: string) => (context: BrowserContext) =>
  context.route(new RegExp(`/assets/${file}-[^/]*\\.(js|css)$`), (route) => route.fulfill({ status: 404, body: '' }));
const never = (path: RegExp) => (context: BrowserContext) => context.route(path, () => undefined);
const before = (script: string) => (context: BrowserContext) => context.addInitScript(script);

const step = (at: number) => (page: Page) => page.locator('nav').last().getByRole('button').nth(at).click();
const pressed = (name: RegExp) => (page: Page) => page.getByRole('button', { name }).first().click();
const dropped = (name: string, type: string, text: string) => (page: Page) =>
  page.evaluate(
    ([name, type, text]) => {
      const transfer = new DataTransfer();
      transfer.items.add(new File([text], name, { type }));
      for (const kind of ['dragover', 'drop']) {
        document.body.dispatchEvent(new DragEvent(kind, { dataTransfer: transfer, bubbles: true, cancelable: true }));
      }
    },
    [name, type, text] as const,
  );
/** Parts that are loaded when they are needed, each gone from the server: an old page before a new build. */
const CHUNKS: readonly PageFault[] = [
  { name: 'stage', arm: missing('StageArea'), told: FAILED },
  { name: 'text panel', arm: missing('TextPanel'), told: FAILED },
  { name: 'style panel', arm: missing('StylePanel'), act: step(1), told: FAILED },
  { name: 'size panel', arm: missing('SizePanel'), act: step(2), told: FAILED },
  { name: 'files panel', arm: missing('FilesPanel'), act: step(3), told: FAILED },
  { name: 'words of the panels', arm: missing('words-en-work'), told: FAILED },
  { name: 'list of designs', arm: missing('MyDesigns'), act: pressed(/My designs/), told: FAILED },
  {
    name: 'drawing dialog',
    arm: missing('FileDialog'),
    act: dropped('leaf.svg', 'image/svg+xml', '<svg xmlns="http://www.w3.org/2000/svg"><path d="M0 0h9v9z"/></svg>'),
    told: FAILED,
  },
  { name: 'order dialog', arm: missing('OrderDialog'), act: dropped('o.zip', 'application/zip', 'PK'), told: FAILED },
  { name: 'page Proof', arm: missing('ProofPlace'), act: pressed(/^Proof$/), told: FAILED },
  { name: 'page Cut', arm: missing('CutPage'), act: pressed(/^Cut$/), told: FAILED },
  { name: 'words of the page Cut', arm: missing('words-en-cut'), act: pressed(/^Cut$/), told: FAILED },
  { name: 'entry of the page', arm: missing('start'), told: WAITING },
  { name: 'reader of designs', arm: missing('read-design'), told: BAR },
  { name: 'stage that never answers', arm: never(/\/assets\/StageArea-/), told: FAILED },
  { name: 'page Cut that never answers', arm: never(/\/assets\/CutPage-/), act: pressed(/^Cut$/), told: FAILED },
];

/** A worker that begins and then says nothing more, whatever it is asked. */
const HANGS = `(() => {
  class Mute extends EventTarget {
    constructor() {
      super();
      setTimeout(() => this.dispatchEvent(new MessageEvent('message', { data: { 'bridgehead-beat': 'idle' } })), 50);
    }
    postMessage() {}
    terminate() {}
  }
  window.Worker = Mute;
})()`;
const DIES = `(() => {
  const Real = window.Worker;
  window.Worker = class extends Real {
    constructor(...given) {
      super(...given);
      setTimeout(() => { this.terminate(); this.dispatchEvent(new Event('error')); }, 30);
    }
  };
})()`;

const WORKERS: readonly PageFault[] = [
  { name: 'plate worker missing', arm: missing('plate-worker'), told: HALT },
  { name: 'plate worker that never comes', arm: never(/plate-worker-/), told: HALT },
  { name: 'plate worker that hangs', arm: before(HANGS), told: HALT },
  { name: 'plate worker that dies', arm: before(DIES), told: HALT },
  {
    name: 'cut worker missing',
    arm: missing('cut-worker'),
    act: pressed(/^Cut$/),
    told: says('part of the page could not be loaded'),
  },
  {
    name: 'artwork worker missing',
    arm: missing('artwork-worker'),
    act: dropped('leaf.svg', 'image/svg+xml', '<svg xmlns="http://www.w3.org/2000/svg"><path d="M0 0h9v9z"/></svg>'),
    told: '[data-testid=artwork-problem]',
  },
];

/** A request of the database's own whose events nobody hears. */
const MUTE = `const mute = (request) => {
  for (const kind of ['success', 'error', 'upgradeneeded', 'blocked']) {
    request.addEventListener(kind, (event) => event.stopImmediatePropagation());
  }
  return request;
};`;
const SHUT = 'throw new DOMException("shut", "SecurityError")';
const noStorage = `Object.defineProperty(window, 'localStorage', { get() { ${SHUT} } });`;
const noDatabase = `IDBFactory.prototype.open = () => { ${SHUT} };`;

const STORES: readonly PageFault[] = [
  {
    name: 'database that never opens',
    arm: before(`{ ${MUTE} const open = IDBFactory.prototype.open;
      IDBFactory.prototype.open = function (...given) { return mute(open.apply(this, given)); }; }`),
    lasts: true,
  },
  {
    name: 'database of earlier versions that never opens',
    arm: before(`{ ${MUTE} const open = IDBFactory.prototype.open;
      IDBFactory.prototype.open = function (name, ...more) {
        const request = open.call(this, name, ...more);
        return name === 'keyval-store' ? mute(request) : request;
      }; }`),
    lasts: true,
  },
  { name: 'database denied', arm: before(noDatabase), told: says('keeps nothing between visits'), lasts: true },
  {
    name: 'database full',
    arm: before(`IDBObjectStore.prototype.put = () => { throw new DOMException('full', 'QuotaExceededError'); };`),
    told: says('no room left'),
    lasts: true,
  },
  {
    name: 'database that opens and then never answers',
    arm: before(`{ ${MUTE} for (const name of ['get', 'getAll', 'getAllKeys', 'put']) {
      const real = IDBObjectStore.prototype[name];
      IDBObjectStore.prototype[name] = function (...given) { return mute(real.apply(this, given)); };
    } }`),
    lasts: true,
  },
  {
    name: 'database deleted under the page',
    arm: () => Promise.resolve(),
    act: (page) => page.evaluate(() => void indexedDB.deleteDatabase('bridgehead')),
  },
  { name: 'storage for notes denied', arm: before(noStorage), lasts: true },
  {
    name: 'storage for notes full',
    arm: before(`Storage.prototype.setItem = () => { throw new DOMException('full', 'QuotaExceededError'); };`),
    lasts: true,
  },
  {
    name: 'all storage denied',
    arm: before(noStorage + noDatabase),
    told: says('keeps nothing between visits'),
    keepsNothing: true,
  },
  {
    name: 'locks that never answer',
    arm: before('LockManager.prototype.request = () => new Promise(() => {});'),
    lasts: true,
  },
  {
    name: 'clock set back a year',
    arm: before('{ const now = Date.now; Date.now = () => now() - 31_536_000_000; }'),
    lasts: true,
  },
  { name: 'shop file that never answers', arm: never(/\/shop\.json/), lasts: true },
  { name: 'stock file that never answers', arm: never(/\/stock\.json/), lasts: true },
  { name: 'fonts that never come', arm: never(/\.woff2?$/), lasts: true },
  {
    name: 'second tab on the same design',
    arm: () => Promise.resolve(),
    act: async (page) => {
      const other = await page.context().newPage();
      await other.goto(page.url());
      await other.getByRole('dialog').waitFor();
      await other.close();
    },
  },
];

export const PAGE_FAULTS: readonly PageFault[] = [...CHUNKS, ...WORKERS, ...STORES];
