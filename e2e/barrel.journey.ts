import { expect, type Locator, type Page } from '@playwright/test';
import { addHalf, downloadNamed, openPage, pick, test } from './walk.ts';

const cask = (page: Page): Locator => page.getByRole('img', { name: /^Barrel with the plate “Large”/ });

test('a barrel to turn by keys and pointer, in three states, with a picture to take away', async ({ page }) => {
  test.slow();
  await openPage(page);
  await addHalf(page);
  await pick(page, 'On the barrel');
  await expect(page.locator('[data-barrel][data-shows]')).toBeVisible({ timeout: 90_000 });
  await expect(cask(page)).toHaveAccessibleName(/Plate in place$/);

  const first = await cask(page).screenshot();
  await cask(page).focus();
  await page.keyboard.press('ArrowLeft');
  await page.keyboard.press('+');
  await expect.poll(async () => (await cask(page).screenshot()).equals(first), { timeout: 30_000 }).toBe(false);

  for (const [state, named] of [
    ['Charred', /Charred$/],
    ['Painted', /Painted$/],
  ] as const) {
    await pick(page, state);
    await expect(cask(page)).toHaveAccessibleName(named);
  }
  const oxide = page.getByRole('button', { name: 'Oxide red' });
  await oxide.click();
  await expect(oxide).toHaveAttribute('aria-pressed', 'true');
  await expect(page.locator('[data-barrel]')).toHaveAttribute('data-shows', /paint #8c2a1c$/, { timeout: 30_000 });

  await page.getByRole('button', { name: 'Straight on' }).click();
  const { name, bytes } = await downloadNamed(page, 'Save a picture');
  expect(name).toMatch(/^Maker-s-head-[0-9a-f]{16}-barrel\.png$/);
  // PNG (W3C, third edition): signature, then width and height in the header chunk.
  expect(bytes.subarray(1, 4).toString()).toBe('PNG');
  expect([bytes.readUInt32BE(16), bytes.readUInt32BE(20)]).toEqual([2000, 2000]);

  await page.getByRole('button', { name: 'All plates' }).click();
  await expect(page.locator('[data-barrel]')).toHaveAttribute('data-shows', /^\S+ \S+ paint /, { timeout: 30_000 });
});

test('without WebGL there is a drawing and a calm sentence', { tag: '@long' }, async ({ page }) => {
  // As text: the page's own canvas, but for one kind of context.
  await page.addInitScript(`{
    const own = HTMLCanvasElement.prototype.getContext;
    HTMLCanvasElement.prototype.getContext = function (kind, ...rest) {
      return kind.startsWith('webgl') ? null : own.call(this, kind, ...rest);
    };
  }`);
  await openPage(page);
  await pick(page, 'On the barrel');
  await expect(page.getByText(/draws no third dimension/)).toBeVisible();
  await expect(cask(page)).toBeVisible();
});
