import { expect, type Page } from '@playwright/test';
import { polylinePoints, readDxf } from '../tests/readers/dxf-reader.ts';
import { addHalf, downloadBy, downloadNamed, fillIn, goTo, openPage, test, worked } from './walk.ts';

const WORK_MS = 120_000;

/** The page for production, from its place in the bar. */
async function openCut(page: Page, says = /\d plates? on \d+ sheets?\./): Promise<void> {
  await page.getByRole('navigation', { name: 'Pages' }).getByRole('button', { name: 'Cut', exact: true }).click();
  await expect(page).toHaveURL(/\?page=cut/);
  await placed(page, says);
}

/** A design with a {column} is the form of a series, and by itself not cut. */
const ONLY_A_FORM = /^Nothing to cut yet/;

async function placed(page: Page, says: RegExp): Promise<void> {
  await expect(page.getByTestId('cut-status')).toHaveText(says, { timeout: WORK_MS });
}

/** Page Cut with the design of the first visit at two sizes. */
async function openWithHalf(page: Page): Promise<void> {
  await openPage(page);
  await addHalf(page);
  await page.goto('/?page=cut');
  await placed(page, /^2 plates on 1 sheet\.$/);
}

async function fold(page: Page, title: string): Promise<void> {
  await page.locator('summary').filter({ hasText: title }).click();
}

/** Takes the planned sheet home in true size: what the file holds, its rims as wide as is said here. */
async function trueSizeSheet(page: Page, rimsMm: readonly number[]) {
  await fold(page, 'Files');
  await page.locator('label').filter({ hasText: 'True size' }).click();
  const { name, bytes } = await downloadNamed(page, 'This sheet: DXF');
  expect(name).toMatch(/-sheet-01\.dxf$/);
  const { header, entities } = readDxf(bytes.toString('utf8'));
  expect(header['$INSUNITS']).toBe(4);
  const rims = entities.filter(({ layer }) => layer === 'RIM');
  const across = rims.map(({ radius = NaN }) => 2 * radius).sort((a, b) => a - b);
  expect(across).toHaveLength(rimsMm.length);
  for (const [i, mm] of rimsMm.entries()) expect(across[i]).toBeCloseTo(mm, 3);
  return { entities, rims };
}

/** Short enough for every run: the other journeys here are @long. */
test('the open design is planned, and its sheet goes home in true size', async ({ page }) => {
  await openWithHalf(page);
  await page.getByRole('button', { name: 'Plan the cuts' }).click();
  await placed(page, /Planned\.$/);
  const { entities } = await trueSizeSheet(page, [260.5, 521]);
  expect(entities.filter(({ layer }) => layer === 'CUT').length).toBeGreaterThan(20);
});

test('production: two designs on a sheet, planned, watched and written; a change afterwards is said @long', async ({
  page,
}) => {
  await openPage(page);
  await addHalf(page);
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
    // Three halves of the demo head, the half and the whole of the other, as each design says.
    const { entities, rims } = await trueSizeSheet(page, [258, 260.5, 260.5, 260.5, 516, 521]);
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
    const note = page.getByRole('alert').filter({ hasText: 'The plan no longer fits the designs.' });
    await expect(note).toHaveCount(1);
    // the files of such a plan are had on purpose only, and say what they are
    await fold(page, 'Files');
    await expect(page.getByRole('button', { name: 'This sheet: DXF' })).toBeDisabled();
    await page.getByText('Take the files of the outdated plan all the same').click();
    const { name, bytes } = await downloadNamed(page, 'This sheet: DXF');
    expect(name).toMatch(/-outdated-sheet-01\.dxf$/);
    expect(bytes.toString('utf8')).toMatch(/^OUTDATED: .*changed/m);
    await page.getByRole('button', { name: 'Plan again' }).click();
    await expect(note).toHaveCount(0);
    await placed(page, /Planned\.$/);
  });
});

test('pieces that may tip are mended one by one, by keys alone @long', async ({ page }) => {
  await openWithHalf(page);
  await page.getByRole('button', { name: 'Plan the cuts' }).click();
  await placed(page, /Planned\.$/);
  await fold(page, 'Order and ways');
  const risky = page.getByTestId('risky');
  const counted = async () => Number(/^\d+/.exec(await risky.innerText())?.[0] ?? 0);
  await expect(risky).toHaveText(/^\d/);
  const before = await counted();
  const piece = page
    .getByRole('region', { name: 'Pieces that drop out' })
    .getByRole('button', { expanded: false })
    .first();
  await piece.focus();
  await page.keyboard.press('Enter');
  const last = page.getByRole('checkbox', { name: /^(Cut its word last|Its word is cut last)/ });
  await last.focus();
  await page.keyboard.press('Space');
  await expect(page.getByRole('checkbox', { name: 'Its word is cut last' })).toBeChecked();
  const tabs = page.getByRole('checkbox', { name: 'Small tabs on this piece' });
  await tabs.focus();
  await page.keyboard.press('Space');
  await expect.poll(counted).toBe(before - 1);
  await expect(tabs).toBeFocused();
  await page.getByRole('button', { name: 'Let all go' }).press('Enter');
  await expect.poll(counted).toBe(before);
});

test('four widths of each mark’s ring say whether the sheet moved @long', async ({ page }) => {
  await openWithHalf(page);
  await fold(page, 'Drift');
  await page.getByText('Cut witness marks').click();
  await page.getByRole('button', { name: 'Plan the cuts' }).click();
  await placed(page, /Planned\.$/);
  const fill = async (mark: number, widths: readonly number[]) => {
    const group = page.getByRole('group', { name: new RegExp(`^Mark ${mark} `) });
    for (const [i, side] of ['Left', 'Right', 'Above', 'Below'].entries())
      await group.getByRole('textbox', { name: side, exact: true }).fill(String(widths[i]));
  };
  const verdict = page.getByTestId('drift');
  await fill(1, [3, 3, 3.01, 2.99]);
  await fill(2, [3.01, 2.99, 3, 3]);
  await expect(verdict).toContainText('kept its place');
  // both marks say a millimetre to the right
  await fill(1, [4, 2, 3, 3]);
  await fill(2, [4, 2, 3, 3]);
  await expect(verdict).toContainText('Shift 1 mm to the right, 0 mm up.');
  // one digit read wrong
  await fill(1, [4, 2, 3.9, 3]);
  await expect(page.getByRole('alert').filter({ hasText: 'Measure this mark again.' })).toBeVisible();
});

test('a shop’s own material, sheet and price are what the page shows @long', async ({ page }) => {
  await page.route('**/stock.json', async (route) => {
    const stock = (await (await route.fetch()).json()) as {
      sheets: { id: string; widthMm: number; heightMm: number; source: string }[];
      materials: { pricePerKg: { value: number; source: string } }[];
      work: { packingMinPerOrder: { value: number } };
    };
    stock.sheets.unshift({ id: 'ours-1', widthMm: 1234, heightMm: 987, source: 'our own rack' });
    for (const material of stock.materials) material.pricePerKg = { value: 1000, source: 'our supplier' };
    await route.fulfill({ json: stock });
  });
  await openPage(page);
  await addHalf(page);
  // Loaded anew, the page would ask its offline worker, which nobody stands before.
  await openCut(page);
  await expect(page.getByTestId('which-sheet')).toContainText('1234 × 987 mm');
  await page.getByRole('button', { name: 'Plan the cuts' }).click();
  await placed(page, /Planned\.$/);
  await fold(page, 'Time and price');
  const row = page.getByRole('row', { name: /^Sheet 1234 × 987 mm: / });
  await expect(row).toBeVisible();
  await expect(page.getByText('ours-1')).toHaveCount(0);
  const each = Number(/at €([\d,.]+)/.exec(await row.innerText())?.[1]?.replaceAll(',', ''));
  // Steel of 1.5 mm, 7.85 kg to the square metre and millimetre: the design’s own sheet at 1000 a kilogram.
  expect(each).toBeGreaterThan(1000 * 1.234 * 0.987 * 7.5);
});

test.describe('on a phone', () => {
  test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });
  test('two fingers bring the sheet nearer, and not the page @long', async ({ page }) => {
    await openWithHalf(page);
    const sheet = (await page.getByTestId('sheet').boundingBox())!;
    const [x, y] = [sheet.x + sheet.width * 0.6, sheet.y + sheet.height * 0.4];
    const plate = page.getByRole('button', { name: /^Plate A1#1,/ });
    const before = (await plate.boundingBox())!;
    const client = await page.context().newCDPSession(page);
    const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', apart?: number) =>
      client.send('Input.dispatchTouchEvent', {
        type,
        touchPoints: apart === undefined ? [] : [-1, 1].map((side, id) => ({ x: x + side * apart, y, id })),
      });
    await touch('touchStart', 20);
    for (let apart = 24; apart <= 60; apart += 4) await touch('touchMove', apart);
    await touch('touchEnd');
    await expect.poll(async () => (await plate.boundingBox())!.width / before.width).toBeGreaterThan(2);
    expect(await page.evaluate(() => visualViewport?.scale)).toBe(1);
    await page.getByRole('button', { name: 'Whole sheet' }).click();
    await expect.poll(async () => (await plate.boundingBox())!.width).toBeCloseTo(before.width, 1);
  });
});

test('a series goes on after a cancel and after a reload, no row made twice @long', async ({ page }) => {
  const csv = ['name', ...Array.from({ length: 16 }, (_, i) => `OLD MILL ${i + 1}`)].join('\n');
  const choose = async () => {
    await fold(page, 'Series');
    const [chooser] = await Promise.all([
      page.waitForEvent('filechooser'),
      page.getByRole('button', { name: 'Choose a table (CSV)' }).click(),
    ]);
    await chooser.setFiles({ name: 'rows.csv', mimeType: 'text/csv', buffer: Buffer.from(csv) });
    await expect(page.getByTestId('series-head')).toHaveText(/16 rows/);
  };
  const names = async (zip: Buffer) => {
    const { unzipSync } = await import('fflate');
    return Object.keys(unzipSync(new Uint8Array(zip)));
  };
  await openPage(page);
  await fillIn(page, 'Ring text, top', '{name}');
  await worked(page);
  await openCut(page, ONLY_A_FORM);
  await choose();
  const part = await downloadBy(page, async () => {
    await page.getByRole('button', { name: 'Make 16 rows' }).click();
    await expect
      .poll(() => page.getByRole('progressbar').evaluate((e: HTMLProgressElement) => e.value))
      .toBeGreaterThan(2);
    await page.getByRole('button', { name: 'Cancel' }).click();
  });
  const made = (await names(part.bytes)).length / 2;
  await expect(page.getByTestId('series-end')).toContainText(`The ${made} rows made so far of 16`);
  await page.reload();
  await placed(page, ONLY_A_FORM);
  await choose();
  await expect(page.getByText(`${made} rows are here already from an earlier run.`)).toBeVisible();
  const whole = await downloadBy(page, () => page.getByRole('button', { name: /^Go on with the other/ }).click());
  await expect(page.getByTestId('series-end')).toHaveText('16 of 16 rows made.');
  expect(new Set(await names(whole.bytes)).size).toBe(32);
});

test('a series: three rows, one of them bad, and the others are made @long', async ({ page }) => {
  await openPage(page);
  await fillIn(page, 'Ring text, top', '{name}');
  await worked(page);
  await openCut(page, ONLY_A_FORM);
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
  expect(names.filter((n) => n.endsWith('.dxf'))).toHaveLength(2);
  expect(names.every((n) => /^000[24]-/.test(n))).toBe(true);
});
