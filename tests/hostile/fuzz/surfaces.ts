import { readFileSync } from 'node:fs';
import { packageFile } from '../../../fonts/node-faces.ts';
import { ownFaceFrom } from '../../../fonts/own-face.ts';
import { compose } from '../../../geometry/artwork/compose.ts';
import { emptyDesign, newLineText, newRingText } from '../../../geometry/design/defaults.ts';
import { readDesign } from '../../../geometry/design/read-design.ts';
import type { Design } from '../../../geometry/design/schema.ts';
import { designText } from '../../../geometry/design/write-design.ts';
import { readOrderFile } from '../../../geometry/order-file/read-order-file.ts';
import { readRows } from '../../../geometry/series/read-rows.ts';
import { readShop } from '../../../geometry/shop/read-shop.ts';
import { readStock } from '../../../geometry/stock/read-stock.ts';
import { fileKind, pictureSize } from '../../../web/design/artwork/picture-kind.ts';
import { refusePicture } from '../../../web/design/artwork/read-picture.ts';
import { packDesign } from '../../../web/handover/link/pack-design.ts';
import { readLink } from '../../../web/handover/link/read-link.ts';
import artwork from '../../../web/words/en/work/artwork.json';
import { readText, svg } from '../../web/artwork/node-window.ts';
import { PICTURE_CASES } from '../picture-cases.ts';

/** What became of an input: a person is told a sentence, or it was taken, here as text that can be compared. */
export type Outcome = { readonly told: string } | { readonly taken: string };

/** A way in from outside, and sound inputs of it that are harmed. */
export interface Surface {
  readonly name: string;
  readonly seeds: readonly Uint8Array[];
  /** It carries sums or hashes: what was changed and is taken all the same must still say the same. */
  readonly sealed?: boolean;
  /** How many of a thousand mutants are of it: the slow ones are fewer. */
  readonly share: number;
  read(bytes: Uint8Array): Outcome;
}

const REFUSALS: Readonly<Record<string, string>> = artwork.refused;
const encode = (text: string): Uint8Array => new TextEncoder().encode(text);
const decode = (bytes: Uint8Array): string => new TextDecoder().decode(bytes);
const textOf = (file: string): Uint8Array => new Uint8Array(readFileSync(file));

const DEMO = textOf('web/demo/golden-wedding.json');
const SMALL: Design = {
  ...emptyDesign(),
  title: 'Marrow Lane',
  elements: [newLineText('line', 'stardos-stencil-400'), newRingText('ring', 'oswald-700')],
};
const REVISED: Design = {
  ...SMALL,
  revisions: [{ letter: 'A', at: '2027-01-02', why: 'first', fingerprint: 'ab', design: partsOf(SMALL) }],
};

function partsOf({ title, head, surface, plates, stock, elements, bridges }: Design) {
  return { title, head, surface, plates, stock, elements, bridges };
}

function packed(design: Design): Uint8Array {
  const made = packDesign(design);
  return encode('fragment' in made ? made.fragment : '');
}

function outcome(read: object, taken: () => string): Outcome {
  return 'problem' in read ? { told: String(read.problem) } : { taken: taken() };
}

const design = (bytes: Uint8Array): Outcome => {
  const read = readDesign(decode(bytes));
  return outcome(read, () => ('design' in read ? designText(read.design) : ''));
};

const DRAWING = svg(
  '<style>g > path { fill: black } .a { stroke: none }</style><defs><g id="u"><path d="M0 0h9v9z"/></g></defs>' +
    '<g class="a" transform="rotate(9)"><path d="M10 10C20 0 30 20 40 10A5 5 0 0 1 50 50Z"/><use href="#u" x="3"/></g>' +
    '<circle cx="60" cy="60" r="9" fill="white"/><polygon points="1,2 3,4 9,1"/><rect rx="2" width="20" height="9"/>',
);

export const SURFACES: readonly Surface[] = [
  { name: 'design', share: 250, seeds: [DEMO, encode(designText(SMALL))], read: design },
  { name: 'revisions', share: 100, seeds: [encode(designText(REVISED))], read: design },
  {
    name: 'link',
    share: 150,
    sealed: true,
    seeds: [packed(SMALL), packed(REVISED)],
    read(bytes) {
      const read = readLink(decode(bytes));
      return outcome(read, () => ('design' in read ? designText(read.design) : ''));
    },
  },
  {
    name: 'svg',
    share: 80,
    seeds: [encode(DRAWING)],
    read(bytes) {
      const read = readText(decode(bytes));
      if ('refused' in read) return { told: REFUSALS[read.refused] ?? '' };
      const made = compose(read.shapes, 'dark');
      return 'trouble' in made ? { told: REFUSALS[made.trouble] ?? '' } : { taken: made.path };
    },
  },
  {
    name: 'picture',
    share: 120,
    seeds: PICTURE_CASES.map((c) => c.bytes).filter((bytes) => bytes.length > 8),
    read(bytes) {
      const kind = fileKind(bytes);
      const refused = kind === 'picture' ? refusePicture(bytes) : 'unknownKind';
      return refused === undefined
        ? { taken: JSON.stringify(pictureSize(bytes)) }
        : { told: REFUSALS[refused] ?? kind };
    },
  },
  {
    name: 'font',
    share: 50,
    seeds: [textOf(packageFile('@fontsource/oswald', 'files/oswald-latin-700-normal.woff'))],
    read(bytes) {
      const read = ownFaceFrom(bytes, 'font.ttf');
      return outcome(read, () => 'font');
    },
  },
  {
    name: 'csv',
    share: 120,
    seeds: [
      encode('name;date;quantity\r\n"Anna; Otto";2027;3\r\n"=1+1";x;2\r\n'),
      encode('\uFEFFname,date\n"a""b",c\n'),
    ],
    read(bytes) {
      const read = readRows(bytes);
      return outcome(read, () => JSON.stringify(read));
    },
  },
  {
    name: 'stock',
    share: 50,
    seeds: [textOf('geometry/stock/starting-stock.json')],
    read: (bytes) => outcome(readStock(decode(bytes)), () => 'stock'),
  },
  {
    name: 'shop',
    share: 50,
    seeds: [textOf('geometry/shop/starting-shop.json')],
    read: (bytes) => outcome(readShop(decode(bytes)), () => 'shop'),
  },
  {
    name: 'order',
    share: 30,
    sealed: true,
    seeds: [textOf('tests/order-file/version-1-order.zip')],
    read(bytes) {
      const read = readOrderFile(bytes);
      if ('faults' in read && read.faults.length > 0) return { told: read.faults[0]!.problem };
      return { taken: 'design' in read && read.design ? designText(read.design) : '' };
    },
  },
];
