import { expect, type Page } from '@playwright/test';
import { measureDxf } from './measure-dxf.ts';
import { downloadBy, figuresOf, openPage, questionButton, test, verdict, worked, type Question } from './walk.ts';

test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });

const QUESTIONS: readonly Question[] = ['say', 'look', 'size', 'take'];

test('a customer on a phone, by touch', async ({ page }) => {
  await openPage(page);
  await page.getByRole('button', { name: 'Golden wedding' }).tap();
  await fill(page, 'Ring text, bottom', 'OLIVE & BRAM');
  await worked(page);

  await questionButton(page, 'look').tap();
  await page.getByText('Zilla Slab', { exact: false }).first().tap();
  await worked(page);

  await questionButton(page, 'size').tap();
  await fill(page, 'Along the boards', '500');
  await fill(page, 'Across the boards', '496');
  await worked(page);
  await expect(verdict(page)).toHaveText(/Holds together/);
  await expect(verdict(page)).toBeInViewport();

  await questionButton(page, 'take').tap();
  await worked(page);
  const said = await figuresOf(page, 'Large');
  const dxf = await downloadBy(page, () => page.getByRole('button', { name: 'Large: DXF for the cutter' }).tap());
  expect(measureDxf(dxf.bytes.toString('utf8'))).toMatchObject({
    units: 4,
    rimDiametersMm: [484],
    openings: said.openings,
    strays: 0,
    looseParts: 0,
  });
});

test('nothing needs sideways scrolling, down to 360 px', async ({ page }) => {
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

test('what a thumb presses is large enough', async ({ page }) => {
  await openPage(page);
  for (const question of QUESTIONS) {
    await questionButton(page, question).tap();
    // WCAG 2.2, 2.5.8: a target is at least 24 by 24 CSS pixels.
    const small = await page.getByRole('button').evaluateAll((buttons) =>
      buttons
        .map((button) => ({
          name: button.getAttribute('aria-label') ?? button.textContent,
          box: button.getBoundingClientRect(),
        }))
        .filter(({ box }) => box.width > 0 && (box.width < 24 || box.height < 24))
        .map(({ name, box }) => `${name}: ${box.width.toFixed(0)} x ${box.height.toFixed(0)}`),
    );
    expect(small, question).toEqual([]);
  }
});

async function fill(page: Page, label: string, text: string): Promise<void> {
  const field = page.getByRole('textbox', { name: label, exact: true });
  await field.tap();
  await field.fill(text);
  await field.blur();
}
