import { MM_PER_INCH } from '../units.ts';

/** A published figure, mm unless said otherwise, with its source; trade sources contradict each other. */
export interface Published {
  readonly least: number;
  readonly most: number;
  readonly source: string;
}

export interface Barrel {
  readonly id: string;
  readonly name: string;
  /** Nominal capacity in litres. */
  readonly litres: Published;
  /** Diameter of the head that can be seen inside the chime. */
  readonly headMm: Published;
  /** Outside diameter at the bilge. */
  readonly bilgeMm?: Published;
  readonly heightMm?: Published;
  readonly staveMm?: Published;
  /** How deep the head lies below the ends of the staves (the chime). */
  readonly recessMm: Published;
  /** Why the inside volume by these figures does not come to the named capacity, where it does not. */
  readonly volumeNote?: string;
}

const BLOGS = 'trade pages, weak; others differ';
const SMALL = "a maker's table of small barrels: engraveable face, weak";
/** Trade practice: 1 to 1 1/2 in on barrels of full size, in proportion on small ones. */
const RECESS = 'common practice, no source';
const NO_BILGE = 'no bilge or length is published for it';
/** 1 US gallon is 3.785411784 litres exactly. */
const GALLON_L = 3.785411784;

/**
 * Barrels to begin with. No official table of modern casks exists, and heads of one kind differ by centimetres:
 * a plate is made only for a head that was measured.
 */
export const BARRELS: readonly Barrel[] = [
  {
    id: 'american-53',
    name: 'American standard, 53 gal',
    litres: { least: 53 * GALLON_L, most: 53 * GALLON_L, source: '53 US gallons, exact' },
    headMm: inches(21, 22, `most of several ${BLOGS}`),
    bilgeMm: inches(24, 28, BLOGS),
    heightMm: inches(33, 36, BLOGS),
    staveMm: inches(1, 1.125, BLOGS),
    recessMm: inches(1, 1.5, RECESS),
  },
  {
    id: 'bordeaux-225',
    name: 'Bordeaux barrique, 225 L',
    litres: { least: 223, most: 227, source: 'trade lexicon, 225 L within 2 L' },
    headMm: { least: 560, most: 600, source: "an Australian cooper's table, weak" },
    bilgeMm: { least: 680, most: 720, source: "an Australian cooper's table, weak" },
    heightMm: { least: 890, most: 950, source: 'Oxford Companion to Wine (2006): 95 cm; others 89 to 91 cm' },
    staveMm: {
      least: 20,
      most: 27,
      source: 'Oxford Companion to Wine (2006): about 20 mm; 27 mm for export, from memory',
    },
    recessMm: inches(1, 1.5, RECESS),
    volumeNote: 'published heads are measured over the chime by some and inside it by others',
  },
  {
    id: 'burgundy-228',
    name: 'Burgundy pièce, 228 L',
    litres: { least: 228, most: 228, source: 'trade name' },
    headMm: { least: 570, most: 610, source: 'from memory; one trade page says only: larger head than Bordeaux' },
    bilgeMm: { least: 720, most: 720, source: 'from memory' },
    heightMm: { least: 870, most: 900, source: 'from memory' },
    staveMm: { least: 27, most: 27, source: 'from memory' },
    recessMm: inches(1, 1.5, RECESS),
    volumeNote: 'its bilge and length are from memory and come out a tenth too large: measure yours',
  },
  {
    id: 'cognac-300',
    name: 'Cognac hogshead, 300 L',
    litres: { least: 300, most: 300, source: 'trade name' },
    headMm: { least: 630, most: 760, source: BLOGS },
    bilgeMm: { least: 700, most: 770, source: BLOGS },
    heightMm: { least: 1000, most: 1050, source: BLOGS },
    recessMm: inches(1, 1.5, RECESS),
    volumeNote: 'its published head and bilge overlap, so they are of different casks',
  },
  {
    id: 'puncheon-500',
    name: 'Puncheon, 500 L',
    litres: { least: 500, most: 500, source: 'trade name' },
    headMm: { least: 790, most: 790, source: BLOGS },
    bilgeMm: { least: 930, most: 930, source: BLOGS },
    heightMm: { least: 1070, most: 1150, source: BLOGS },
    recessMm: inches(1, 1.5, RECESS),
    volumeNote: 'its figures are rounded up by the trade pages that print them: measure yours',
  },
  {
    id: 'american-30',
    name: 'Small barrel, 30 gal',
    litres: { least: 30 * GALLON_L, most: 30 * GALLON_L, source: '30 US gallons, exact' },
    headMm: inches(18, 18, BLOGS),
    recessMm: inches(0.75, 1.25, RECESS),
    volumeNote: NO_BILGE,
  },
  {
    id: 'american-15',
    name: 'Small barrel, 15 gal',
    litres: { least: 15 * GALLON_L, most: 15 * GALLON_L, source: '15 US gallons, exact' },
    headMm: inches(14.75, 14.75, BLOGS),
    bilgeMm: inches(18, 18, BLOGS),
    heightMm: inches(24, 24, BLOGS),
    recessMm: inches(0.75, 1, RECESS),
    volumeNote: 'its published bilge and height are those of other makers than its head',
  },
  {
    id: 'small-20',
    name: 'Small barrel, 20 L',
    litres: { least: 20, most: 20, source: 'trade name' },
    headMm: inches(9, 9, SMALL),
    heightMm: inches(15, 15, SMALL),
    recessMm: inches(0.5, 0.75, RECESS),
    volumeNote: NO_BILGE,
  },
  {
    id: 'small-10',
    name: 'Small barrel, 10 L',
    litres: { least: 10, most: 10, source: 'trade name' },
    headMm: inches(7, 7, SMALL),
    heightMm: inches(11.5, 11.5, SMALL),
    recessMm: inches(0.375, 0.625, RECESS),
    volumeNote: NO_BILGE,
  },
  {
    id: 'small-5',
    name: 'Small barrel, 5 L',
    litres: { least: 5, most: 5, source: 'trade name' },
    headMm: inches(5.5, 5.5, SMALL),
    heightMm: inches(9, 9, SMALL),
    recessMm: inches(0.375, 0.5, RECESS),
    volumeNote: NO_BILGE,
  },
];

export function barrelById(id: string): Barrel | undefined {
  return BARRELS.find((b) => b.id === id);
}

function inches(least: number, most: number, source: string): Published {
  return { least: least * MM_PER_INCH, most: most * MM_PER_INCH, source };
}
