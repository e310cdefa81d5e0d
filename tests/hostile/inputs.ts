import { readFace } from '../../geometry/adapters/opentype.ts';
import { emptyDesign, newLineText, newRingText } from '../../geometry/design/defaults.ts';
import { readDesign } from '../../geometry/design/read-design.ts';
import { readOrderFile } from '../../geometry/order-file/read-order-file.ts';
import { readRows } from '../../geometry/series/read-rows.ts';
import { readShop } from '../../geometry/shop/read-shop.ts';
import { readStock } from '../../geometry/stock/read-stock.ts';
import artwork from '../../web/words/en/work/artwork.json';
import { readText } from '../web/artwork/node-window.ts';
import { SHIPPED_SHOP, SPOILED_FILES } from '../shop/spoiled-files.ts';
import { readFileSync } from 'node:fs';
import { FILE_CASES, FONT_CASES, LINK_CASES } from './document-cases.ts';
import { doublingGlyphs, doublingSubroutines, overlappingCharacters, overlappingIndex } from './font-bombs.ts';
import { PICTURE_CASES } from './picture-cases.ts';
import { SVG_CASES } from './svg-cases.ts';
import { surfaceNamed } from './fuzz/run-mutants.ts';

/** One bad input of which a person must be told: gives the sentence. */
export interface HostileInput {
  readonly name: string;
  readonly read: () => string | undefined;
}

const REFUSALS: Readonly<Record<string, string>> = artwork.refused;
const problem = (read: object): string | undefined => ('problem' in read ? String(read.problem) : undefined);
const ofDesign = (text: string) => () => problem(readDesign(text));

const SOUND = {
  ...emptyDesign(),
  title: 'Marrow Lane',
  elements: [
    newRingText('ring', 'oswald-700'),
    newLineText('line', 'oswald-700'),
    { kind: 'border', id: 'border', style: 'beads', inner: 0.9, outer: 0.95, count: 90 },
    { kind: 'motif', id: 'star', motif: 'star', x: 0, y: 0, size: 0.3, turnDeg: 0, around: { count: 4 } },
    { kind: 'artwork', id: 'owl', name: 'owl.svg', path: 'M-.5 -.5L.5 -.5L.5 .5L-.5 .5Z', x: 0, y: 0, size: 0.2, turnDeg: 0, around: 'once' },
  ],
}; // prettier-ignore

/** Every value of the document by its path. */
function pathsOf(value: unknown, path: readonly (string | number)[] = []): (readonly (string | number)[])[] {
  if (typeof value !== 'object' || value === null) return [path];
  return [
    path,
    ...Object.entries(value).flatMap(([k, v]) => pathsOf(v, [...path, Array.isArray(value) ? Number(k) : k])),
  ];
}

function withValue(path: readonly (string | number)[], json: string): string {
  const copy = structuredClone(SOUND) as unknown;
  let at = copy as Record<string | number, unknown>;
  for (const key of path.slice(0, -1)) at = at[key] as typeof at;
  at[path.at(-1)!] = '@here@';
  return JSON.stringify(copy).replace('"@here@"', () => json);
}

/** Each part of a design as something it cannot be. */
const WRONG: readonly (readonly [string, string])[] = [
  ['a number beyond all', '1e400'],
  ['a list in a list', '[[[]]]'],
  ['a group of strange parts', '{"then":{"length":-1}}'],
  ['nothing', 'null'],
];
const parts = pathsOf(SOUND).filter((path) => path.length > 0);
const wrongParts = parts.flatMap((path) =>
  WRONG.map(([what, json]): HostileInput => ({
    name: `${path.join('.')} as ${what}`,
    read: ofDesign(withValue(path, json)),
  })),
);

/** Each name of a group said twice. */
const whole = JSON.stringify(SOUND, null, 1);
const twice = [...whole.matchAll(/^( *)("\w+"): /gm)].map(({ index, 2: name }): HostileInput => ({
  name: `${name} twice at ${index}`,
  read: ofDesign(`${whole.slice(0, index)}${name}: 1, ${whole.slice(index)}`),
}));

const cutShort = Array.from({ length: 30 }, (_, i): HostileInput => {
  const length = Math.floor((whole.length * (i + 0.5)) / 30);
  return { name: `a design cut off after ${length}`, read: ofDesign(whole.slice(0, length)) };
});

const paths = [
  'M0 0L1 0L1 5000Z', 'M0 0L1e300 1e300Z', 'M0 0L.001 0L.001 .001Z', 'M50 50L51 50L51 51L50 51Z', 'M0 0C9 9 -9 99 0 0Z',
  'M0 0L1 0L1 1L0 1Z M900 0L901 0Z', 'M-300 0L300 0L300 1Z',
].map((path): HostileInput => ({ name: `artwork ${path}`, read: ofDesign(withValue(['elements', 4, 'path'], JSON.stringify(path))) })); // prettier-ignore

const STOCK = readFileSync('geometry/stock/starting-stock.json', 'utf8');
const files = (
  [
    ['stock', STOCK, readStock],
    ['shop', SHIPPED_SHOP, readShop],
  ] as const
).flatMap(([name, text, read]) =>
  Array.from({ length: 15 }, (_, i): HostileInput => {
    const length = Math.floor((text.length * (i + 0.5)) / 16);
    return { name: `${name} cut off after ${length}`, read: () => problem(read(text.slice(0, length))) };
  }),
);

const fonts = [doublingGlyphs(30), doublingGlyphs(8, 60), doublingSubroutines(60), doublingSubroutines(9, 50), overlappingCharacters(8000), overlappingIndex(60_000)]; // prettier-ignore
const order = new Uint8Array(readFileSync('tests/order-file/version-1-order.zip'));
const rows = ['', 'name', '"a', 'a,a\n1,2', '\u0000\u0001\u0002', ',,\n1,2', `a\n${'1\n'.repeat(20_000)}`];

export const HOSTILE_INPUTS: readonly HostileInput[] = [
  ...wrongParts,
  ...twice,
  ...cutShort,
  ...paths,
  ...files,
  ...SPOILED_FILES.map(({ what, text }): HostileInput => ({
    name: `shop: ${what}`,
    read: () => problem(readShop(text)),
  })),
  ...[...FILE_CASES, ...LINK_CASES, ...FONT_CASES].filter((c) => c.says !== undefined),
  ...SVG_CASES.filter((c) => c.ends !== 'clean').map((c): HostileInput => ({
    name: `svg: ${c.name}`,
    read() {
      const read = readText(c.file);
      return 'refused' in read ? REFUSALS[read.refused] : undefined;
    },
  })),
  ...PICTURE_CASES.filter((c) => c.ends !== 'decode' && c.ends !== 'empty').map((c): HostileInput => ({
    name: `picture: ${c.name}`,
    read() {
      const read = surfaceNamed('picture').read(c.bytes);
      return 'told' in read ? read.told : undefined;
    },
  })),
  ...fonts.map((bytes, i): HostileInput => ({ name: `font bomb ${i}`, read: () => problem(readFace('own:0', bytes)) })),
  ...rows.map((text, i): HostileInput => ({
    name: `table ${i}`,
    read: () => problem(readRows(new TextEncoder().encode(text))),
  })),
  ...Array.from({ length: 20 }, (_, i): HostileInput => ({
    name: `an order cut off after ${i + 1} of 21 parts`,
    read() {
      const read = readOrderFile(order.slice(0, Math.floor((order.length * (i + 1)) / 21)));
      return 'faults' in read ? read.faults[0]?.problem : undefined;
    },
  })),
];
