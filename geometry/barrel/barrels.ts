import { LITRES_PER_GALLON, MM_PER_INCH } from '../units.ts';
import rows from './barrels.json' with { type: 'json' };

/** A published figure, mm unless said otherwise, with its source; trade sources contradict each other. */
export interface Published {
  readonly least: number;
  readonly most: number;
  readonly source: string;
}

export interface Barrel {
  readonly id: string;
  /** As customers call it: from memory, no source. */
  readonly name: string;
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

interface Figure extends Published {
  /** in or gal (US); absent: mm, or litres of what it holds. */
  readonly unit?: string;
}

/** What barrels.json says of each, by the units of its source. */
interface BarrelRow {
  readonly id: string;
  readonly name: string;
  readonly litres: Figure;
  readonly head: Figure;
  readonly bilge?: Figure;
  readonly height?: Figure;
  readonly stave?: Figure;
  /** Trade practice: 1 to 1 1/2 in on barrels of full size, in proportion on small ones. */
  readonly recess: Figure;
  readonly volumeNote?: string;
}

/**
 * Barrels to begin with. No official table of modern casks exists, and heads of one kind differ by centimetres:
 * a plate is made only for a head that was measured.
 */
export const BARRELS: readonly Barrel[] = (rows as readonly BarrelRow[]).map(
  ({ id, name, litres, head, bilge, height, stave, recess, volumeNote }) => ({
    id,
    name,
    litres: toMetric(litres),
    headMm: toMetric(head),
    ...(bilge && { bilgeMm: toMetric(bilge) }),
    ...(height && { heightMm: toMetric(height) }),
    ...(stave && { staveMm: toMetric(stave) }),
    recessMm: toMetric(recess),
    ...(volumeNote !== undefined && { volumeNote: VOLUME_NOTES[volumeNote as keyof typeof VOLUME_NOTES] }),
  }),
);

export function barrelById(id: string): Barrel | undefined {
  return BARRELS.find((b) => b.id === id);
}

function toMetric({ least, most, unit, source }: Figure): Published {
  const size = unit === 'in' ? MM_PER_INCH : unit === 'gal' ? LITRES_PER_GALLON : 1;
  return { least: least * size, most: most * size, source };
}
