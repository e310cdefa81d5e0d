import { expect, type Page } from '@playwright/test';
import { downloadNamed, fillIn, goTo, openPage, pick, test, verdict, worked } from './walk.ts';

test('texts that make no stencil are answered in plain words', async ({ page }) => {
  await openPage(page);
  await fillIn(page, 'Ring text, top', '');
  await worked(page);
  await expect(page.getByText('Empty: nothing is cut here.')).toBeVisible();

  const top = page.getByRole('textbox', { name: 'Ring text, top' });
  await top.focus();
  await page.keyboard.insertText('PERRY '.repeat(84).slice(0, 500));
  await top.blur();
  await worked(page);
  await expect(page.getByText(/200 letters are the most/)).toBeVisible();
  // The ring text shrinks to fit its arc; it can be cut, but its counters are lost, and that is said once, beside the finest stroke.
  await expect(verdict(page)).toHaveText('Holds together, 2 things to look at');
  await says(page, /speck of metal inside letter P, letter R/);
  await says(page, /do(es)? not fit|too (long|small|narrow|thin)|smaller|room|shorter|fewer/i);

  await fillIn(page, 'Ring text, top', 'PERRY \u{1F942} \u6885');
  await worked(page);
  await says(page, /\u{1F942}/u);
  await expect(page.getByRole('textbox', { name: 'Ring text, bottom' })).toHaveValue('AGED IN OLD OAK');
});

test('diameters that make no sense are answered in plain words', { tag: '@long' }, async ({ page }) => {
  await openPage(page);
  await goTo(page, 'size');
  await pick(page, 'I measured it');
  for (const wrong of ['0', '-300', '99999', 'as wide as the door']) {
    await fillIn(page, 'Across the boards', wrong);
    await fillIn(page, 'Along the boards', wrong);
    await worked(page);
    if (Number.isFinite(Number(wrong))) {
      await expect(verdict(page), wrong).toHaveText(/Cannot be cut yet/);
      await says(page, /cannot measure|comes to|plates can be/);
      await goTo(page, 'take');
      await expect(page.getByRole('button', { name: 'Large: DXF for the cutter' })).toBeDisabled();
      await expect(page.getByText('No cut file yet')).toBeVisible();
      await goTo(page, 'size');
    } else {
      await expect(page.getByText(/not a number we can read/).first()).toBeVisible();
    }
  }
  await fillIn(page, 'Across the boards', '528');
  await fillIn(page, 'Along the boards', '533');
  await worked(page);
  await expect(verdict(page)).toHaveText(/Holds together/);
});

test('a design file that is damaged or too new leaves the work as it is', async ({ page }) => {
  await openPage(page);
  await fillIn(page, 'Ring text, top', 'STILL HERE');
  await worked(page);
  await goTo(page, 'take');
  const saved = (await downloadNamed(page, 'Save the design file')).bytes.toString('utf8');
  await goTo(page, 'say');

  const cases: [string, string, RegExp][] = [
    ['truncated.json', saved.slice(0, saved.length / 2), /stops in the middle/],
    ['newer.json', JSON.stringify({ ...(JSON.parse(saved) as object), version: 99 }), /version 99/],
    ['other.json', '{"hello": 1}', /not a Bridgehead design/],
    ['empty.json', '', /file is empty/],
    ['picture.json', '\u0089PNG\r\n', /cannot be read/],
  ];
  for (const [name, text, sentence] of cases) {
    await page.getByRole('button', { name: 'Begin anew' }).click();
    await give(page, 'open-design', name, Buffer.from(text, 'utf8'));
    await expect(page.getByRole('status').filter({ hasText: sentence }), name).toBeVisible();
    await goTo(page, 'say');
    await expect(page.getByRole('textbox', { name: 'Ring text, top' })).toHaveValue('STILL HERE');
  }

  await page.getByRole('button', { name: 'Begin anew' }).click();
  await page.getByRole('button', { name: 'An empty head' }).click();
  await page.getByRole('button', { name: 'Begin anew' }).click();
  await give(page, 'open-design', 'mine.json', Buffer.from(saved, 'utf8'));
  await expect(page.getByRole('textbox', { name: 'Ring text, top' })).toHaveValue('STILL HERE');
});

test('a corrupt font is answered in plain words', { tag: '@long' }, async ({ page }) => {
  await openPage(page);
  await goTo(page, 'look');
  const noise = Buffer.from(Uint8Array.from({ length: 4000 }, (_, i) => (i * 37) % 251));
  await give(page, 'own-face', 'broken.ttf', noise);
  await expect(page.getByRole('alert').filter({ hasText: /font/i })).toBeVisible();
  await goTo(page, 'say');
  await expect(page.getByRole('textbox', { name: 'Ring text, top' })).toHaveValue('MARROW LANE PERRY');
});

test('a browser without room says so, and the work goes on', { tag: '@long' }, async ({ page }) => {
  await page.addInitScript(() => {
    IDBObjectStore.prototype.put = () => {
      throw new DOMException('no room', 'QuotaExceededError');
    };
  });
  await openPage(page);
  await fillIn(page, 'Ring text, top', 'NO ROOM LEFT');
  await worked(page);
  await expect(page.getByText(/no room left to save/)).toBeVisible();
  await expect(page.getByRole('textbox', { name: 'Ring text, top' })).toHaveValue('NO ROOM LEFT');
  await goTo(page, 'take');
  const saved = await downloadNamed(page, 'Save the design file');
  expect(saved.bytes.toString('utf8')).toContain('NO ROOM LEFT');
});

/** Among the findings stands a sentence like this. */
async function says(page: Page, sentence: RegExp): Promise<void> {
  const show = page.getByRole('button', { name: /Show findings|notes?$/ });
  if (await show.isVisible()) await show.click();
  await expect(page.getByRole('list', { name: 'Findings' }).getByText(sentence).first()).toBeVisible();
}

async function give(page: Page, input: string, name: string, buffer: Buffer): Promise<void> {
  await page.getByTestId(input).setInputFiles({ name, mimeType: 'application/octet-stream', buffer });
}
