import { expect, type Page } from '@playwright/test';
import { measureDxf, SOUND } from './measure-dxf.ts';
import {
  downloadBy,
  figuresOf,
  openFiles,
  openFirst,
  openPage,
  questionButton,
  test,
  verdict,
  worked,
  type Question,
} from './walk.ts';

test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });

const QUESTIONS: readonly Question[] = ['say', 'look', 'size', 'take'];

test('first visit to downloaded cut file on a phone, by touch', async ({ page }) => {
  await openFirst(page);
  // the pictures are true plates, made while one looks
  await expect(page.getByRole('list', { name: 'Ready-made' }).locator('path').first()).toBeVisible({ timeout: 60_000 });
  await page.getByRole('button', { name: 'Golden wedding' }).tap();
  await fill(page, 'For whom', 'Olive & Bram');
  await fill(page, 'The date', '3 May 2027');
  await page
    .locator('label')
    .filter({ has: page.getByRole('radio', { name: 'Farm' }) })
    .tap();
  await worked(page);
  await page.getByRole('button', { name: 'Show me the barrel' }).tap();
  await expect(page.getByRole('img', { name: /^Barrel with the plate/ })).toBeVisible();
  await page.getByRole('button', { name: 'Fine, next: size' }).tap();

  await page.getByRole('button', { name: 'Now I have measured it' }).tap();
  await fill(page, 'Along the boards', '500');
  await fill(page, 'Across the boards', '496');
  await worked(page);
  await expect(verdict(page)).toHaveText(/Holds together/);
  await expect(verdict(page)).toBeInViewport();

  await page.getByRole('button', { name: 'Next: take it home' }).tap();
  await worked(page);
  // first what a customer wants: off to the shop with it
  await expect(page.getByRole('button', { name: 'Send it to the shop' })).toBeInViewport();
  await openFiles(page);
  const said = await figuresOf(page, 'Large');
  const dxf = await downloadBy(page, () => page.getByRole('button', { name: 'Large: DXF for the cutter' }).tap());
  expect(measureDxf(dxf.bytes.toString('utf8'))).toMatchObject({
    ...SOUND,
    rimDiametersMm: [484],
    openings: said.openings,
  });
});

test('from page to page, and what the design is called, at 360 px', async ({ page }) => {
  await page.setViewportSize({ width: 360, height: 740 });
  await openPage(page);
  const pages = page.getByRole('navigation', { name: 'Pages' });
  const title = page.getByRole('textbox', { name: 'Name of this design' });
  await fill(page, 'Ring text, top', 'OLIVE & BRAM');
  // some ten letters of it, with a step to undo
  await expect(page.getByRole('button', { name: 'Undo' })).toBeVisible();
  expect((await title.boundingBox())?.width).toBeGreaterThan(96);
  for (const [from, to] of [
    ['Design', 'Cut'],
    ['Cut', 'Design'],
  ] as const) {
    const button = pages.getByRole('button', { name: from }).first();
    await button.tap();
    await expect(pages.getByRole('button', { name: from }).nth(1)).toHaveAttribute('aria-current', 'page');
    await page.keyboard.press('Escape');
    await expect(pages.getByRole('button')).toHaveCount(1);
    await expect(button).toBeFocused();
    await button.tap();
    await pages.getByRole('button', { name: to }).tap();
    await expect(pages.getByRole('button')).toHaveText([to]);
  }
  await page.getByRole('button', { name: 'Settings' }).tap();
  await expect(page.getByRole('radio', { name: 'inch' })).toBeVisible();
  await title.tap();
  await expect(page.getByRole('radio', { name: 'inch' })).toBeHidden();
});

test('nothing needs sideways scrolling, down to 360 px', { tag: '@long' }, async ({ page }) => {
  await openPage(page);
  for (const width of [390, 360]) {
    await page.setViewportSize({ width, height: 844 });
    for (const question of QUESTIONS) {
      await questionButton(page, question).tap();
      const wide = await page.evaluate(() => document.documentElement.scrollWidth);
      expect(wide, `${question} at ${width} px`).toBeLessThanOrEqual(width);
    }
  }
});

test('what a thumb presses is large enough', { tag: '@long' }, async ({ page }) => {
  await openFirst(page);
  await thumbSized(page, 'beginnings');
  await page.getByRole('button', { name: 'A name over a motif' }).tap();
  await thumbSized(page, 'questions');
  for (const question of QUESTIONS) {
    await questionButton(page, question).tap();
    await thumbSized(page, question);
  }
});

/**
 * WCAG 2.2, 2.5.5 (enhanced): 44 by 44 CSS pixels. Radio buttons and ticks are pressed by their labels. On the plate itself
 * there is less room: 24, as 2.5.8 (level AA) asks; its buttons are as large as all.
 */
async function thumbSized(page: Page, where: string): Promise<void> {
  const targets = page.locator(
    'button, summary, select, input:not(.sr-only):not([hidden]):not([type=radio]):not(label [type=checkbox]), label:has(input)',
  );
  const small = await targets.evaluateAll((all) =>
    all
      .map((target) => {
        const least = target.closest('#stage') === null || target.matches('button') ? 44 : 24;
        const { width, height } = target.getBoundingClientRect();
        const name = target.getAttribute('aria-label') ?? target.textContent;
        return { name, width, height, least };
      })
      .filter(({ width, height, least }) => width > 0 && (width < least - 0.5 || height < least - 0.5))
      .map(({ name, width, height }) => `${name}: ${width.toFixed(0)} x ${height.toFixed(0)}`),
  );
  expect.soft(small, where).toEqual([]);
}

async function fill(page: Page, label: string, text: string): Promise<void> {
  const field = page.getByRole('textbox', { name: label, exact: true });
  await field.tap();
  await field.fill(text);
  await field.blur();
}
