import { expect, type Page } from '@playwright/test';
import { PICTURE_CASES } from '../tests/hostile/picture-cases.ts';
import { SVG_CASES } from '../tests/hostile/svg-cases.ts';
import { measureDxf, SOUND } from './measure-dxf.ts';
import { downloadNamed, goTo, openFirst, openPage, test, verdict, worked } from './walk.ts';

const DXF = 'Large: DXF for the cutter';

/** Rings in rings, three levels deep, and a letter in the middle: every second one is metal that nothing holds. */
const NESTED = `<svg xmlns="http://www.w3.org/2000/svg" width="300mm" height="300mm" viewBox="0 0 300 300">
  <path fill-rule="evenodd" d="${[145, 120, 100, 75, 60].map(ring).join('')}"/>
  <path d="M150 115 L185 185 H168 L162 172 H138 L132 185 H115Z M150 142 L144 158 H156Z" fill="#fff" fill-rule="evenodd"/>
</svg>`;

function ring(r: number): string {
  return `M${150 - r} 150a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0Z`;
}

async function choose(page: Page, name: string, body: string | Uint8Array): Promise<void> {
  await page.getByTestId('drawing-file').setInputFiles({
    name,
    mimeType: name.endsWith('svg') ? 'image/svg+xml' : 'image/png',
    buffer: Buffer.from(body),
  });
}

async function cutFile(page: Page): Promise<ReturnType<typeof measureDxf>> {
  await goTo(page, 'take');
  await worked(page);
  return measureDxf((await downloadNamed(page, DXF)).bytes.toString('utf8'));
}

/** Everything that lies on the plate taken off, so that the drawing is alone. */
async function emptyPlate(page: Page): Promise<void> {
  const removers = page.getByRole('list').getByRole('button', { name: /^Remove / });
  while ((await removers.count()) > 0) await removers.first().click();
}

test('a drawing with islands in islands is held together in the cut file', async ({ page }) => {
  await openPage(page);
  await emptyPlate(page);
  await choose(page, 'rings.svg', NESTED);
  await expect(page.getByRole('dialog')).toContainText('Drawing “rings.svg”');
  await expect(page.getByTestId('artwork-notes')).toContainText('openings');
  await page.getByRole('button', { name: 'Put it on the plate' }).click();
  await expect(page.getByRole('button', { name: 'Drawing “rings.svg”', exact: true })).toBeVisible();
  await worked(page);
  await expect(verdict(page)).toHaveText(/Holds together/);
  const cut = await cutFile(page);
  expect(cut).toMatchObject(SOUND);
});

test('the beginning with a drawing asks for one of your own', { tag: '@long' }, async ({ page }) => {
  await openFirst(page);
  await page.getByRole('button', { name: 'A drawing in a ring' }).click();
  await expect(page.getByRole('button', { name: 'Your own drawing' })).toBeVisible();
  const svg = { name: 'rings.svg', mimeType: 'image/svg+xml', buffer: Buffer.from(NESTED) };
  await page.getByTestId('replace-drawing-file').setInputFiles(svg);
  await page.getByRole('button', { name: 'Put it on the plate' }).click();
  await expect(page.getByText('“rings.svg” is in the ring.')).toBeVisible();
  await worked(page);
  await expect(verdict(page)).toHaveText(/Holds together/);
  await page.getByText('Bell', { exact: true }).click();
  await expect(page.getByText('“rings.svg” is in the ring.')).toHaveCount(0);
  await expect(page.getByRole('radio', { name: 'Bell' })).toBeChecked();
});

test(
  'a motif is picked by its picture, set and repeated round the plate, by keyboard',
  { tag: '@long' },
  async ({ page }) => {
    await openPage(page);
    await emptyPlate(page);
    await page.getByRole('button', { name: 'Motif', exact: true }).press('Enter');
    const star = page.getByRole('dialog').getByRole('button', { name: 'Star', exact: true });
    await expect(star.locator('svg path')).toBeVisible({ timeout: 60_000 });
    await star.press('Enter');
    await expect(page.getByRole('dialog')).toHaveCount(0);
    await page.getByRole('button', { name: 'Adjust Star' }).press('Enter');
    const points = page.getByRole('slider', { name: 'Points' });
    await points.press('End');
    await expect(points).toHaveValue('16');
    await page.getByText('Round the plate', { exact: true }).click();
    await worked(page);
    const cut = await cutFile(page);
    expect(cut).toMatchObject(SOUND);
    expect(cut.openings).toBe(6);
  },
);

test('a picture is traced with a threshold and smoothing one sees', { tag: '@long' }, async ({ page }) => {
  await openPage(page);
  await emptyPlate(page);
  const png = await page.evaluate(async () => {
    const canvas = new OffscreenCanvas(400, 300);
    const pen = canvas.getContext('2d')!;
    pen.fillStyle = '#eee';
    pen.fillRect(0, 0, 400, 300);
    pen.fillStyle = '#222';
    pen.arc(200, 150, 100, 0, 7);
    pen.fill();
    pen.fillStyle = '#ddd';
    pen.fillRect(170, 120, 60, 60);
    return Array.from(new Uint8Array(await (await canvas.convertToBlob()).arrayBuffer()));
  });
  await choose(page, 'ring.png', Uint8Array.from(png));
  await expect(page.getByTestId('artwork-notes')).toContainText('1 opening.');
  await page.getByRole('slider', { name: 'Dark from here' }).press('ArrowRight');
  await page.getByRole('slider', { name: 'Smoothing' }).press('ArrowLeft');
  await page.getByText('What is light', { exact: true }).click();
  await expect(page.getByTestId('artwork-notes')).toContainText('2 openings.');
  await page.getByText('What is dark', { exact: true }).click();
  await expect(page.getByTestId('artwork-notes')).toContainText('1 opening.');
  await page.getByRole('button', { name: 'Put it on the plate' }).click();
  await worked(page);
  const cut = await cutFile(page);
  expect(cut).toMatchObject(SOUND);
});

const WORST = [
  'script element', 'HTML script inside', 'onload on the root', 'foreignObject with a page', 'picture that is a script',
  'use of another document', 'style that imports', 'transforming style sheet', 'billion laughs', 'entity from a file',
  'uses that multiply', 'nested ten thousand deep',
]; // prettier-ignore

test('hostile files dropped on the page run nothing, ask nothing, and end in a sentence', async ({ page }) => {
  test.slow();
  const asked: string[] = [];
  const opened: string[] = [];
  await openPage(page);
  page.on('request', (request) => asked.push(request.url()));
  page.on('dialog', (dialog) => {
    opened.push(dialog.message());
    void dialog.dismiss();
  });
  page.on('popup', () => opened.push('popup'));
  const cases = [
    ...SVG_CASES.filter((c) => WORST.includes(c.name)).map((c) => ({
      ...c,
      body: [...Buffer.from(c.file)],
      file: `${c.name}.svg`,
    })),
    ...PICTURE_CASES.map((c) => ({ ...c, body: [...c.bytes], file: `${c.name}.png` })),
  ];
  expect(cases.length).toBeGreaterThanOrEqual(20);
  for (const c of cases) {
    await page.evaluate(({ body, file }) => {
      const data = new DataTransfer();
      data.items.add(new File([Uint8Array.from(body)], file));
      document
        .getElementById('stage')!
        .dispatchEvent(new DragEvent('drop', { dataTransfer: data, bubbles: true, cancelable: true }));
    }, c);
    const dialog = page.getByRole('dialog');
    await expect(dialog).toContainText(c.file);
    if (c.ends === 'clean') {
      await expect(dialog.getByRole('button', { name: 'Put it on the plate' }), c.name).toBeEnabled();
      await expect(page.getByTestId('artwork-notes')).toContainText('1 opening.');
    } else await expect(page.getByTestId('artwork-problem'), c.name).toHaveText(/^.{30,}\.$/);
    await page.keyboard.press('Escape');
    await expect(dialog).toHaveCount(0);
  }
  expect(opened).toEqual([]);
  expect(await page.evaluate(() => (globalThis as { ran?: unknown }).ran)).toBeUndefined();
  // Only the page's own parts, loaded when they were first needed.
  const own = new URL(page.url()).origin;
  expect(asked.filter((url) => !url.startsWith(`${own}/`) && !url.startsWith('blob:'))).toEqual([]);
  expect(asked.filter((url) => /away|passwd|\.dtd|other\.svg/.test(url))).toEqual([]);
  await expect(verdict(page)).toHaveText(/Holds together/);
});
