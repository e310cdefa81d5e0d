import { createRoot } from 'react-dom/client';
import { createDesignStore } from '../state/design-store.ts';
import { createPlatesStore } from '../state/plates-store.ts';
import { inTime } from '../state/in-time.ts';
import { havePlatesChanged } from '../state/plates-changed.ts';
import { createSavingStore } from '../state/saving-store.ts';
import { createUiStore } from '../state/ui-store.ts';
import { createWorkMark } from '../state/work-mark.ts';
import { openLinks } from '../handover/link/open-link.ts';
import { createNewerVersionStore } from '../page/newer-version.ts';
import { speak } from '../words/t.ts';
import { startPlateClient } from '../worker/plate-client.ts';
import { Boundary } from '../ui/Boundary.tsx';
import { App } from './App.tsx';
import { fetchShop } from '../page/fetch-shop.ts';
import { fetchShopStock, type ShopStock } from '../page/fetch-shop-stock.ts';
import { createStockMemory, type NumbersFound } from '../page/stock-memory.ts';
import { firstDesign } from '../design/beginnings/first-design.ts';
import { keepDesignSaved } from './keep-design-saved.ts';
import { keepPageInAddress } from './page-address.ts';
import { watchForMissingParts } from './missing-parts.ts';
import { PageContext, type Page } from '../page/page-context.ts';
import './theme.css';

/** Words that do not come keep nobody from starting. */
const LONGEST_WAIT_MS = 6000;

const stores = {
  design: createDesignStore(firstDesign()),
  ui: createUiStore(),
  plates: createPlatesStore(),
  saving: createSavingStore(),
};
const kept = keepDesignSaved(stores);
const shop = fetchShop();
const stock = stockOf(fetchShopStock());
const bookComing = stock.then(({ book }) => book);
const mark = createWorkMark(
  () => localStorage,
  () => kept.own.id(),
);
window.addEventListener('pagehide', () => mark.leave(page.client.silentS()));
// A phone ends hidden pages without another word.
document.addEventListener('visibilitychange', () => {
  if (document.visibilityState === 'hidden') mark.leave(page.client.silentS());
});
const stockMemory = createStockMemory(() => localStorage, new URL('./', location.href).pathname);
const page: Omit<Page, 'book'> = {
  ...stores,
  client: startPlateClient(stores.plates, bookComing, mark),
  own: kept.own,
  list: kept.list,
  newer: createNewerVersionStore(),
  wholeShop,
  forgetStock() {
    stockMemory.forget();
    page.ui.getState().set({ numbers: undefined, foreignFiles: false });
  },
  workAgain() {
    mark.forget();
    page.client.again(page.design.getState().history.present, page.ui.getState().plateId);
  },
};

void start().catch(() => {
  // what index.html says of a page that does not come is still in its place
  document.documentElement.classList.add('stuck');
});
watchForMissingParts(() => stores.ui.getState().set({ partMissing: true }));

async function start(): Promise<void> {
  const place = document.getElementById('page');
  if (place === null) throw new Error('no place for the page in index.html');
  // Without its words the page still speaks English.
  await inTime(speak(stores.ui.getState().language), LONGEST_WAIT_MS).catch(() =>
    stores.ui.getState().set({ language: 'en' }),
  );
  await kept.start();
  // nothing from an earlier visit: the first thing to see is what one may begin with
  if (stores.saving.getState().openId === undefined) stores.ui.getState().set({ begin: 'choose' });
  const { pages, trouble: ofShop } = await shop;
  page.ui.getState().set({ pages });
  keepPageInAddress(page.ui);
  await openLinks(page, bookComing);
  keepPlatesMade();
  const { book, found } = await stock;
  if (ofShop !== undefined) stores.ui.getState().set({ notice: await ofShop() });
  await tellOfNumbers(found);
  createRoot(place).render(
    <PageContext value={{ ...page, book }}>
      <Boundary whole>
        <App />
      </Boundary>
    </PageContext>,
  );
  afterFirstPlate(() => {
    void kept.remind();
    if (import.meta.env.PROD) void workOffline();
  });
}

let whole: ReturnType<Page['wholeShop']> | undefined;

function wholeShop(): ReturnType<Page['wholeShop']> {
  return (whole ??= shop.then((atHand) => atHand.whole()));
}

/** The stock that the shop's own file brings, or the one beside the page. */
async function stockOf(beside: Promise<ShopStock>): Promise<ShopStock> {
  const { shop: own } = await shop;
  return own?.stock ? { book: own.stock, found: { own: 'shop.json' } } : beside;
}

/** Where the shop's own numbers are missing, also those of an earlier visit, it is said until it is no longer so. */
async function tellOfNumbers(found: NumbersFound): Promise<void> {
  const missing = stockMemory.compare(found);
  if (!missing) return;
  const problem = 'problem' in missing ? await missing.problem() : undefined;
  stores.ui.getState().set({ numbers: { why: missing.why, ...(problem !== undefined && { problem }) } });
}

/** Everything else can wait until there is something to see. */
function afterFirstPlate(then: () => void): void {
  const stop = stores.plates.subscribe(({ busy }) => {
    if (busy) return;
    stop();
    setTimeout(then, 500);
  });
}

async function workOffline(): Promise<void> {
  const { workOffline: begin } = await import('./work-offline.ts');
  await begin(page.newer, () => kept.own.flush());
}

/** Each change of the design is worked out, unless it leaves plates and their findings as they are. */
function keepPlatesMade(): void {
  const work = (): void => {
    if (mark.found() && page.saving.getState().tab !== 'elsewhere') {
      page.plates.setState({ plates: {}, busy: false, trouble: undefined, halt: { why: 'before' } });
      return;
    }
    page.client.work(page.design.getState().history.present, page.ui.getState().plateId);
  };
  page.design.subscribe((now, before) => {
    if (havePlatesChanged(before.history.present, now.history.present)) work();
  });
  work();
}
