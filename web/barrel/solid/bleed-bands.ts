import { bleedMm } from '../../../geometry/barrel/bleed.ts';
import { gapMm, type Surface } from '../../../geometry/barrel/surface.ts';

/** Part of a plate whose gap to the wood is about the same. */
export interface BleedBand {
  /** On a head: distance from the middle; on a side: from the line of the bilge. mm */
  readonly fromMm: number;
  readonly toMm: number;
  /** How far paint creeps under there, by the rule of thumb of geometry/barrel/bleed.ts. */
  readonly bleedMm: number;
}

const BANDS = 8;
/** Less cannot be seen beside the soft edge of any spray. */
const LEAST_SEEN_MM = 0.25;

/** The bands in which paint creeps so far under a plate that it is seen, from the middle out. */
export function bleedBands(surface: Surface, radiusMm: number): readonly BleedBand[] {
  const up = surface.kind === 'side' && surface.lines === 'along-hoops';
  return Array.from({ length: BANDS }, (_, i) => {
    const [fromMm, toMm] = [(i / BANDS) * radiusMm, ((i + 1) / BANDS) * radiusMm];
    const mid = (fromMm + toMm) / 2;
    return { fromMm, toMm, bleedMm: bleedMm(gapMm(surface, up ? { x: 0, y: mid } : { x: mid, y: 0 })) };
  }).filter((band) => band.bleedMm >= LEAST_SEEN_MM);
}
