import { expect, type Page } from '@playwright/test';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { goTo, openPage, test, worked } from './walk.ts';

const STARTING = fileURLToPath(new URL('../geometry/stock/starting-stock.json', import.meta.url));

/** The shop's own: the one that ships with a word changed. */
function ownStock(): string {
  const text = readFileSync(STARTING, 'utf8');
  const own = text.replace('"notes": "', '"notes": "Ours. ');
  return own === text ? text.replace('"name": "', '"name": "Our ') : own;
}

async function stockIs(page: Page, answer: { status?: number; body?: string }): Promise<void> {
  await page.unrouteAll();
  await page.route('**/stock.json', (route) => route.fulfill({ contentType: 'application/json', ...answer }));
}

test(
  'a shop whose own numbers are gone hears of it, and has files only on purpose',
  { tag: '@long' },
  async ({ page, clean }) => {
    // The worker for work without a network would answer in place of the routes below: this browser refuses it.
    await page.addInitScript(`ServiceWorkerContainer.prototype.register = () => Promise.reject(new Error('refused'))`);
    await stockIs(page, { body: ownStock() });
    await openPage(page);
    await worked(page);
    const note = page.getByTestId('numbers-missing');
    await expect(note).toHaveCount(0);

    await stockIs(page, { status: 404 });
    await page.reload();
    await expect(note).toContainText('Put the shop’s stock.json beside the page again');
    await goTo(page, 'take');
    await worked(page);
    const all = page.getByRole('button', { name: 'Download everything' });
    await expect(all).toBeDisabled();
    await expect(page.getByText('No files: the shop’s own numbers are missing.')).toBeVisible();
    await page.getByRole('checkbox', { name: 'Give files by the numbers that ship all the same' }).check();
    await expect(all).toBeEnabled();

    // On purpose is for this visit; a new build that put its own file in place of the shop's is seen too.
    await stockIs(page, { body: readFileSync(STARTING, 'utf8') });
    await page.reload();
    await expect(note).toContainText('The numbers of this shop are gone');
    await stockIs(page, { body: '{ "format": "bridgehead-stock", ' });
    await page.reload();
    await expect(note).toContainText('can’t be used');
    await stockIs(page, { body: ownStock() });
    await note.getByRole('button', { name: 'Load again' }).click();
    await worked(page);
    await expect(note).toHaveCount(0);

    await stockIs(page, { status: 404 });
    await page.reload();
    await note.getByRole('button', { name: 'This shop has no numbers of its own any more' }).click();
    await expect(note).toHaveCount(0);
    await page.reload();
    await worked(page);
    await expect(note).toHaveCount(0);
    // The browser logs each answer of 404 by itself.
    const logged = clean.splice(0);
    expect(logged.filter((fault) => !fault.endsWith('404 (Not Found)'))).toEqual([]);
  },
);
