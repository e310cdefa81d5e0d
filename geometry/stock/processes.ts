import { COMMON_PRACTICE, type Sourced } from './sourced.ts';

/** How materials behave when cut and handled; rules that depend on no more than this are kept by family. */
export type Family = 'metal' | 'plastic' | 'wood';

export interface Process {
  readonly id: string;
  readonly name: string;
  /** What it is good for, for somebody who has never seen it. */
  readonly sentence: string;
  /** Width of the cut, mm. */
  readonly kerfMm: Sourced;
  /** Narrowest opening: the larger of so many kerfs and so many thicknesses. */
  readonly openingKerfs: Sourced;
  readonly openingThicknesses: Sourced;
  /** Inside corners come out with at least this radius, mm. */
  readonly insideRadiusMm: Sourced;
  /** Sheet it cuts well, mm, by family; a family that is absent is not cut at all. */
  readonly thicknessMm: Partial<
    Record<Family, { readonly least: number; readonly most: number; readonly source: string }>
  >;
  /** Least bridge for paint: the larger of so many mm and so many thicknesses. */
  readonly bridge: Partial<
    Record<Family, { readonly mm: number; readonly thicknesses: number; readonly source: string }>
  >;
  /** What can hurt; local codes and trained people come first. */
  readonly caution: string;
}

const JOB_SHOP_WEB =
  'two job-shop guides: metal between cuts at least the thickness, 1 to 1.5 thicknesses preferred (weak); floor in mm ' +
  COMMON_PRACTICE;
const LASER_CAUTION =
  'Laser fumes harm: never cut PVC, vinyl or any other chlorinated plastic, which gives off hydrogen chloride. ' +
  'Fumes of stainless steel hold chromium. Extraction and local codes apply.';

export const PROCESSES: readonly Process[] = [
  {
    id: 'fibre-laser',
    name: 'Fibre laser',
    sentence: 'The finest cut in sheet metal: small letters and narrow bridges come out clean.',
    kerfMm: { value: 0.2, source: 'two job-shop guides, 0.1 to 0.38 mm (weak)' },
    openingKerfs: { value: 3, source: COMMON_PRACTICE },
    openingThicknesses: { value: 0.4, source: COMMON_PRACTICE },
    insideRadiusMm: { value: 0.1, source: 'half the kerf' },
    thicknessMm: { metal: { least: 0.3, most: 12, source: COMMON_PRACTICE } },
    bridge: { metal: { mm: 1, thicknesses: 1, source: JOB_SHOP_WEB } },
    caution: LASER_CAUTION,
  },
  {
    id: 'co2-laser',
    name: 'CO2 laser',
    sentence: 'Cuts steel, plywood and thin plastic film; bright aluminium throws its beam back.',
    kerfMm: { value: 0.25, source: 'one job shop, 0.010 in (weak)' },
    openingKerfs: { value: 3, source: COMMON_PRACTICE },
    openingThicknesses: { value: 0.4, source: COMMON_PRACTICE },
    insideRadiusMm: { value: 0.125, source: 'half the kerf' },
    thicknessMm: {
      metal: { least: 0.5, most: 6, source: COMMON_PRACTICE },
      plastic: { least: 0.1, most: 6, source: COMMON_PRACTICE },
      wood: { least: 1, most: 12, source: COMMON_PRACTICE },
    },
    bridge: {
      metal: { mm: 1, thicknesses: 1, source: JOB_SHOP_WEB },
      plastic: { mm: 2, thicknesses: 1.5, source: COMMON_PRACTICE },
      wood: { mm: 3, thicknesses: 1, source: COMMON_PRACTICE },
    },
    caution: LASER_CAUTION,
  },
  {
    id: 'water-jet',
    name: 'Abrasive water jet',
    sentence: 'Cuts anything without heat, a little coarser than a laser.',
    kerfMm: { value: 1, source: 'job-shop guide, 0.8 to 1.2 mm (weak); an older laser handbook says above 2 mm' },
    openingKerfs: { value: 1.2, source: COMMON_PRACTICE },
    openingThicknesses: { value: 0.4, source: COMMON_PRACTICE },
    insideRadiusMm: { value: 0.5, source: 'half the jet' },
    thicknessMm: {
      metal: { least: 0.5, most: 60, source: COMMON_PRACTICE },
      plastic: { least: 0.5, most: 60, source: COMMON_PRACTICE },
      wood: { least: 3, most: 60, source: COMMON_PRACTICE },
    },
    bridge: {
      metal: { mm: 1.5, thicknesses: 1.25, source: COMMON_PRACTICE },
      plastic: { mm: 2.5, thicknesses: 1.5, source: COMMON_PRACTICE },
      wood: { mm: 4, thicknesses: 1.5, source: COMMON_PRACTICE },
    },
    caution: 'The jet cuts flesh; only trained people work at it. The cut edge is sharp.',
  },
  {
    id: 'plasma',
    name: 'Plasma',
    sentence: 'Fast and cheap in thicker steel; too coarse for small letters.',
    kerfMm: { value: 2, source: 'job-shop guide, 1.5 to 3 mm (weak)' },
    openingKerfs: { value: 1.5, source: COMMON_PRACTICE },
    openingThicknesses: { value: 1.5, source: 'least hole 1.5 to 2 thicknesses, ' + COMMON_PRACTICE },
    insideRadiusMm: { value: 1, source: 'half the kerf' },
    thicknessMm: { metal: { least: 1, most: 25, source: COMMON_PRACTICE } },
    bridge: { metal: { mm: 3, thicknesses: 2, source: COMMON_PRACTICE } },
    caution: 'Arc light, fumes and hot metal: shields, extraction and local codes apply.',
  },
  {
    id: 'router',
    name: 'Router, 1/8 in bit',
    sentence: 'Mills plastic, plywood and aluminium; inside corners keep the roundness of the bit.',
    kerfMm: { value: 3.175, source: 'geometry: the diameter of the bit, 1/8 in' },
    openingKerfs: { value: 1, source: 'geometry: the bit has to pass' },
    openingThicknesses: { value: 0, source: 'geometry: the bit has to pass' },
    insideRadiusMm: { value: 1.5875, source: 'geometry: half the bit' },
    thicknessMm: {
      metal: { least: 0.8, most: 6, source: COMMON_PRACTICE },
      plastic: { least: 0.8, most: 20, source: COMMON_PRACTICE },
      wood: { least: 2, most: 20, source: COMMON_PRACTICE },
    },
    bridge: {
      metal: { mm: 2, thicknesses: 1.5, source: COMMON_PRACTICE },
      plastic: { mm: 3, thicknesses: 1.5, source: COMMON_PRACTICE },
      wood: { mm: 4, thicknesses: 1.5, source: COMMON_PRACTICE },
    },
    caution: 'A turning bit throws chips and dust: guard, eye protection, and small parts held down.',
  },
];

export function processById(id: string): Process | undefined {
  return PROCESSES.find((p) => p.id === id);
}
