import { expect, type BrowserContext, type Page } from '@playwright/test';
import { goTo, questionButton, test, verdict, worked } from './walk.ts';

test.use({ serviceWorkers: 'block' });

const TOP = 'Ring text, top';

test('a part of the page that is gone from the server leaves the rest, and comes when it is asked for again', async ({
  context,
}) => {
  const page = await openAndType(context, 'HARBOUR 1931');
  await context.route(/\/assets\/SizePanel-/, (route) => route.fulfill({ status: 404, body: '' }));
  await questionButton(page, 'size').click();
  await expect(page.getByText('This part of the page could not be loaded.')).toBeVisible();
  await expect(verdict(page)).toBeVisible();
  await context.unrouteAll();
  await page.getByRole('button', { name: 'Load again' }).click();
  await expect(page.getByTestId('part-failed')).toHaveCount(0);
  await goTo(page, 'say');
  await expect(page.getByRole('textbox', { name: TOP })).toHaveValue('HARBOUR 1931');
});

test(
  'a page that ended over its work opens without it, and works it out when it is asked to',
  { tag: '@long' },
  async ({ context }) => {
    const first = await openAndType(context, 'HARBOUR 1931');
    await worked(first);
    // from here on what works plates out never answers
    await context.route(/plate-worker-/, () => undefined);
    await first.reload();
    await goTo(first, 'say');
    await first.getByRole('textbox', { name: TOP }).fill('HARBOUR 1932');
    await first.waitForTimeout(300);
    const gone = first.waitForEvent('crash');
    (await context.newCDPSession(first)).send('Page.crash').catch(() => undefined);
    await gone;
    await first.close();
    await context.unrouteAll({ behavior: 'ignoreErrors' });

    const next = await context.newPage();
    await next.goto('/');
    await expect(next.getByTestId('halt')).toContainText('The page ended last time');
    await goTo(next, 'say');
    await expect(next.getByRole('textbox', { name: TOP })).toHaveValue('HARBOUR 1932');
    await expect(next.getByTestId('halt')).toBeVisible();
    await next.getByRole('button', { name: 'Work it out now' }).click();
    await worked(next);
    await expect(next.getByTestId('halt')).toHaveCount(0);
  },
);

test(
  'all designs go into one file and come back in another browser',
  { tag: '@long' },
  async ({ context, browser }) => {
    const page = await openAndType(context, 'HARBOUR 1931');
    await page.waitForTimeout(600);
    await page.getByRole('button', { name: 'My designs' }).click();
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save all as one file' }).click(),
    ]);
    const file = await download.path();
    const elsewhere = await browser.newContext();
    const other = await elsewhere.newPage();
    await other.goto(page.url());
    await other.getByRole('button', { name: 'My designs' }).click();
    const [chooser] = await Promise.all([
      other.waitForEvent('filechooser'),
      other.getByRole('button', { name: 'Add designs from such a file' }).click(),
    ]);
    await chooser.setFiles(file);
    await expect(other.getByText('1 design was added.')).toBeVisible();
    await other
      .getByRole('dialog')
      .getByRole('button', { name: /^Open / })
      .click();
    await goTo(other, 'say');
    await expect(other.getByRole('textbox', { name: TOP })).toHaveValue('HARBOUR 1931');
    await elsewhere.close();
  },
);

test('a worker that hangs is ended, and says so', { tag: '@long' }, async ({ context }) => {
  const page = await openAndType(context, 'HARBOUR 1931');
  await context.addInitScript(() => {
    window.Worker = class extends EventTarget {
      constructor() {
        super();
        setTimeout(() => this.dispatchEvent(new MessageEvent('message', { data: { 'bridgehead-beat': 'idle' } })), 50);
      }
      postMessage(): void {
        // never answers
      }
      terminate(): void {
        // is gone
      }
    } as unknown as typeof Worker;
  });
  await page.reload();
  await expect(page.getByTestId('halt')).toContainText('took too long', { timeout: 90_000 });
  await expect(page.getByRole('button', { name: 'Try again' })).toBeVisible();
});

async function openAndType(context: BrowserContext, text: string): Promise<Page> {
  const page = await context.newPage();
  await page.goto('/');
  await goTo(page, 'say');
  await page.getByRole('textbox', { name: TOP }).fill(text);
  return page;
}
