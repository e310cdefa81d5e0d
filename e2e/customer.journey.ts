import { expect } from '@playwright/test';
import { readPdf } from '../tests/readers/pdf-reader.ts';
import { measureDxf, SOUND } from './measure-dxf.ts';
import { addHalf, downloadNamed, figuresOf, fillIn, goTo, openPage, pick, test, verdict, worked } from './walk.ts';

test('a customer on a desk: from the tape measure to the cut files', async ({ page }) => {
  await openPage(page);

  await test.step('measures the head, both ways', async () => {
    await goTo(page, 'size');
    // barrels are called what customers call them
    const barrels = page.getByRole('combobox', { name: 'Barrel' }).getByRole('option');
    for (const called of [/Bourbon/, /Wine barrel/, /Quarter cask/])
      await expect(barrels.filter({ hasText: called }).first()).toBeAttached();
    await pick(page, 'I measured it');
    await fillIn(page, 'Along the boards', '560');
    await fillIn(page, 'Across the boards', '552.4');
    await worked(page);
  });

  await test.step('begins with initials and a date, and types', async () => {
    await goTo(page, 'say');
    await page.getByRole('button', { name: 'Begin anew' }).click();
    await page.getByRole('button', { name: 'Golden wedding' }).click();
    await fillIn(page, 'For whom', 'Olive & Bram');
    await fillIn(page, 'The date', '3 May 2027');
    await worked(page);
    // the plate says it in capitals, and takes the first letters of the names for its middle
    await expect(page.getByTestId('plate-summary')).toHaveText(/“OLIVE & BRAM”.*“O & B”.*“3 MAY 2027”/);
    await expect(verdict(page)).toHaveText(/Holds together/);
  });

  await test.step('keeps the head that was measured', async () => {
    await page.getByRole('button', { name: 'Fine, next: size' }).click();
    await expect(page.getByRole('textbox', { name: 'Along the boards' })).toHaveValue('560');
    await expect(page.getByRole('textbox', { name: 'Across the boards' })).toHaveValue('552.4');
  });

  await test.step('has one plate until a second is asked for, and none left when it is counted down', async () => {
    await expect(page.getByRole('spinbutton', { name: 'How many' }).or(page.getByLabel('How many'))).toHaveCount(1);
    await addHalf(page);
    await page.getByRole('button', { name: 'One less: Half size' }).click();
    await expect(page.getByLabel('How many')).toHaveCount(1);
    await addHalf(page);
  });

  await test.step('picks a face', async () => {
    await goTo(page, 'look');
    // ten at first, and all on demand; none of them scrolls the page away
    await expect(page.getByRole('radiogroup').getByRole('radio')).toHaveCount(10);
    await page.getByRole('button', { name: /^All \d+ faces/ }).click();
    await pick(page, /Zilla Slab/);
    await expect(page.getByRole('banner')).toBeInViewport();
    await worked(page);
    await expect(verdict(page)).toHaveText(/Holds together/);
  });

  await test.step('sees it on the barrel, as plate, paint and char', async () => {
    await pick(page, 'On the barrel');
    const pictures: string[] = [];
    for (const [name, shows] of [
      ['Plate in place', / plate/],
      ['Painted', / paint/],
      ['Charred', / char/],
    ] as const) {
      await pick(page, name);
      await expect(page.locator('[data-barrel]')).toHaveAttribute('data-shows', shows, { timeout: 90_000 });
      const barrel = page.getByRole('img', { name: new RegExp(`^Barrel with the plate.*${name}$`) });
      pictures.push((await barrel.screenshot()).toString('base64'));
    }
    expect(new Set(pictures).size).toBe(3);
    await pick(page, 'Plate');
  });

  await test.step('takes home files that are right', async () => {
    await goTo(page, 'take');
    await worked(page);
    let fingerprint = '';
    // The smaller diameter less 6 mm on each side, down to half a millimetre; then half of that.
    for (const [plate, diameterMm] of [
      ['Large', 540],
      ['Half size', 270],
    ] as const) {
      const said = await figuresOf(page, plate);
      expect(said.diameterMm).toBe(diameterMm);
      const dxf = await downloadNamed(page, `${plate}: DXF for the cutter`);
      const measured = measureDxf(dxf.bytes.toString('utf8'));
      expect(measured.rimDiametersMm).toHaveLength(1);
      expect(Math.abs((measured.rimDiametersMm[0] ?? 0) - diameterMm)).toBeLessThanOrEqual(0.001);
      expect(measured).toMatchObject({ ...SOUND, openings: said.openings });
      expect(dxf.name).toMatch(/^GOLDEN-WEDDING-OLIVE-BRAM-[A-Za-z-]+-[0-9a-f]{16}\.dxf$/);
      fingerprint = measured.fingerprint ?? 'no fingerprint in the DXF';
      expect(dxf.name).toContain(fingerprint.replaceAll(' ', ''));

      const svg = await downloadNamed(page, `${plate}: SVG drawing`);
      const text = svg.bytes.toString('utf8');
      expect(text).toMatch(/<svg [^>]*width="[\d.]+mm"/);
      expect([...text.matchAll(/<path /g)]).toHaveLength(said.openings);
      expect(text).toContain(`r="${diameterMm / 2}"`);
    }
    const sheet = await downloadNamed(page, 'Spec sheet (PDF)');
    expect(sheet.name).toMatch(/\.pdf$/);
    const read = await readPdf(new Uint8Array(sheet.bytes));
    const text = read.texts.map((run) => run.text).join(' ');
    expect(read.pages).toBe(1);
    expect(text).toContain('GOLDEN WEDDING OLIVE & BRAM');
    expect(text).toContain('540');
    expect(text).toContain('270');
    expect(text).toMatch(/sharp/i);
    expect(text).toContain(fingerprint);

    const all = await downloadNamed(page, 'Download everything');
    expect(all.name).toMatch(/\.zip$/);
  });
});
