import { expect } from '@playwright/test';
import { downloadBy, goTo, openPage, test } from './walk.ts';

test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true, locale: 'en-GB' });

test('German on a phone: chosen, kept, findings in it, and the very same cut file', async ({ page }) => {
  await openPage(page);
  const field = page.locator('input[data-field]').first();
  await field.fill('OLIVE & BRAM 2027');
  await field.blur();
  await goTo(page, 'take');
  const take = page.getByRole('button', { name: /: DXF for the cutter$/ }).first();
  await expect(take).toBeEnabled({ timeout: 60_000 });
  const inEnglish = await downloadBy(page, () => take.click());

  await test.step('the language is chosen in the top bar and put on the document', async () => {
    await page.getByRole('button', { name: 'Settings' }).click();
    await page.getByRole('combobox', { name: 'Language' }).selectOption('Deutsch');
    await expect(page.getByRole('heading', { level: 2, name: 'Mitnehmen' })).toBeVisible();
    await expect(page.locator('html')).toHaveAttribute('lang', 'de');
    await expect(page).toHaveTitle('Bridgehead: Schablonen für Fassböden');
    await expect(page.getByRole('button', { name: 'Einstellungen' })).toBeFocused();
  });

  await test.step('the file has the same bytes', async () => {
    const button = page.getByRole('button', { name: /: DXF für die Maschine$/ }).first();
    if (!(await button.isVisible())) await page.getByText('Dateien für die Werkstatt', { exact: true }).click();
    await expect(button).toBeEnabled({ timeout: 60_000 });
    const inGerman = await downloadBy(page, () => button.click());
    expect(inGerman.name).toBe(inEnglish.name);
    expect(inGerman.bytes.equals(inEnglish.bytes)).toBe(true);
  });

  await test.step('a design that was cut off is refused in German', async () => {
    await page.getByRole('button', { name: /Was soll darauf stehen/ }).click();
    await page.getByRole('button', { name: 'Neu beginnen' }).click();
    const cutOff = {
      name: 'half.json',
      mimeType: 'application/json',
      buffer: Buffer.from('{"format": "bridgehead-de'),
    };
    await page.getByTestId('open-design').setInputFiles(cutOff);
    await expect(page.getByRole('status').filter({ hasText: 'Diese Datei hört mittendrin auf' })).toBeVisible();
  });

  await test.step('what is wrong is said in German, with a decimal comma', async () => {
    await page.getByRole('button', { name: /Was soll darauf stehen/ }).click();
    await field.fill('OLIVE & BRAM '.repeat(12));
    await field.blur();
    const findings = page.getByRole('region', { name: 'Hinweise' });
    await expect(findings.getByRole('status').first()).toHaveText(/^Noch nicht zu schneiden/, { timeout: 60_000 });
    const show = findings.getByRole('button', { name: 'Hinweise zeigen' });
    if (await show.isVisible()) await show.click();
    const list = page.getByRole('list', { name: 'Hinweise' });
    await expect(list).toHaveText(/Der feinste Strich ist \d+,\d+ mm breit, feiner als der Schnitt selbst/);
    expect(await list.innerText()).not.toMatch(/\b(the|is|Make|Choose)\b/);
    await findings.getByRole('button', { name: 'Hinweise verbergen' }).click();
  });

  await test.step('a date goes into the text the German way', async () => {
    await field.fill('Olive & Bram');
    await page
      .getByRole('button', { name: /^Datum schreiben/ })
      .first()
      .click();
    await page.getByLabel('Das Datum').fill('2027-06-12');
    await page.getByRole('button', { name: '12. Juni 2027', exact: true }).click();
    await expect(field).toHaveValue('Olive & Bram 12. Juni 2027');
    await page.getByRole('button', { name: 'XII · VI · MMXXVII', exact: true }).click();
    await expect(field).toHaveValue('Olive & Bram XII · VI · MMXXVII');
  });

  await test.step('it is still German at the next visit', async () => {
    await page.reload();
    await expect(page.locator('html')).toHaveAttribute('lang', 'de');
    await page.getByRole('button', { name: 'Einstellungen' }).click();
    await expect(page.getByRole('combobox', { name: 'Sprache' })).toHaveValue('de');
  });
});
