import { expect, type Locator, type Page } from '@playwright/test';
import { measureDxf, SOUND } from './measure-dxf.ts';
import { downloadNamed, goTo, openPage, test, worked } from './walk.ts';

const DXF = 'Large: DXF for the cutter';

const said = (page: Page): Locator => page.getByTestId('placing-status');
const stageOf = (page: Page): Locator => page.locator('[data-plate-stage]');
const tool = (page: Page, name: string): Locator =>
  page.getByRole('group', { name: 'Place by hand' }).getByRole('button', { name, exact: true });

/** Where something lies on the plate of the demo head: shares of its radius from the middle, y up. */
async function spot(page: Page, x: number, y: number): Promise<{ x: number; y: number }> {
  const box = (await stageOf(page).boundingBox())!;
  const room = Math.min(box.width, box.height);
  const radius = (room / 2 - (room < 480 ? 23 : 34)) / 1.045 / 1.115;
  return { x: box.x + box.width / 2 + x * radius, y: box.y + box.height / 2 - y * radius };
}

async function cutFile(page: Page): Promise<string> {
  await goTo(page, 'take');
  await worked(page);
  return (await downloadNamed(page, DXF)).bytes.toString('utf8');
}

/** What is cut, without the names and prints that change with the design. */
function cutting(dxf: string): string {
  return dxf.slice(dxf.indexOf('ENTITIES'));
}

async function walkTo(page: Page, what: RegExp): Promise<void> {
  await stageOf(page).focus();
  await page.keyboard.press('Escape');
  for (let i = 0; i < 12 && !what.test(await said(page).innerText()); i++) await page.keyboard.press('Tab');
  await expect(said(page)).toHaveText(what);
}

test('by keyboard: walked to, moved, turned, typed, copied, locked, removed', async ({ page }) => {
  await openPage(page);
  const before = await cutFile(page);
  await walkTo(page, /^Line “CASK”, 109\.\d mm above centre$/);

  for (let i = 0; i < 3; i++) await page.keyboard.press('ArrowUp');
  await page.keyboard.press('Shift+ArrowRight');
  await expect(said(page)).toHaveText(/^Line “CASK”, 112\.\d mm above centre, 0\.1 mm right of centre$/);
  await page.keyboard.press(']');
  await expect(said(page)).toHaveText(/turned 5°$/);
  // All of it was one run of keys on one thing, and so is one step.
  await page.keyboard.press('Control+z');
  await expect(said(page)).toHaveText(/^Line “CASK”, 109\.\d mm above centre$/);
  expect(cutting(await cutFile(page))).toBe(cutting(before));

  await goTo(page, 'say');
  await walkTo(page, /^Ring text, top/);
  await page.keyboard.press('ArrowRight');
  await expect(said(page)).toHaveText(/at 1°/);
  await page.keyboard.press('ArrowLeft');

  // Typed where it stands; Escape gives back, Enter keeps.
  await walkTo(page, /^Line “CASK”/);
  await page.keyboard.press('Enter');
  const field = page.getByRole('textbox', { name: 'Text on the plate' });
  await expect(field).toBeFocused();
  await field.fill('KEG');
  await field.press('Escape');
  await expect(stageOf(page)).toBeFocused();
  await expect(said(page)).toHaveText(/^Line “CASK”/);
  await page.keyboard.press('Enter');
  await field.fill('VAT');
  await field.press('Enter');
  await expect(said(page)).toHaveText(/^Line “VAT”/);

  await page.keyboard.press('Control+d');
  await expect(page.getByRole('textbox', { name: 'Line', exact: true })).toHaveCount(5);
  await page.keyboard.press('Delete');
  await expect(page.getByText('1 thing removed')).toBeVisible();
  await expect(stageOf(page)).toBeFocused();

  await walkTo(page, /^Line “VAT”/);
  await tool(page, 'Keep it where it is').press('Enter');
  await expect(said(page)).toHaveText(/locked$/);
  await stageOf(page).focus();
  await page.keyboard.press('ArrowUp');
  await expect(page.getByText('This is locked, so it stays where it is.')).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(said(page)).toHaveText('');
});

test('by pointer: one drag is one step, the cut file follows, and what is dragged rests on guides', async ({
  page,
}) => {
  await openPage(page);
  const before = await cutFile(page);
  const date = await spot(page, 0, -0.35);
  await page.mouse.click(date.x, date.y);
  await expect(said(page)).toHaveText(/^Line “14 OCT 2026”/);
  await page.mouse.move(date.x, date.y);
  await page.mouse.down();
  await page.mouse.move(date.x + 2, date.y - 12, { steps: 3 });
  await expect(stageOf(page)).toHaveAttribute('data-dragging', 'true');
  await page.mouse.move(date.x + 3, date.y - 8, { steps: 3 });
  await page.mouse.up();
  await expect(stageOf(page)).not.toHaveAttribute('data-dragging', 'true', { timeout: 60_000 });
  // A few pixels beside the middle line it rests on it.
  await expect(said(page)).toHaveText(/^Line “14 OCT 2026”, [\d.]+ mm below centre$/);
  const moved = await cutFile(page);
  expect(measureDxf(moved)).toMatchObject(SOUND);
  expect(cutting(moved)).not.toBe(cutting(before));
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByRole('button', { name: 'Undo' })).toBeDisabled();
  expect(cutting(await cutFile(page))).toBe(cutting(before));
});

test('several at once: lined up, spread; copied round the ring', { tag: '@long' }, async ({ page }) => {
  await openPage(page);
  const cask = await spot(page, 0, 0.42);
  const date = await spot(page, 0, -0.35);
  const filled = await spot(page, 0, -0.17);
  await page.mouse.click(cask.x, cask.y);
  await page.keyboard.press('ArrowRight');
  for (const at of [filled, date]) {
    await page.keyboard.down('Shift');
    await page.mouse.click(at.x, at.y);
    await page.keyboard.up('Shift');
  }
  await expect(said(page)).toHaveText('3 things chosen');
  await tool(page, 'Line up right edges').click();
  await tool(page, 'Spread evenly down the head').click();
  await worked(page);
  await page.keyboard.press('Escape');
  await expect(said(page)).toHaveText('3 things chosen');
  await stageOf(page).focus();
  await page.keyboard.press('Escape');

  await page.mouse.click(cask.x, cask.y);
  await tool(page, 'Copy round the ring').click();
  const form = page.getByRole('group', { name: 'Copy round the ring' });
  await form.getByRole('textbox', { name: 'How many in all' }).fill('3');
  await form.getByRole('button', { name: 'Copy round', exact: true }).click();
  await expect(said(page)).toHaveText('3 things chosen');
  await page.getByRole('button', { name: 'Undo' }).click();
  await worked(page);
});

test.describe('on a phone', () => {
  test.use({ viewport: { width: 390, height: 844 }, hasTouch: true });

  test('a thumb chooses, drags and finds every tool', { tag: '@long' }, async ({ page }) => {
    await openPage(page);
    const plain = (await stageOf(page).boundingBox())!;
    const number = await spot(page, 0, 0.1);
    await page.touchscreen.tap(number.x, number.y);
    await expect(said(page)).toHaveText(/^Line “• 27 •”/);
    // The plate stays where it was: the tools come under it.
    const now = (await stageOf(page).boundingBox())!;
    expect([now.x, now.y, Math.round(now.height)]).toEqual([plain.x, plain.y, Math.round(plain.height)]);
    for (const button of await page.getByRole('group', { name: 'Place by hand' }).getByRole('button').all()) {
      const size = (await button.boundingBox())!;
      expect(Math.min(size.width, size.height)).toBeGreaterThanOrEqual(44);
    }
    const place = await said(page).innerText();
    const touch = await page.context().newCDPSession(page);
    const send = (type: 'touchStart' | 'touchMove' | 'touchEnd', up: number) =>
      touch.send('Input.dispatchTouchEvent', {
        type,
        touchPoints: type === 'touchEnd' ? [] : [{ x: number.x, y: number.y - up }],
      });
    await send('touchStart', 0);
    for (let up = 3; up <= 15; up += 3) await send('touchMove', up);
    await send('touchEnd', 0);
    await expect(said(page)).not.toHaveText(place);
    await worked(page);
    await tool(page, 'Move down').tap();
    await tool(page, 'Larger').tap();
    await tool(page, 'Choose several').tap();
    await expect(tool(page, 'Choose several')).toHaveAttribute('aria-pressed', 'true');
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
  });
});
