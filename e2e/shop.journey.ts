import { expect } from '@playwright/test';
import { readFileSync } from 'node:fs';
import { openPage, test } from './walk.ts';

const SHIPPED = JSON.parse(readFileSync('geometry/shop/starting-shop.json', 'utf8')) as Record<string, unknown>;

test('a shop says which pages there are, and its prices are what page Proof asks', async ({ page }) => {
  const tax = { name: 'GST', percent: 7, included: false };
  await page.route('**/shop.json', (route) => route.fulfill({ json: { ...SHIPPED, tax, pages: ['design', 'proof'] } }));
  await page.goto('/?page=cut');

  await test.step('a page that is not offered is neither in the switch nor opened by its address', async () => {
    const pages = page.getByRole('navigation', { name: 'Pages' });
    await expect(pages.getByRole('button')).toHaveText(['Design', 'Proof']);
    await expect(pages.getByRole('button', { name: 'Design' })).toHaveAttribute('aria-current', 'page');
  });

  await test.step('the price is by the shop’s own file', async () => {
    await page.getByRole('button', { name: 'Proof', exact: true }).click();
    await expect(page.getByTestId('price').first()).toHaveText(/^€\d+\.\d\d$/, { timeout: 60_000 });
    await expect(page.getByText(/with 7 % GST/).first()).toBeVisible();
  });
});

test('a shop file that cannot be used is told when it is needed, and no number is shown', async ({ page }) => {
  const text = JSON.stringify({ ...SHIPPED, currency: 'euro' }, null, 2);
  await page.route('**/shop.json', (route) => route.fulfill({ contentType: 'application/json', body: text }));
  await openPage(page);
  await page.getByRole('button', { name: 'Proof', exact: true }).click();
  const line = text.split('\n').findIndex((l) => l.includes('"currency"')) + 1;
  await expect(
    page.getByText(`Line ${line}: In this shop file, currency should be three capital letters`),
  ).toBeVisible();
  await expect(page.getByText('Price on request').first()).toBeVisible({ timeout: 60_000 });
  await expect(page.getByTestId('price')).toHaveCount(0);
});
