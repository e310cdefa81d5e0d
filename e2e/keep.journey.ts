import { expect, type Browser, type Page } from '@playwright/test';
import { addHalf, downloadBy, fillIn, goTo, openPage, test, worked, type Downloaded } from './walk.ts';

const TOP = 'Ring text, top';

test('a killed tab loses nothing that is older than 300 ms', async ({ context }) => {
  const first = await context.newPage();
  await beginMine(first);
  const field = first.getByRole('textbox', { name: TOP });
  await field.fill('');
  await field.pressSequentially('LONG ALIVE', { delay: 40 });
  // By the page's own clock: on a busy machine it lags behind ours.
  await first.evaluate(() => new Promise((done) => setTimeout(done, 300)));
  // the renderer is shot down: no handler of the page runs
  const gone = first.waitForEvent('crash');
  const session = await context.newCDPSession(first);
  session.send('Page.crash').catch(() => undefined);
  await gone;
  await first.close();

  const next = await context.newPage();
  await next.goto('/');
  await goTo(next, 'say');
  await expect(next.getByRole('textbox', { name: TOP })).toHaveValue('LONG ALIVE');
  // Shot down over work that had no end yet, the page may ask before it begins that work again.
  const again = next.getByRole('button', { name: 'Work it out now' });
  await expect(again.or(next.getByText(/Holds together/).first())).toBeVisible({ timeout: 60_000 });
  if (await again.isVisible()) await again.click();
  await worked(next);
});

test('two tabs on one design: told, taken over, copied, looked at', async ({ context }) => {
  test.setTimeout(300_000);
  const one = await context.newPage();
  await beginMine(one);
  await fillIn(one, TOP, 'FROM THE FIRST');
  await one.waitForTimeout(600);

  const two = await context.newPage();
  await two.goto('/');
  await expect(told(two)).toBeVisible();
  await fillIn(one, TOP, 'TYPED JUST NOW');
  await two.getByRole('button', { name: 'Take over here' }).click();
  await expect(told(two)).toHaveCount(0);
  await expect(two.getByRole('textbox', { name: TOP })).toHaveValue('TYPED JUST NOW');
  await expect(told(one)).toBeVisible();

  await one.getByRole('button', { name: 'Make a copy' }).click();
  await expect(one.getByRole('textbox', { name: 'Name of this design' })).toHaveValue(/\(copy\)$/);
  await fillIn(one, TOP, 'THE COPY');
  await fillIn(two, TOP, 'THE FIRST ONE');
  await one.waitForTimeout(600);
  expect(await designsIn(one)).toHaveLength(2);

  const three = await context.newPage();
  await three.goto('/');
  await expect(told(three)).toBeVisible();
  await three.getByRole('button', { name: 'Only look' }).click();
  await expect(three.getByRole('textbox', { name: TOP })).toBeVisible();
  await three.waitForTimeout(600);
  expect(await designsIn(three)).toHaveLength(2);
  await fillIn(three, TOP, 'COULD NOT HELP IT');
  await expect(three.getByText(/kept as a copy/)).toBeVisible();
  await three.waitForTimeout(600);
  expect(await designsIn(three)).toHaveLength(3);
});

test(
  'own designs are listed with pictures, renamed, duplicated, deleted and put back',
  { tag: '@long' },
  async ({ page }) => {
    await beginMine(page);
    await fillIn(page, 'Name of this design', 'Quiet cellar');
    await worked(page);
    await page.waitForTimeout(2500);
    await page.getByRole('button', { name: 'My designs' }).click();
    const list = page.getByRole('dialog', { name: 'My designs' });
    await expect(list.locator('svg path[fill-rule="evenodd"]').first()).toHaveAttribute('d', /^M.{500}/);

    await list.getByRole('button', { name: 'Duplicate: Quiet cellar' }).click();
    await expect(list.getByText('Quiet cellar (copy)')).toBeVisible();
    await list.getByRole('button', { name: 'Rename: Quiet cellar (copy)' }).click();
    await list.getByRole('textbox', { name: 'New name' }).fill('Loud cellar');
    await page.keyboard.press('Enter');
    await list.getByRole('button', { name: 'Delete: Loud cellar' }).click();
    await expect(list.getByText('“Loud cellar” is in the bin.')).toBeVisible();
    await list.getByRole('button', { name: 'Put it back' }).click();
    await list.getByRole('button', { name: 'Open Loud cellar' }).click();
    await expect(list).toHaveCount(0);
    await expect(page.getByRole('textbox', { name: 'Name of this design' })).toHaveValue('Loud cellar');
  },
);

test(
  'a damaged entry leaves the others as they are, and can be saved and deleted',
  { tag: '@long' },
  async ({ page }) => {
    await beginMine(page);
    await fillIn(page, 'Name of this design', 'Whole');
    await page.waitForTimeout(600);
    await page.evaluate(async () => {
      const opening = indexedDB.open('bridgehead');
      await new Promise((resolve) => (opening.onsuccess = resolve));
      const tx = opening.result.transaction(['cards', 'texts'], 'readwrite');
      tx.objectStore('cards').put({ id: 'x', title: 'Broken', changedMs: Date.now() + 60_000, revision: 1 }, 'x');
      tx.objectStore('texts').put('{"format":"bridgehead-design","vers', 'x');
      await new Promise((resolve) => (tx.oncomplete = resolve));
      opening.result.close();
      sessionStorage.clear();
    });
    await page.reload();
    await expect(page.getByText(/could not be opened; it stays in the list/)).toBeVisible();
    await expect(page.getByRole('textbox', { name: 'Name of this design' })).toHaveValue('Whole');
    await page.getByRole('button', { name: 'My designs' }).click();
    await expect(page.getByText(/^Damaged: it cannot be opened/)).toBeVisible();
    const saved = await downloadBy(page, () => page.getByRole('button', { name: 'Save as a file: Broken' }).click());
    expect(saved.bytes.toString('utf8')).toBe('{"format":"bridgehead-design","vers');
    await page.getByRole('button', { name: 'Delete: Broken' }).click();
    await expect(page.getByText('“Broken” is in the bin.')).toBeVisible();
  },
);

test('a link opened in a fresh browser gives the same cut files, byte for byte', async ({ page, browser, context }) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await beginMine(page);
  await fillIn(page, TOP, 'ÉMILE & BJØRN');
  await addHalf(page);
  await goTo(page, 'take');
  await page.getByRole('main').getByRole('button', { name: 'Copy link' }).click();
  await expect(page.getByText(/^The link is copied/)).toBeVisible();
  const url = await page.evaluate(() => navigator.clipboard.readText());
  expect(url.length).toBeLessThan(2000);

  const there = await freshPage(browser);
  await there.goto(url);
  await worked(there);
  expect(new URL(there.url()).hash).toBe('');
  await goTo(there, 'take');
  for (const button of ['Large: DXF for the cutter', 'Large: SVG drawing', 'Half size: DXF for the cutter']) {
    const [mine, theirs] = [await cutFile(page, button), await cutFile(there, button)];
    expect(theirs.name).toBe(mine.name);
    expect(theirs.bytes.equals(mine.bytes), button).toBe(true);
  }
  await there.context().close();
});

test('a damaged link is answered in plain words and leaves the work as it is', { tag: '@long' }, async ({ page }) => {
  await beginMine(page);
  await fillIn(page, TOP, 'STILL HERE');
  await page.waitForTimeout(600);
  await page.goto('/#d1.AAAAbroken');
  await expect(page.getByText(/This link is not complete/)).toBeVisible();
  // no design that somebody could take for the one that was meant
  await expect(page.getByRole('textbox')).toHaveCount(0);
  await page.getByRole('button', { name: 'Go on without the link' }).click();
  await expect(page.getByRole('textbox', { name: TOP })).toHaveValue('STILL HERE');
  expect(new URL(page.url()).hash).toBe('');
});

/** A design of one's own, out of the first ready-made beginning. */
async function beginMine(page: Page): Promise<void> {
  await openPage(page);
  await fillIn(page, TOP, 'MINE');
  await worked(page);
}

function told(page: Page) {
  return page.getByRole('dialog', { name: 'This design is open in another tab' });
}

async function designsIn(page: Page): Promise<readonly unknown[]> {
  return page.evaluate(async () => {
    const opening = indexedDB.open('bridgehead');
    await new Promise((resolve) => (opening.onsuccess = resolve));
    const asking = opening.result.transaction('cards').objectStore('cards').getAll();
    await new Promise((resolve) => (asking.onsuccess = resolve));
    opening.result.close();
    return asking.result as unknown[];
  });
}

async function freshPage(browser: Browser): Promise<Page> {
  const context = await browser.newContext({ acceptDownloads: true });
  return context.newPage();
}

function cutFile(page: Page, button: string): Promise<Downloaded> {
  return downloadBy(page, () => page.getByRole('button', { name: button, exact: true }).click());
}
