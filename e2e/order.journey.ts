import { expect } from '@playwright/test';
import { flippedAt, resealed } from '../tests/order-file/damages.ts';
import { madeOrder, smallDesign } from '../tests/order-file/sound-order.ts';
import { downloadBy, dropOrder, openPage, test, worked } from './walk.ts';

test('an order in one file is verified when it is dropped, and told file by file when it was harmed', async ({
  page,
}) => {
  const order = await madeOrder(smallDesign('OB'));
  await openPage(page);
  const dialog = page.getByRole('dialog', { name: 'An order in one file' });

  await dropOrder(page, order.bytes);
  await expect(dialog.getByText('Order verified: 7 files are as they were written.')).toBeVisible({ timeout: 60_000 });
  await expect(dialog.getByText('Approved by O. Marrow, 26 November 2026.')).toBeVisible();
  const [dxf] = order.cut;
  const taken = await downloadBy(page, () => dialog.getByRole('button', { name: `Download ${dxf!.name}` }).click());
  expect(taken.name).toBe(dxf!.name);
  expect(Buffer.compare(taken.bytes, dxf!.bytes)).toBe(0);
  await dialog.getByRole('button', { name: 'Go to the design' }).click();
  const title = page.getByRole('textbox', { name: 'Name of this design' });
  await expect(title).toHaveValue('Ottilie & Bastian');
  await worked(page);

  // One bit of the first cut file.
  const at = Buffer.from(order.bytes).indexOf(dxf!.name) + dxf!.name.length + 900;
  await dropOrder(page, flippedAt(order.bytes, at));
  await expect(dialog.getByRole('alert')).toContainText('This order is not as it was written', { timeout: 60_000 });
  await expect(dialog.getByRole('alert').getByRole('listitem')).toHaveCount(1);
  await expect(dialog.getByRole('listitem')).toContainText(dxf!.name);
  await page.keyboard.press('Escape');
  await expect(dialog).toHaveCount(0);
  await expect(title).toHaveValue('Ottilie & Bastian');

  // Changed, and sealed again by somebody who knows how: found when it is made again.
  const forged = resealed(order);
  await dropOrder(page, forged.bytes);
  await expect(dialog.getByRole('alert')).toContainText(`“${forged.file}” is not what comes out`, { timeout: 60_000 });
  await dialog.getByRole('button', { name: 'Look at the design only' }).click();
  await expect(title).toHaveValue('Ottilie & Bastian (not verified)');
  await expect(page.getByRole('status').filter({ hasText: 'do not cut it' })).toBeVisible();
});
