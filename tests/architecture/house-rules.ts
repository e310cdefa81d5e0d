/**
 * Which part may import which: the map of the house (DEVELOPERS.md) as data. An arrow not listed is forbidden,
 * type imports included. `x (types)`: only types may come from there.
 */

export interface Part {
  /** A file or a folder (ending in /); the longest match counts. */
  readonly path: string;
  readonly may: readonly string[];
  /** It is started, never imported: what others need of it belongs further down. */
  readonly isRoof?: true;
}

/** Words everyone speaks in: layer 0 of the kernel. */
const WORDS = [
  'geometry/units.ts',
  'geometry/shapes.ts',
  'geometry/findings.ts',
  'geometry/cache.ts',
  'geometry/motif.ts',
  'geometry/sentences/',
];
/** Layer 0 and 1. */
const BASE = [...WORDS, 'geometry/measure/', 'geometry/adapters/'];

/** What stands below every page. */
const BELOW_PAGES = ['geometry/', 'fonts/', 'web/words/', 'web/ui/', 'web/state/', 'web/worker/'];
/** What pages share. */
const SHARED = ['web/page/', 'web/handover/', 'web/barrel/'];

export const PARTS: readonly Part[] = [
  { path: 'geometry/units.ts', may: [] },
  { path: 'geometry/shapes.ts', may: ['geometry/units.ts'] },
  { path: 'geometry/findings.ts', may: ['geometry/shapes.ts', 'geometry/sentences/ (types)'] },
  // Every sentence of the kernel, in English.
  { path: 'geometry/sentences/', may: [] },
  { path: 'geometry/cache.ts', may: [] },
  { path: 'geometry/motif.ts', may: ['geometry/shapes.ts'] },
  { path: 'geometry/measure/', may: WORDS },
  { path: 'geometry/adapters/', may: [...WORDS, 'geometry/measure/'] },
  { path: 'geometry/design/', may: [...WORDS, 'geometry/measure/'] },
  // How a design stands to what was approved. A difference is told by the names of materials, barrels and motifs.
  {
    path: 'geometry/approval/',
    may: [
      ...BASE,
      'geometry/design/',
      'geometry/stock/',
      'geometry/barrel/barrels.ts',
      'geometry/barrel/blank.ts',
      'geometry/motifs/',
      'geometry/plate/ (types)',
      'geometry/shop/ (types)',
    ],
  },
  // What was chosen (stock, head) is a record of the design; a stock file is read and refused as a design is.
  {
    path: 'geometry/stock/',
    may: [
      ...WORDS,
      'geometry/design/say-where.ts',
      'geometry/design/visible.ts',
      'geometry/design/json-places.ts',
      'geometry/design/ (types)',
    ],
  },
  // A shop's own file may hold a stock file, is read and refused as one, and prices what was chosen.
  {
    path: 'geometry/shop/',
    may: [
      ...BASE,
      'geometry/stock/',
      'geometry/design/say-where.ts',
      'geometry/design/visible.ts',
      'geometry/design/json-places.ts',
      'geometry/design/ (types)',
    ],
  },
  { path: 'geometry/barrel/', may: [...BASE, 'geometry/design/ (types)'] },
  { path: 'geometry/motifs/', may: BASE },
  // A design carries a drawing's path only up to a length.
  { path: 'geometry/artwork/', may: [...BASE, 'geometry/design/limits.ts'] },
  { path: 'geometry/layout/', may: [...BASE, 'geometry/motifs/', 'geometry/design/ (types)'] },
  { path: 'geometry/openings/', may: [...BASE, 'geometry/layout/ (types)'] },
  // The design's wishes for bridges go in as a record; one put in by hand is kept in terms of the letter it sits on.
  {
    path: 'geometry/bridges/',
    may: [
      ...BASE,
      'geometry/openings/ (types)',
      'geometry/stock/ (types)',
      'geometry/design/ (types)',
      'geometry/layout/ (types)',
    ],
  },
  // A check holds the plate against the design, the head it must drop into and the sheet it is cut from.
  {
    path: 'geometry/checks/',
    may: [
      ...BASE,
      'geometry/stock/',
      'geometry/barrel/',
      'geometry/motifs/',
      'geometry/layout/',
      'geometry/design/places.ts',
      'geometry/design/ (types)',
      'geometry/bridges/ (types)',
    ],
  },
  // A cut plan is made of finished plates, for what the shop's machines can do, on its sheets.
  {
    path: 'geometry/cutplan/',
    may: [
      ...BASE,
      'geometry/stock/',
      'geometry/sheet/',
      'geometry/plate/ (types)',
      'geometry/bridges/ (types)',
      'geometry/design/ (types)',
    ],
  },
  { path: 'geometry/sheet/', may: BASE },
  // The record of a finished plate: types of every stage that adds to it.
  {
    path: 'geometry/plate/',
    may: [...WORDS, 'geometry/layout/ (types)', 'geometry/bridges/ (types)', 'geometry/stock/ (types)'],
  },
  // Files name materials and processes, and warn by them; a sheet says how its plate is rolled, how long it is cut and
  // of which sheet. All say how they stand to the approval.
  {
    path: 'geometry/files/',
    may: [
      ...BASE,
      'geometry/stock/',
      'geometry/barrel/',
      'geometry/plate/ (types)',
      'geometry/cutplan/',
      'geometry/sheet/ (types)',
      'geometry/design/joint-fingerprint.ts',
      'geometry/design/show-fingerprint.ts',
      'geometry/design/ (types)',
      'geometry/approval/standing.ts',
      'geometry/approval/acceptances.ts',
    ],
  },
  // An order in one ZIP, written and read back; it marks every file, knows how files are named, and names the stock.
  {
    path: 'geometry/order-file/',
    may: [
      ...BASE,
      'geometry/design/',
      'geometry/approval/standing.ts',
      'geometry/approval/same-fingerprint.ts',
      'geometry/files/',
      'geometry/stock/',
      'geometry/plate/ (types)',
    ],
  },
  // The proof is what the customer reads before anything is cut: pages like the files', and what the head looks like.
  {
    path: 'geometry/proof/',
    may: [
      ...BASE,
      'geometry/files/',
      'geometry/stock/',
      'geometry/barrel/',
      'geometry/shop/',
      'geometry/plate/ (types)',
      'geometry/cutplan/ (types)',
      'geometry/design/kinds.ts',
      'geometry/design/show-fingerprint.ts',
      'geometry/design/ (types)',
      'geometry/approval/',
    ],
  },
  // All stages in their order, what is kept between plates, and the last proof before files are written.
  { path: 'geometry/pipeline/', may: ['geometry/'] },
  // A design for every row of a table: the whole chain, again and again.
  { path: 'geometry/series/', may: ['geometry/'] },
  // The headless commands: the roof of the kernel.
  { path: 'geometry/command/', may: ['geometry/', 'fonts/'], isRoof: true },
  // Our drawings are handed to the layout together with the faces: both come only when a design uses them.
  { path: 'fonts/', may: [...WORDS, 'geometry/adapters/', 'geometry/motifs/', 'geometry/design/own-face-id.ts'] },
  // All words of the interface: they may name what findings and designs hold, and reach nothing else.
  { path: 'web/words/', may: ['geometry/sentences/', 'geometry/ (types)'] },
  { path: 'web/words/say/', may: ['geometry/', 'fonts/', 'web/words/'] },
  // Fields, buttons, folds: they know words, and nothing of designs' stores.
  { path: 'web/ui/', may: ['geometry/', 'fonts/', 'web/words/'] },
  // Design in, design out: no store, no screen; only the name of an action's undo policy comes from the history.
  {
    path: 'web/state/actions/',
    may: ['geometry/', 'fonts/ (types)', 'web/words/', 'web/state/change.ts (types)', 'web/state/history.ts (types)'],
  },
  { path: 'web/state/', may: ['geometry/', 'fonts/', 'web/words/', 'web/state/actions/'] },
  { path: 'web/worker/', may: ['geometry/', 'fonts/', 'web/words/', 'web/state/saved-rows.ts', 'web/state/ (types)'] },
  // The ground that pages share, what goes out and comes in by hand, and the barrel: all below the pages.
  { path: 'web/page/', may: [...BELOW_PAGES, 'web/page/'] },
  { path: 'web/handover/', may: [...BELOW_PAGES, 'web/page/'] },
  { path: 'web/barrel/', may: [...BELOW_PAGES, 'web/page/'] },
  // What a beginning asks, and what an answer makes of a design: design in, design out as well.
  { path: 'web/design/', may: [...BELOW_PAGES, ...SHARED, 'web/demo/'] },
  { path: 'web/proof/', may: [...BELOW_PAGES, ...SHARED] },
  { path: 'web/cut/', may: [...BELOW_PAGES, ...SHARED] },
  { path: 'web/serve/', may: ['geometry/', 'fonts/'] },
  // The roof: arranges pages.
  { path: 'web/app/', may: ['geometry/', 'fonts/', 'web/'] },
  { path: 'web/vite.config.ts', may: ['web/serve/'] },
];

/** What each package is for, and the only parts that may import it; the sentence says what to use instead. */
export interface PackageRule {
  readonly name: RegExp;
  readonly only: readonly string[];
  readonly instead: string;
}

export const PACKAGES: readonly PackageRule[] = [
  {
    name: /^clipper-lib$/,
    only: ['geometry/adapters/'],
    instead: 'call geometry/adapters/clipper.ts, which keeps the integer grid and the winding in one place',
  },
  {
    name: /^opentype\.js$/,
    only: ['geometry/adapters/'],
    instead: 'call geometry/adapters/opentype.ts, which mends axis, closure and kerning in one place',
  },
  {
    name: /^delaunator$/,
    only: ['geometry/checks/', 'geometry/adapters/'],
    instead: 'triangulation is for the proof; measure distances with geometry/measure/',
  },
  {
    name: /^polylabel$/,
    only: ['geometry/adapters/'],
    instead: 'call geometry/adapters/polylabel.ts, which speaks in our records',
  },
  { name: /^papaparse$/, only: ['geometry/series/'], instead: 'read tables through geometry/series/read-rows.ts' },
  { name: /^pdfkit$/, only: ['geometry/files/'], instead: 'write PDF through geometry/files/' },
  {
    name: /^uqr$/,
    only: ['geometry/files/', 'geometry/proof/'],
    instead: 'codes that a machine reads are drawn in geometry/files/',
  },
  {
    name: /^zod$/,
    only: ['geometry/design/', 'geometry/stock/', 'geometry/shop/', 'web/state/'],
    instead: 'parse unknown input in geometry/design/',
  },
  {
    name: /^@noble\/hashes$/,
    only: ['geometry/design/', 'geometry/order-file/', 'fonts/'],
    instead:
      'a design has its fingerprint from geometry/design/, a font file its mark from fonts/, a file of an order from geometry/order-file/',
  },
  { name: /^fontkit$/, only: ['fonts/'], instead: 'fonts/ builds kerning with it beforehand; nothing else needs it' },
  {
    name: /^fflate$/,
    only: ['geometry/adapters/', 'geometry/design/', 'web/'],
    instead: 'font files are unpacked in geometry/adapters/, links packed where designs are read and written',
  },
  { name: /^@fontsource\//, only: ['fonts/', 'web/'], instead: 'take faces from the catalogue in fonts/' },
  {
    name: /^(konva|react-konva)$/,
    only: ['web/design/stage/'],
    instead: 'draw the plate in web/design/stage/; hand it plain data',
  },
  {
    name: /^(three|@react-three\/fiber)$/,
    only: ['web/barrel/solid/'],
    instead: 'the barrel in three dimensions is drawn in web/barrel/solid/, which loads only when it is looked at',
  },
  { name: /^(react|react-dom|lucide-react)$/, only: ['web/'], instead: 'geometry/ and fonts/ know no screen' },
  { name: /^i18next$/, only: ['web/words/'], instead: 'say it with t() of web/words/t.ts' },
  {
    name: /^(dompurify|svgpath)$/,
    only: ['web/design/artwork/'],
    instead: 'read drawings through web/design/artwork/, which takes nothing from a file but outlines',
  },
  { name: /^d3-contour$/, only: ['geometry/adapters/'], instead: 'call geometry/adapters/contour.ts' },
  { name: /^zustand$/, only: ['web/'], instead: 'geometry/ and fonts/ keep no state' },
  { name: /^(idb|idb-keyval)$/, only: ['web/state/'], instead: 'save and load through web/state/' },
  {
    name: /^comlink$/,
    only: ['web/worker/', 'web/state/', 'web/page/', 'web/app/'],
    instead: 'call the worker through web/worker/',
  },
  // vite itself only in its own settings.
  {
    name: /^(vite|@vitejs\/plugin-react|@resvg\/resvg-js)$/,
    only: ['web/vite.config.ts', 'web/serve/'],
    instead: 'settings belong in web/vite.config.ts',
  },
  {
    name: /^node:/,
    only: ['geometry/command/', 'fonts/', 'web/vite.config.ts', 'web/serve/'],
    instead: 'the kernel runs in the browser too: take bytes or text as an argument',
  },
];

/** No screen parts in the pure parts of web/. */
export const NO_REACT = ['web/state/actions/', 'web/words/', 'web/worker/'];

/** What the project's folder may hold at its top; the rest belongs in one of the folders. */
export const TOP_LEVEL: readonly string[] = [
  'README.md',
  'DEVELOPERS.md',
  'LICENSE',
  'package.json',
  'package-lock.json',
  'tsconfig.json',
  'web',
  'geometry',
  'fonts',
  'tests',
  'e2e',
];

/** Folders that may lie directly in web/: each page and each kind of part has one. */
export const MOST_IN_WEB = 14;

/** Files that may lie directly in one folder; a fuller one is two. */
export const FILE_BUDGET = 40;

/** Lines a file may have; a longer one has two jobs. */
export const LINE_BUDGET = 400;

/** Words that DEVELOPERS.md may have: what belongs to one folder stands at the head of its entry file. */
export const WORD_BUDGET = 1800;

/** Names that make a result depend on when, where or how often it is worked out. */
export const IMPURE: readonly { readonly call: string; readonly instead: string }[] = [
  { call: 'window', instead: 'the kernel knows no page' },
  { call: 'document', instead: 'the kernel knows no page' },
  { call: 'navigator', instead: 'the kernel knows no page' },
  { call: 'localStorage', instead: 'saving belongs in web/state/' },
  { call: 'fetch', instead: 'take the bytes as an argument' },
  { call: 'XMLHttpRequest', instead: 'take the bytes as an argument' },
  { call: 'Date.now', instead: 'take the date as an argument' },
  { call: 'new Date()', instead: 'take the date as an argument' },
  { call: 'performance.now', instead: 'time in tests/figures/' },
  { call: 'Math.random', instead: 'the same design must give the same plate; take a seed as an argument' },
  { call: 'crypto.getRandomValues', instead: 'the same design must give the same plate' },
  { call: 'crypto.randomUUID', instead: 'the same design must give the same plate' },
  { call: 'setTimeout', instead: 'waiting belongs in web/' },
];
