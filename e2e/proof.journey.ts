import AxeBuilder from '@axe-core/playwright';
import { expect, type Browser, type Page } from '@playwright/test';
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { readPdf } from '../tests/readers/pdf-reader.ts';
import {
  addHalf,
  downloadBy,
  type Downloaded,
  downloadNamed,
  dropOrder,
  fillIn,
  goTo,
  openPage,
  test,
  worked,
} from './walk.ts';

const WORK_MS = 120_000;
const RULES = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

function standing(page: Page) {
  return page.getByTestId('standing');
}

async function openPart(page: Page, name: 'Compare' | 'Approve' | 'Revisions' | 'Papers'): Promise<void> {
  await page.getByRole('navigation', { name: 'What belongs to the proof' }).getByRole('button', { name }).click();
}

/** What a press copies, without the browser's own clipboard: what the page asked to be written there. */
async function copied(page: Page, button: string): Promise<string> {
  await page.evaluate(() => {
    Object.defineProperty(navigator, 'clipboard', {
      value: { writeText: (text: string) => Promise.resolve(void (document.body.dataset['copied'] = text)) },
      configurable: true,
    });
  });
  await page.getByRole('button', { name: button, exact: true }).click();
  await expect(page.locator('body')).toHaveAttribute('data-copied', /^http/);
  return (await page.locator('body').getAttribute('data-copied')) ?? '';
}

async function planned(page: Page, options: number): Promise<void> {
  const cards = page.getByRole('article');
  await expect(cards).toHaveCount(options);
  await expect(cards.filter({ hasText: /Holds together/ })).toHaveCount(options, { timeout: WORK_MS });
}

async function judge(page: Page, state: string): Promise<void> {
  await page.waitForTimeout(300);
  const { violations } = await new AxeBuilder({ page }).withTags(RULES).analyze();
  expect
    .soft(
      violations.map(({ id, nodes }) => `${id}: ${nodes.map((n) => n.target.join(' ')).join('; ')}`),
      state,
    )
    .toEqual([]);
}

/** The page never runs over its sides. */
async function fits(page: Page): Promise<void> {
  // The barrel's tools scroll sideways in a row of their own.
  const over = await page.evaluate(() =>
    [...document.querySelectorAll('main *')]
      .filter((e) => e.getBoundingClientRect().right > innerWidth + 1)
      .filter((e) => !e.closest('[data-barrel], canvas, .sr-only, [data-scrolls]'))
      .map((e) => `${e.tagName} ${e.className.toString()}`),
  );
  expect(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth + 1)).toBe(true);
  expect(over).toEqual([]);
}

async function salesWithAnOption(page: Page): Promise<void> {
  await openPage(page);
  await addHalf(page);
  await page.getByRole('navigation', { name: 'Pages' }).getByRole('button', { name: 'Proof', exact: true }).click();
  await expect(page).toHaveURL(/\?page=proof/);
  await planned(page, 1);
  await page.getByRole('button', { name: 'Another lettering' }).click();
  await page.getByRole('button', { name: /^Alfa Slab One/ }).click();
  await planned(page, 2);
}

async function phone(browser: Browser): Promise<Page> {
  const context = await browser.newContext({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });
  return context.newPage();
}

async function approves(page: Page, name: string): Promise<void> {
  await openPart(page, 'Approve');
  const form = page.getByRole('region', { name: 'All right as it is?' });
  const button = form.getByRole('button', { name: 'Approve', exact: true });
  await expect(button).toBeVisible({ timeout: WORK_MS });
  await button.click();
  await expect(form.getByText('Please write your name.')).toBeVisible();
  await fillIn(page, 'Your name', name);
  await form.getByRole('checkbox', { name: 'I have read the texts letter by letter' }).check();
  await button.click();
  await expect(standing(page)).toHaveText(new RegExp(`^Approved by ${name}`));
}

test('sales shows an option, a customer chooses and approves on a phone, and the approval comes back', async ({
  page,
  browser,
}) => {
  test.slow();
  await salesWithAnOption(page);
  await judge(page, 'compare');
  await openPart(page, 'Papers');
  const link = await copied(page, 'Copy the link');
  expect(link).toContain('?page=proof#d');

  const customer = await phone(browser);
  await customer.goto(link);
  await planned(customer, 2);
  await fits(customer);
  await customer.getByRole('button', { name: 'Take this one: Alfa Slab One' }).click();
  await expect(customer.getByText('“Alfa Slab One” is the design now.')).toBeVisible();
  await customer.getByRole('button', { name: 'Undo' }).click();
  await approves(customer, 'Beata');
  await expect(customer.getByTestId('text-to-read').first()).toBeVisible();
  await fits(customer);
  await judge(customer, 'approved, on a phone');
  const back = await copied(customer, 'Copy the link for the shop');
  await customer.context().close();

  // the shop has this design: no second copy of it
  await page.goto(back);
  await page.getByRole('button', { name: 'Put it on my design' }).click();
  await expect(standing(page)).toHaveText(/^Approved by Beata/);
  await expect(page.getByText(/came back and is on the design now/)).toBeVisible();
  await page.getByRole('button', { name: 'My designs' }).click();
  await expect(page.getByRole('dialog').getByRole('listitem')).toHaveCount(1);
  await page.keyboard.press('Escape');

  await page.getByRole('navigation', { name: 'Pages' }).getByRole('button', { name: 'Design', exact: true }).click();
  await goTo(page, 'say');
  await fillIn(page, 'Ring text, top', 'MARROW LANE CIDER');
  await worked(page);
  await page.getByRole('navigation', { name: 'Pages' }).getByRole('button', { name: 'Proof', exact: true }).click();
  const changed = page.getByRole('alert').filter({ hasText: 'Changed since it was approved' });
  await expect(changed).toBeVisible();
  await changed.getByRole('button', { name: 'What is different' }).click();
  await expect(changed.getByText(/is now “MARROW LANE CIDER”/)).toBeVisible();
  await expect(changed.getByRole('img')).toBeVisible({ timeout: WORK_MS });
  await judge(page, 'changed');
  await changed.getByRole('button', { name: /^Bring back/ }).click();
  await expect(standing(page)).toHaveText(/^Approved by Beata/);
});

/** Lettering, size and material each once. */
async function salesWithThreeOptions(page: Page): Promise<void> {
  await salesWithAnOption(page);
  await page.getByRole('button', { name: 'Another size' }).click();
  await page.getByRole('checkbox', { name: 'Half size' }).uncheck();
  await page.getByRole('button', { name: 'Add this size' }).click();
  await planned(page, 3);
  await page.getByRole('button', { name: 'Another material' }).click();
  await page.getByRole('button', { name: /Mild steel/ }).click();
  await planned(page, 4);
}

/** DXF of the large plate, and the design file that the command reads. */
async function cutFiles(page: Page): Promise<{ readonly dxf: Downloaded; readonly design: Downloaded }> {
  await goTo(page, 'take');
  const dxf = await downloadNamed(page, 'Large: DXF for the cutter');
  return { dxf, design: await downloadNamed(page, 'Save the design file') };
}

/** The same file as the command makes it of a design file. */
function byCommand({ dxf, design }: Awaited<ReturnType<typeof cutFiles>>): string {
  const folder = mkdtempSync(join(tmpdir(), 'bridgehead-proof-'));
  const file = join(folder, 'design.json');
  writeFileSync(file, design.bytes);
  const run = spawnSync('npx', ['tsx', 'geometry/command/make-command.ts', file, '--out', folder, '--approved-only']);
  expect(run.status, run.stderr.toString()).toBe(0);
  const name = readdirSync(folder).find((other) => other === dxf.name);
  return readFileSync(join(folder, name ?? ''), 'latin1');
}

test('of three options one is approved by link; the order opens verified, and its files are the same bytes in two browsers and by the command @long', async ({
  page,
  browser,
}) => {
  test.slow();
  await salesWithThreeOptions(page);
  await openPart(page, 'Papers');
  const link = await copied(page, 'Copy the link');

  const customer = await phone(browser);
  await customer.goto(link);
  await planned(customer, 4);
  await customer.getByRole('button', { name: 'Take this one: Alfa Slab One' }).click();
  await approves(customer, 'Otto');
  const back = await copied(customer, 'Copy the link for the shop');
  await openPart(customer, 'Papers');
  const order = await downloadBy(customer, () =>
    customer.getByRole('button', { name: 'Download: The whole order (ZIP)', exact: true }).click(),
  );
  await customer.context().close();

  const production = await (await browser.newContext()).newPage();
  await openPage(production);
  await dropOrder(production, order.bytes);
  const dialog = production.getByRole('dialog', { name: 'An order in one file' });
  await expect(dialog.getByText('Order verified: 9 files are as they were written.')).toBeVisible({ timeout: WORK_MS });
  await expect(dialog.getByText(/Approved by Otto/)).toBeVisible();
  await dialog.getByRole('button', { name: 'Go to the design' }).click();
  await worked(production);
  const fromOrder = await cutFiles(production);
  const wanted = byCommand(fromOrder);
  expect(fromOrder.dxf.bytes.toString('latin1')).toBe(wanted);

  const other = await phone(browser);
  await other.goto(back.replace('?page=proof', ''));
  await worked(other);
  const fromLink = await cutFiles(other);
  expect(fromLink.dxf.bytes.toString('latin1')).toBe(wanted);
  await other.context().close();

  await goTo(production, 'say');
  await fillIn(production, 'Ring text, top', 'MARROW LANE CIDER');
  await worked(production);
  await goTo(production, 'take');
  const changed = await downloadNamed(production, 'Large: DXF for the cutter');
  expect(changed.bytes.toString('latin1')).toMatch(/NOT THE APPROVED DESIGN/);
  const sheet = await downloadBy(production, () =>
    production.getByRole('button', { name: 'Spec sheet (PDF)', exact: true }).click(),
  );
  const { texts } = await readPdf(new Uint8Array(sheet.bytes));
  expect(texts.map((r) => r.text).join(' ')).toMatch(/NOT THE APPROVED DESIGN/i);
  await production.getByRole('navigation', { name: 'Pages' }).getByRole('button', { name: 'Cut', exact: true }).click();
  await expect(production.getByText(/Changed since Otto approved it/)).toBeVisible({ timeout: WORK_MS });
});
