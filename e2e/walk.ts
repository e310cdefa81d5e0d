import { test as base, expect, type Locator, type Page } from '@playwright/test';
import { readFile } from 'node:fs/promises';

/**
 * The journeys' own `test`: whatever a journey does, the page may log no error, throw none, and ask nothing of any
 * machine but this one.
 */
export const test = base.extend<{ clean: string[] }>({
  clean: [
    async ({ page }, use) => {
      const faults: string[] = [];
      page.on('console', (message) => {
        if (message.type() === 'error') faults.push(`console: ${message.text()}`);
      });
      page.on('pageerror', (error) => faults.push(`thrown: ${error.message}`));
      page.context().on('request', (request) => {
        const { protocol, hostname } = new URL(request.url());
        if (/^(https?|wss?):$/.test(protocol) && hostname !== '127.0.0.1') faults.push(`asked ${request.url()}`);
      });
      await use(faults);
      expect(faults).toEqual([]);
    },
    { auto: true },
  ],
});

export type Question = 'say' | 'look' | 'size' | 'take';

const QUESTIONS: Record<Question, RegExp> = {
  say: /What shall it say/,
  look: /How does it look/,
  size: /How big is your head/,
  take: /Take it home/,
};

/** Opens the page, passes by the beginnings, and waits until the plate on it has been worked out. */
export async function openPage(page: Page): Promise<void> {
  await page.goto('/');
  await goTo(page, 'say');
  await worked(page);
}

/** The first visit as it is: the beginnings laid out, with the pictures of their plates. */
export async function openFirst(page: Page): Promise<void> {
  await page.goto('/');
  await expect(page.getByRole('heading', { level: 2, name: 'What shall it be?' })).toBeVisible();
}

/** Waits until all plates of the design as it now is have been worked out. */
export async function worked(page: Page): Promise<void> {
  await expect(verdict(page)).toHaveText(/Holds together|Cannot be cut yet/, { timeout: 60_000 });
  await expect(page.locator('[data-busy]')).toHaveCount(0, { timeout: 60_000 });
}

export function verdict(page: Page): Locator {
  return page.getByRole('region', { name: 'Findings' }).getByRole('status').first();
}

export function questionButton(page: Page, question: Question): Locator {
  return page
    .getByRole('navigation', { name: 'The four questions' })
    .getByRole('button', { name: QUESTIONS[question] });
}

export async function goTo(page: Page, question: Question): Promise<void> {
  await questionButton(page, question).click();
  const heading = page.getByRole('heading', { level: 2, name: QUESTIONS[question] });
  if (question === 'say') {
    // A beginning asks its own questions first; everything else is one press further.
    const more = page.getByRole('button', { name: 'Change anything else' });
    await expect(heading.or(more)).toBeVisible();
    if (await more.isVisible()) await more.click();
  }
  await expect(heading).toBeVisible();
  if (question === 'take') await openFiles(page);
}

/** The files are a fold below the price and the way to the shop. */
export async function openFiles(page: Page): Promise<void> {
  const fold = page.getByText('Files for the workshop', { exact: true });
  await expect(fold).toBeVisible();
  if (!(await page.getByRole('button', { name: 'Download everything' }).isVisible())) await fold.click();
}

/** Chooses one of a set of radio buttons by pressing its label, as one does. */
export async function pick(page: Page, name: string | RegExp): Promise<void> {
  const radio = page.getByRole('radio', { name, exact: true }).first();
  await page.locator('label').filter({ has: radio }).click();
  await expect(radio).toBeChecked();
}

/** Orders the half-size plate besides, which no beginning does by itself. */
export async function addHalf(page: Page): Promise<void> {
  await goTo(page, 'size');
  await page.getByRole('button', { name: /^Add a half-size plate/ }).click();
  await worked(page);
}

/** Types into a field and leaves it, as one does. */
export async function fillIn(page: Page, label: string, text: string): Promise<void> {
  const field = page.getByRole('textbox', { name: label, exact: true });
  await field.fill(text);
  await field.blur();
}

export interface Downloaded {
  readonly name: string;
  readonly bytes: Buffer;
}

/** What a press of a button brings to the downloads. */
export async function downloadBy(page: Page, press: () => Promise<void>): Promise<Downloaded> {
  const [download] = await Promise.all([page.waitForEvent('download', { timeout: 60_000 }), press()]);
  return { name: download.suggestedFilename(), bytes: await readFile(await download.path()) };
}

export async function downloadNamed(page: Page, button: string): Promise<Downloaded> {
  return downloadBy(page, () => page.getByRole('button', { name: button, exact: true }).click());
}

/** What the page itself says of the plate called `name`, on the last question. */
export async function figuresOf(page: Page, name: string): Promise<{ diameterMm: number; openings: number }> {
  const block = page
    .getByRole('region', { name: 'The plates' })
    .locator('div')
    .filter({ has: page.getByText(new RegExp(`^(ready to cut|worth a look|cannot be cut yet) ${name}$`)) })
    .filter({ has: page.getByRole('term') })
    .last();
  const value = async (term: string) =>
    Number.parseFloat((await block.locator('dt', { hasText: term }).locator('+ dd').innerText()).replace(',', ''));
  return { diameterMm: await value('Across'), openings: await value('Openings') };
}

/** An order in one file, dropped on the page as from a folder. */
export async function dropOrder(page: Page, bytes: Uint8Array): Promise<void> {
  const data = Buffer.from(bytes).toString('base64');
  await page.evaluate((base64) => {
    const raw = Uint8Array.from(atob(base64), (sign) => sign.charCodeAt(0));
    const transfer = new DataTransfer();
    transfer.items.add(new File([raw], 'order.zip', { type: 'application/zip', lastModified: raw.length }));
    for (const name of ['dragover', 'drop']) {
      document.body.dispatchEvent(new DragEvent(name, { dataTransfer: transfer, bubbles: true, cancelable: true }));
    }
  }, data);
}
