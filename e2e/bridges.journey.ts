import { expect, type Locator, type Page } from '@playwright/test';
import { measureDxf, SOUND } from './measure-dxf.ts';
import { downloadNamed, goTo, openPage, test, verdict, worked } from './walk.ts';

const DXF = 'Large: DXF for the cutter';

const status = (page: Page): Locator => page.getByTestId('bridge-status');

async function cutFile(page: Page): Promise<string> {
  await goTo(page, 'take');
  await worked(page);
  return (await downloadNamed(page, DXF)).bytes.toString('utf8');
}

function expectWhole(dxf: string): void {
  expect(measureDxf(dxf)).toMatchObject(SOUND);
}

/** What is cut, without the names and prints that change with the design. */
function cutting(dxf: string): string {
  return dxf.slice(dxf.indexOf('ENTITIES'));
}

test('a bridge moved by keyboard is in the cut file; undo and reload know it', async ({ page }) => {
  await openPage(page);
  const before = await cutFile(page);

  const toggle = page.getByRole('button', { name: 'Bridges', exact: true });
  await toggle.press('Enter');
  await expect(toggle).toHaveAttribute('aria-pressed', 'true');
  await page.getByRole('button', { name: 'Next bridge' }).press('Enter');
  await expect(status(page)).toHaveText(/^Bridge 1 of \d+, on letter/);
  for (let i = 0; i < 4; i++) await page.keyboard.press('ArrowRight');
  await page.keyboard.press('+');
  await worked(page);
  await expect(status(page)).toHaveText(/by hand/);
  await expect(verdict(page)).toHaveText(/Holds together/);

  const moved = await cutFile(page);
  expectWhole(moved);
  expect(cutting(moved)).not.toBe(cutting(before));

  // Saving waits for a pause.
  await page.waitForTimeout(800);
  await page.reload();
  await worked(page);
  const reloaded = await cutFile(page);
  expect(cutting(reloaded)).toBe(cutting(moved));
  await goTo(page, 'look');
  await expect(page.getByText('1 bridge by hand')).toBeVisible();
  await page.getByRole('button', { name: 'All back to automatic' }).click();
  await expect(page.getByText('1 bridge by hand')).toHaveCount(0);
  expect(cutting(await cutFile(page))).toBe(cutting(before));

  // One step back brings the bridge by hand again.
  await page.keyboard.press('Control+z');
  expect(cutting(await cutFile(page))).toBe(cutting(moved));
});

test('moves by keyboard are one step, and undo brings the old bridge back', { tag: '@long' }, async ({ page }) => {
  await openPage(page);
  const before = await cutFile(page);
  await page.getByRole('button', { name: 'Bridges', exact: true }).click();
  await page.getByRole('button', { name: 'Next bridge' }).click();
  for (let i = 0; i < 5; i++) await page.keyboard.press('ArrowUp');
  await worked(page);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByRole('button', { name: 'Undo' })).toBeDisabled();
  expect(cutting(await cutFile(page))).toBe(cutting(before));
});

test('by pointer: a bridge is dragged, one is added, one removed', { tag: '@long' }, async ({ page }) => {
  await openPage(page);
  const before = await cutFile(page);
  await page.getByRole('button', { name: 'Bridges', exact: true }).click();
  await page.getByRole('button', { name: 'Next bridge' }).click();
  const stage = page.locator('[data-plate-stage]');
  const box = (await stage.boundingBox())!;
  const held = { x: box.x + box.width / 2, y: box.y + box.height / 2 };

  // The bridge that was brought near lies in the middle, unless the plate ends there.
  await page.mouse.move(held.x, held.y);
  await page.mouse.down();
  await page.mouse.move(held.x + 10, held.y + 10, { steps: 4 });
  await page.mouse.up();
  await worked(page);
  await expect(status(page)).toHaveText(/by hand/);
  await expect(verdict(page)).toHaveText(/Holds together/);

  await page.getByRole('button', { name: 'Remove this bridge' }).click();
  await worked(page);
  await expect(verdict(page)).toHaveText(/Holds together/);

  const add = page.getByRole('button', { name: 'Add a bridge' });
  await add.click();
  await expect(add).toHaveAttribute('aria-pressed', 'true');
  await expect(stage).toBeFocused();
  await page.keyboard.press('0');
  // Beside the plate nothing is cut: that is said, and the tool stays in hand.
  await page.mouse.click(box.x + 60, box.y + box.height - 60);
  await expect(page.getByText('Nothing is cut away there')).toBeVisible();
  // From the middle leftwards one comes upon the figure.
  for (let left = 20; left < 200 && (await add.getAttribute('aria-pressed')) === 'true'; left += 4) {
    await page.mouse.click(box.x + box.width / 2 - left, box.y + box.height / 2);
  }
  await expect(add).toHaveAttribute('aria-pressed', 'false');
  await worked(page);
  await expect(status(page)).toHaveText(/by hand/);
  const after = await cutFile(page);
  expectWhole(after);
  expect(cutting(after)).not.toBe(cutting(before));
});

test.describe('on a phone', () => {
  test.use({ viewport: { width: 390, height: 844 }, hasTouch: true });

  test('tools are large enough for a thumb and a tap chooses', { tag: '@long' }, async ({ page }) => {
    await openPage(page);
    await page.getByRole('button', { name: 'Bridges', exact: true }).tap();
    for (const tool of await page.getByRole('group', { name: 'Bridges by hand' }).getByRole('button').all()) {
      const size = (await tool.boundingBox())!;
      expect(Math.min(size.width, size.height)).toBeGreaterThanOrEqual(44);
    }
    await page.getByRole('button', { name: 'Next bridge' }).tap();
    const stage = page.locator('[data-plate-stage]');
    const box = (await stage.boundingBox())!;
    await page.touchscreen.tap(box.x + 30, box.y + box.height - 30);
    await expect(status(page)).toHaveText(/Choose one/);
    await page.touchscreen.tap(box.x + box.width / 2, box.y + box.height / 2);
    await expect(status(page)).toHaveText(/^Bridge 1 of/);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
  });
});
