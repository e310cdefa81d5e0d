import type { Stock } from '../../geometry/design/schema.ts';
import type { MotifEntry } from '../../geometry/motif.ts';
import { STEEL } from './make-motif.ts';

const PLYWOOD: Stock = { material: 'birch-plywood', thicknessMm: 3, process: 'co2-laser', use: 'paint' };
export const STOCKS: readonly Stock[] = [STEEL, PLYWOOD];

/** As it usually is, then every option at its least and at its most, the others as usual. */
export function settings(motif: MotifEntry): Record<string, number>[] {
  return [{}, ...motif.options.flatMap((o) => [{ [o.id]: o.least }, { [o.id]: o.most }])];
}
