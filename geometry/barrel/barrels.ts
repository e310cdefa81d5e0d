import { LITRES_PER_GALLON, MM_PER_INCH } from '../units.ts';

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
  /** Why the inside volume by these figures does not come to within 5 % of the named capacity, where it does not. */
  readonly volumeNote?: VolumeNote;
}

export type VolumeNote = (typeof VOLUME_NOTES)[keyof typeof VOLUME_NOTES];

/** Each can be tried on the figures, and a test does. */
export const VOLUME_NOTES = {
  unknown: 'no bilge or no length is published for it',
  overChime:
    'it comes right when its published head is taken as measured over the chime, two staves more: measure yours',
  apart:
    'the figures published for it lie so far apart that its capacity lies between what the least and the most give',
  others:
    'its published bilge and length are those of other casks than its head: however they are read it comes out larger',
} as const;

const BLOGS = 'trade pages, weak; others differ';
const SMALL = "a maker's table of small barrels: engraveable face, weak";
/** Trade practice: 1 to 1 1/2 in on barrels of full size, in proportion on small ones. */
const RECESS = 'common practice, no source';

/**
 * Barrels to begin with. No official table of modern casks exists, and heads of one kind differ by centimetres:
 * a plate is made only for a head that was measured.
 */
export const BARRELS: readonly Barrel[] = [
  {
    id: 'american-53',
    name: 'American standard, 53 gal',
    litres: { least: 53 * LITRES_PER_GALLON, most: 53 * LITRES_PER_GALLON, source: '53 US gallons, exact' },
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
    volumeNote: VOLUME_NOTES.apart,
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
    volumeNote: VOLUME_NOTES.overChime,
  },
  {
    id: 'cognac-300',
    name: 'Cognac hogshead, 300 L',
    litres: { least: 300, most: 300, source: 'trade name' },
    headMm: { least: 630, most: 760, source: BLOGS },
    bilgeMm: { least: 700, most: 770, source: BLOGS },
    heightMm: { least: 1000, most: 1050, source: BLOGS },
    recessMm: inches(1, 1.5, RECESS),
    volumeNote: VOLUME_NOTES.overChime,
  },
  {
    id: 'puncheon-500',
    name: 'Puncheon, 500 L',
    litres: { least: 500, most: 500, source: 'trade name' },
    headMm: { least: 790, most: 790, source: BLOGS },
    bilgeMm: { least: 930, most: 930, source: BLOGS },
    heightMm: { least: 1070, most: 1150, source: BLOGS },
    recessMm: inches(1, 1.5, RECESS),
    volumeNote: VOLUME_NOTES.overChime,
  },
  {
    id: 'american-30',
    name: 'Small barrel, 30 gal',
    litres: { least: 30 * LITRES_PER_GALLON, most: 30 * LITRES_PER_GALLON, source: '30 US gallons, exact' },
    headMm: inches(18, 18, BLOGS),
    recessMm: inches(0.75, 1.25, RECESS),
    volumeNote: VOLUME_NOTES.unknown,
  },
  {
    id: 'american-15',
    name: 'Small barrel, 15 gal',
    litres: { least: 15 * LITRES_PER_GALLON, most: 15 * LITRES_PER_GALLON, source: '15 US gallons, exact' },
    headMm: inches(14.75, 14.75, BLOGS),
    bilgeMm: inches(18, 18, BLOGS),
    heightMm: inches(24, 24, BLOGS),
    recessMm: inches(0.75, 1, RECESS),
    volumeNote: VOLUME_NOTES.others,
  },
  {
    id: 'small-20',
    name: 'Small barrel, 20 L',
    litres: { least: 20, most: 20, source: 'trade name' },
    headMm: inches(9, 9, SMALL),
    heightMm: inches(15, 15, SMALL),
    recessMm: inches(0.5, 0.75, RECESS),
    volumeNote: VOLUME_NOTES.unknown,
  },
  {
    id: 'small-10',
    name: 'Small barrel, 10 L',
    litres: { least: 10, most: 10, source: 'trade name' },
    headMm: inches(7, 7, SMALL),
    heightMm: inches(11.5, 11.5, SMALL),
    recessMm: inches(0.375, 0.625, RECESS),
    volumeNote: VOLUME_NOTES.unknown,
  },
  {
    id: 'small-5',
    name: 'Small barrel, 5 L',
    litres: { least: 5, most: 5, source: 'trade name' },
    headMm: inches(5.5, 5.5, SMALL),
    heightMm: inches(9, 9, SMALL),
    recessMm: inches(0.375, 0.5, RECESS),
    volumeNote: VOLUME_NOTES.unknown,
  },
];

export function barrelById(id: string): Barrel | undefined {
  return BARRELS.find((b) => b.id === id);
}

function inches(least: number, most: number, source: string): Published {
  return { least: least * MM_PER_INCH, most: most * MM_PER_INCH, source };
}
