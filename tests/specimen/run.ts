import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { Resvg } from '@resvg/resvg-js';
import { allFaces, type SheetWish, specimenSvg, TEXT } from './sheet.ts';

// `npm run -s specimen -- --out FOLDER`: specimen.svg and specimen.png of all faces in all manners, and picture.png,
// the small one of the README (--picture writes only that, into this folder).

const { values } = parseArgs({ options: { out: { type: 'string' }, picture: { type: 'boolean', default: false } } });
if (!values.out && !values.picture) {
  console.error('Say where to: npm run -s specimen -- --out FOLDER');
  process.exit(1);
}

const ALL: SheetWish = {
  faces: allFaces(),
  manners: ['hidden', 'upright', 'band'],
  text: TEXT,
  columns: 1,
  title: 'Bridges, face by face',
};

const PICTURE: SheetWish = {
  faces: [
    'playfair-display-700',
    'abril-fatface-400',
    'libre-caslon-text-700',
    'cinzel-700',
    'alfa-slab-one-400',
    'zilla-slab-700',
    'oswald-700',
    'bebas-neue-400',
    'limelight-400',
    'berkshire-swash-400',
    'uncial-antiqua-400',
    'unifrakturcook-700',
  ],
  manners: ['hidden'],
  text: 'ABOPQRaego0468&',
  columns: 2,
  title: 'Bridges in twelve of the faces',
};

if (values.out) {
  mkdirSync(values.out, { recursive: true });
  const svg = await specimenSvg(ALL);
  writeFileSync(join(values.out, 'specimen.svg'), svg);
  writeFileSync(join(values.out, 'specimen.png'), png(svg, 4200));
}
const small = png(await specimenSvg(PICTURE), 1800);
writeFileSync(values.out ? join(values.out, 'picture.png') : new URL('./picture.png', import.meta.url), small);

function png(svg: string, widthPx: number): Buffer {
  return new Resvg(svg, { fitTo: { mode: 'width', value: widthPx }, font: { loadSystemFonts: true } }).render().asPng();
}
