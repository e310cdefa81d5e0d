import type { CutSettings, SlugChances } from '../../geometry/cutplan/sheet-plan.ts';
import type { Contour } from '../../geometry/shapes.ts';

/** What rises less passes under the head. */
const RISE_MM = 1;

/**
 * What has its centre in its middle and is w wide, over slats e wide and p apart with gaps of g: it lies when a slat is
 * under the centre (e of p offsets), or when both slats beside it are reached: the left one is u off, the right one
 * g - u, both no more than w / 2, which is so for w - g of the g places of u. No wider than g it drops else, all of it;
 * wider, it leans between two slats, and tips where that lifts an end high enough.
 */
export function symmetricByHand(
  w: number,
  { pitchMm: p, edgeMm: e }: CutSettings['slats'],
): Omit<SlugChances, 'riseMm'> {
  const g = p - e;
  const lies = Math.min(1, (e + Math.max(0, w - g)) / p);
  const stands = highestBySlopes(w, g) > RISE_MM;
  return { lies, tips: stands ? 1 - lies : 0, drops: stands ? 0 : 1 - lies };
}

/** A bar of length w, one end against a wall g off the edge it leans on: how high the other end comes, slope by slope. */
export function highestBySlopes(w: number, g: number): number {
  let most = 0;
  for (let deg = 0; deg < 89; deg += 0.01) {
    const rad = (deg * Math.PI) / 180;
    // Along the bar from the wall to the edge, then what is left beyond it.
    const left = w - g / Math.cos(rad);
    most = Math.max(most, left * Math.sin(rad));
  }
  return most;
}

export function barContour(width: number, height: number): Contour {
  return [
    { x: 0, y: 0, bulge: 0 },
    { x: width, y: 0, bulge: 0 },
    { x: width, y: height, bulge: 0 },
    { x: 0, y: height, bulge: 0 },
  ];
}

export function discContour(diameter: number): Contour {
  return [
    { x: diameter / 2, y: 0, bulge: 1 },
    { x: -diameter / 2, y: 0, bulge: 1 },
  ];
}
