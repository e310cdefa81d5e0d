/**
 * How far a size may come out from what was asked, by published tables. What is not in a table is undefined, never
 * guessed: a shop that needs it agrees on a figure with its customer.
 *
 * ISO 9013:2017 (thermal cutting: laser, plasma, flame), tolerance classes 1 and 2, by sheet and size; taken from one
 * fabricator's reproduction, which agrees with the 2002 edition as remembered. The places of class 2 up to 1 mm are
 * inferred, for that copy leaves cells out: hold them against a bought copy before quoting them.
 * ISO 2768-1:1989, table 1 (linear sizes without a tolerance of their own), from four reproductions that agree. It
 * serves where ISO 9013 does not: a water jet or a router cuts without heat.
 */
export type Tolerance =
  | { readonly standard: 'ISO 9013'; readonly class: '1' | '2' }
  | { readonly standard: 'ISO 2768'; readonly class: 'f' | 'm' | 'c' | 'v' };

/** Limit deviation, plus and minus, mm, of a size in a sheet of this thickness, both mm. */
export function limitDeviationMm(tolerance: Tolerance, sizeMm: number, thicknessMm: number): number | undefined {
  if (!(sizeMm > 0) || !(thicknessMm > 0)) return undefined;
  if (tolerance.standard === 'ISO 2768') {
    // "over 3 up to 6": the upper end belongs to the band.
    const band = sizeMm < LEAST_2768_MM ? -1 : UP_TO_2768_MM.findIndex((most) => sizeMm <= most);
    return ISO_2768[tolerance.class][band] ?? undefined;
  }
  const row = ISO_9013[tolerance.class].find(({ upToMm }) => thicknessMm <= upToMm);
  // "3 and over, under 10": the lower end belongs to the band.
  return row?.mm[UNDER_9013_MM.findIndex((most) => sizeMm < most)] ?? undefined;
}

const UNDER_9013_MM = [3, 10, 35, 125, 315, 1000, 2000, 4000];

interface SheetRow {
  readonly upToMm: number;
  readonly mm: readonly (number | null)[];
}

const ISO_9013: Record<'1' | '2', readonly SheetRow[]> = {
  '1': [
    { upToMm: 1, mm: [0.075, 0.1, 0.1, 0.2, 0.2, 0.3, 0.4, 0.65] },
    { upToMm: 3.15, mm: [0.1, 0.15, 0.2, 0.25, 0.25, 0.35, 0.4, 0.65] },
    { upToMm: 6.3, mm: [0.2, 0.2, 0.25, 0.25, 0.3, 0.4, 0.45, 0.7] },
    { upToMm: 10, mm: [null, 0.25, 0.3, 0.3, 0.35, 0.45, 0.55, 0.75] },
  ],
  '2': [
    { upToMm: 1, mm: [0.5, 0.6, 0.6, 0.7, 0.7, 0.8, 0.9, 0.9] },
    { upToMm: 3.15, mm: [0.6, 0.6, 0.7, 0.7, 0.8, 0.9, 1.0, 1.1] },
    { upToMm: 6.3, mm: [0.7, 0.8, 0.9, 0.9, 1.1, 1.2, 1.3, 1.3] },
  ],
};

const LEAST_2768_MM = 0.5;
const UP_TO_2768_MM = [3, 6, 30, 120, 400, 1000, 2000, 4000];

const ISO_2768: Record<'f' | 'm' | 'c' | 'v', readonly (number | null)[]> = {
  f: [0.05, 0.05, 0.1, 0.15, 0.2, 0.3, 0.5, null],
  m: [0.1, 0.1, 0.2, 0.3, 0.5, 0.8, 1.2, 2],
  c: [0.2, 0.3, 0.5, 0.8, 1.2, 2, 3, 4],
  v: [null, 0.5, 1, 1.5, 2.5, 4, 6, 8],
};
