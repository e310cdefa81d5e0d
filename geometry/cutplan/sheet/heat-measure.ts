/**
 * A simple measure of how hot a spot is: every millimetre cut earlier counts by how near and how long ago it was.
 *
 *   heat(q, t) = sum over earlier cut ds of exp(-(distance / REACH)^2) exp(-(t - then) / coolS) ds / (REACH sqrt(pi))
 *
 * 1 is what a long straight cut made just now right through the spot leaves. Its form (a Gaussian spread, an exponential
 * decay) stands for conduction along the sheet and loss to air and slats; common practice, no source: no temperatures
 * follow from it, only which of two orders heats a spot less.
 */
import { ringBox } from '../../measure/ring.ts';
import type { Point, Ring } from '../../shapes.ts';

/** How far heat is felt, mm: thin sheet some seconds after the cut; common practice, no source. */
const REACH_MM = 8;
/** Beyond this many reaches a cut is not felt: exp(-9) is nothing. */
const FELT = 3;
/** From here on a spot counts as hot: half of what a cut right through it just now would leave. Common practice, no source. */
export const HOT = 0.5;

const STEP_MM = 2;

/** What a millimetre, so far away (squared), leaves at a spot at once. */
export function spreadHeat(distanceSq: number): number {
  return distanceSq > (FELT * REACH_MM) ** 2
    ? 0
    : Math.exp(-distanceSq / (REACH_MM * REACH_MM)) / (REACH_MM * Math.sqrt(Math.PI));
}

/** How far a cut is felt at all. */
export const FELT_MM = FELT * REACH_MM;

/** Heat that a cut all around one ring, just made, leaves at the spot of the other that feels it most. */
export function measureHeatBetween(from: Ring, on: Ring): number {
  const [a, b] = [ringBox(from), ringBox(on)];
  if (a.minX - b.maxX > FELT_MM || b.minX - a.maxX > FELT_MM) return 0;
  if (a.minY - b.maxY > FELT_MM || b.minY - a.maxY > FELT_MM) return 0;
  const sources = sampleRing(from);
  let most = 0;
  for (const { at } of sampleRing(on)) {
    let heat = 0;
    for (const s of sources) heat += spreadHeat((s.at.x - at.x) ** 2 + (s.at.y - at.y) ** 2) * s.mm;
    most = Math.max(most, heat);
  }
  return most;
}

/** Points along a closed line, about STEP_MM apart, each with the length it stands for. */
export function sampleRing(ring: Ring): { readonly at: Point; readonly mm: number }[] {
  const out: { at: Point; mm: number }[] = [];
  let a = ring[ring.length - 1];
  if (!a) return out;
  let left = 0;
  for (const b of ring) {
    const mm = Math.hypot(b.x - a.x, b.y - a.y);
    // `left` is how far the last point's share reaches into this side already.
    let at = STEP_MM / 2 - left;
    for (; at <= mm; at += STEP_MM) {
      out.push({ at: { x: a.x + ((b.x - a.x) * at) / mm, y: a.y + ((b.y - a.y) * at) / mm }, mm: STEP_MM });
    }
    left = mm - (at - STEP_MM / 2);
    a = b;
  }
  return out.length > 0 ? out : [{ at: ring[0]!, mm: STEP_MM / 2 }];
}
