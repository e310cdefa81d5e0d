import { readFile } from 'node:fs/promises';
import type { Page } from '@playwright/test';
import { Resvg } from '@resvg/resvg-js';
import { readDesign } from '../../../geometry/design/read-design.ts';
import { arrangeOne } from '../../../web/barrel/solid/arrange.ts';
import { pictureHalfMm } from '../../../web/barrel/solid/eye.ts';
import { setView } from '../../../web/barrel/solid/set-views.ts';
import { once, rounded, type Claim } from '../claim.ts';
import { NO_BROWSER } from '../page/serve-page.ts';
import { openBarrel, pickState, visit, withPage } from './open-barrel.ts';

const LEAST_SHARE = 0.98;
/** A colour that neither oak nor steel has anywhere. */
const PAINT = '#ff00ff';
/** Halfway between bare oak, which has less blue than green, and that paint. */
const PAINTED = 0.3;

/**
 * The page's own picture of the painted head straight on, against the page's own cut file: both as pixels, the cut
 * file's contours filled by another program (resvg). Share of what either has that both have.
 */
const compared = once(() =>
  withPage(4793, async (served) => {
    const page = await visit(served);
    await openBarrel(page);
    await pickState(page, 'Painted');
    await page.getByLabel('A colour of your own').fill(PAINT);
    await page.getByRole('button', { name: 'Straight on' }).click();
    await page.waitForTimeout(1000);
    const picture = await download(page, () => page.getByRole('button', { name: 'Save a picture' }).click());
    await page.getByRole('button', { name: /Take it home/ }).click();
    const svg = (
      await download(page, () => page.getByRole('button', { name: 'Large: SVG drawing' }).click())
    ).toString();
    const seen = pixels(
      `<image width="2000" height="2000" href="data:image/png;base64,${picture.toString('base64')}"/>`,
    );
    const own = await download(page, () => page.getByRole('button', { name: 'Save the design file' }).click());
    const half = sideHalfMm(own.toString());
    const contours = [...svg.matchAll(/<path [^>]*d="([^"]+)"/g)].map((match) => match[1]).join(' ');
    const scale = `translate(1000 1000) scale(${1000 / half})`;
    const cut = pixels(`<path transform="${scale}" fill="#fff" fill-rule="evenodd" d="${contours}"/>`);
    return { share: overlap(seen, cut), width: picture.readUInt32BE(16), height: picture.readUInt32BE(20) };
  }),
);

/** Half the side of the picture of a design, as web/barrel/solid/ says it draws it. */
function sideHalfMm(design: string): number {
  const read = readDesign(design);
  if ('problem' in read) throw new Error(read.problem);
  return pictureHalfMm(setView('straight', arrangeOne(read.design, undefined)));
}

async function download(page: Page, press: () => Promise<void>): Promise<Buffer> {
  const [download] = await Promise.all([page.waitForEvent('download'), press()]);
  return readFile(await download.path());
}

function pixels(content: string): Uint8Array {
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="2000" height="2000">${content}</svg>`;
  return new Resvg(svg, { background: '#000' }).render().pixels;
}

function overlap(seen: Uint8Array, cut: Uint8Array): number {
  let [both, either] = [0, 0];
  for (let i = 0; i < cut.length; i += 4) {
    const [r = 0, g = 0, b = 0] = seen.subarray(i, i + 3);
    const painted = (b - g) / Math.max(1, r) > PAINTED;
    const open = (cut[i] ?? 0) > 127;
    if (painted && open) both++;
    if (painted || open) either++;
  }
  return either === 0 ? 0 : both / either;
}

/** The picture that can be taken away. */
export const PICTURE_CLAIMS: readonly Claim[] = [
  {
    name: 'mark-equals-cut-file',
    wanted: `intersection over union at least ${LEAST_SHARE}`,
    async measure() {
      const found = await compared();
      if (!found) return NO_BROWSER;
      return { value: rounded(found.share, 4), unit: '', ok: found.share >= LEAST_SHARE };
    },
  },
  {
    name: 'picture-size',
    wanted: '2000 x 2000 px',
    async measure() {
      const found = await compared();
      if (!found) return NO_BROWSER;
      return {
        value: `${found.width} x ${found.height}`,
        unit: 'px',
        ok: found.width === 2000 && found.height === 2000,
      };
    },
  },
];
