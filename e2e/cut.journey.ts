import { expect, type Page } from '@playwright/test';
import { polylinePoints, readDxf } from '../tests/readers/dxf-reader.ts';
import { downloadBy, downloadNamed, fillIn, goTo, openPage, test, worked } from './walk.ts';

const WORK_MS = 120_000;

/** The page for production, from its place in the bar. */
async function openCut(page: Page): Promise<void> {
  await page.getByRole('navigation', { name: 'Pages' }).getByRole('button', { name: 'Cut', exact: true }).click();
  await expect(page).toHaveURL(/\?page=cut/);
  await placed(page, /\d plates? on \d+ sheets?\./);
}

async function placed(page: Page, says: RegExp): Promise<void> {
  await expect(page.getByTestId('cut-status')).toHaveText(says, { timeout: WORK_MS });
}

async function fold(page: Page, title: string): Promise<void> {
  await page.locator('summary').filter({ hasText: title }).click();
}

test('production: two designs on a sheet, planned, watched and written; a change afterwards is said @long', async ({
  page,
}) => {
  await openPage(page);
  await openCut(page);

  await test.step('adds a second design', async () => {
    const [chooser] = await Promise.all([
      page.waitForEvent('filechooser'),
      page.getByRole('button', { name: 'Add a design file' }).click(),
    ]);
    await chooser.setFiles('web/demo/golden-wedding.json');
    await placed(page, /^4 plates on 1 sheet\.$/);
  });

  await test.step('locks one plate, which then stays where it is', async () => {
    const plate = page.getByRole('button', { name: /^Plate B1#1,/ });
    await plate.focus();
    await page.keyboard.press('l');
    const locked = await page.getByRole('button', { name: /^Plate B1#1,.* locked at/ }).getAttribute('aria-label');
    await fillIn(page, 'How many A2', '3');
    await placed(page, /^6 plates on 1 sheet\.$/);
    expect(await page.getByRole('button', { name: /^Plate B1#1,/ }).getAttribute('aria-label')).toBe(locked);
  });

  await test.step('plans and watches', async () => {
    await page.getByRole('button', { name: 'Plan the cuts' }).click();
    await placed(page, /Planned\.$/);
    const play = page.getByTestId('play');
    await page.getByRole('button', { name: 'One contour on' }).click();
    await expect(play).toHaveText(/· 1 of \d+ cut/);
    await page.getByRole('combobox', { name: 'Speed' }).selectOption('150');
    await page.getByRole('button', { name: 'Play', exact: true }).click();
    await expect(play).toHaveText(/· \d\d+ of \d+ cut/);
    await page.getByRole('button', { name: 'Show it as it comes out' }).click();
  });

  await test.step('takes the sheet home in true size', async () => {
    await fold(page, 'Files');
    await page.locator('label').filter({ hasText: 'True size' }).click();
    const { name, bytes } = await downloadNamed(page, 'This sheet: DXF');
    expect(name).toMatch(/-sheet-01\.dxf$/);
    const { header, entities } = readDxf(bytes.toString('utf8'));
    expect(header['$INSUNITS']).toBe(4);
    const rims = entities.filter(({ layer }) => layer === 'RIM');
    const across = rims.map(({ radius = NaN }) => 2 * radius).sort((a, b) => a - b);
    expect(across).toHaveLength(6);
    // Three halves of the demo head, the half and the whole of the other, as each design says.
    for (const [i, mm] of [258, 260.5, 260.5, 260.5, 516, 521].entries()) expect(across[i]).toBeCloseTo(mm, 3);
    for (const rim of rims) {
      const { x = NaN, y = NaN } = rim.center ?? {};
      const r = rim.radius ?? NaN;
      expect(Math.min(x, y, 2500 - x, 1250 - y)).toBeGreaterThan(r);
      for (const other of rims) {
        if (other === rim) continue;
        const apart = Math.hypot(x - (other.center?.x ?? NaN), y - (other.center?.y ?? NaN));
        expect(apart).toBeGreaterThan(r + (other.radius ?? NaN));
      }
    }
    // Each opening lies in one plate, and before its rim in the order of the file.
    let looked = 0;
    entities.forEach((entity, i) => {
      if (entity.layer !== 'CUT' || entity.type !== 'LWPOLYLINE') return;
      const [point] = polylinePoints(entity, 1);
      const home = rims.filter(({ center, radius = 0 }) => {
        return Math.hypot((center?.x ?? NaN) - (point?.x ?? NaN), (center?.y ?? NaN) - (point?.y ?? NaN)) < radius;
      });
      expect(home).toHaveLength(1);
      expect(entities.indexOf(home[0]!)).toBeGreaterThan(i);
      looked++;
    });
    expect(looked).toBeGreaterThan(20);
  });

  await test.step('says when the design was changed since, and plans again', async () => {
    await page.getByRole('navigation', { name: 'Pages' }).getByRole('button', { name: 'Design', exact: true }).click();
    await goTo(page, 'say');
    await fillIn(page, 'Ring text, top', 'MARROW LANE CIDER');
    await worked(page);
    await page.getByRole('navigation', { name: 'Pages' }).getByRole('button', { name: 'Cut', exact: true }).click();
    const note = page.getByRole('alert').filter({ hasText: 'The plan no longer fits the designs.' }).first();
    await expect(note).toBeVisible();
    await page.getByRole('button', { name: 'Plan again' }).click();
    await expect(note).toHaveCount(0);
    await placed(page, /Planned\.$/);
  });
});

test('a series: three rows, one of them bad, and the others are made @long', async ({ page }) => {
  await openPage(page);
  await fillIn(page, 'Ring text, top', '{name}');
  await worked(page);
  await openCut(page);
  await fold(page, 'Series');
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: 'Choose a table (CSV)' }).click(),
  ]);
  const csv = 'name;note\r\nOLD MILL;first\r\n;no name\r\nCAFÉ ROW;third\r\n';
  await chooser.setFiles({ name: 'rows.csv', mimeType: 'text/csv', buffer: Buffer.from(csv) });
  await expect(page.getByTestId('series-head')).toHaveText(/rows\.csv: 3 rows, columns name, note\..*OLD MILL/);
  const zip = await downloadBy(page, () => page.getByRole('button', { name: 'Make 3 rows' }).click());
  await expect(page.getByTestId('series-end')).toHaveText('2 of 3 rows made.');
  await expect(page.getByRole('region', { name: 'Rows that are not cut' })).toHaveText(/Line 3:/);
  const { unzipSync } = await import('fflate');
  const names = Object.keys(unzipSync(new Uint8Array(zip.bytes)));
  expect(names.filter((n) => n.endsWith('.dxf'))).toHaveLength(4);
  expect(names.every((n) => /^000[24]-/.test(n))).toBe(true);
});
