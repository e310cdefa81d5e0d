import type { Point } from '../../shapes.ts';

/** The metal between the two circles of a mark, measured with a caliper on four sides, mm. */
export interface RingWidths {
  readonly left: number;
  readonly right: number;
  readonly above: number;
  readonly below: number;
}

/**
 * Middle of the small circle less the middle of the large one. Each coordinate is half a difference of two widths, so
 * its standard uncertainty is that of one width over the square root of two.
 */
export function offsetOfWidths({ left, right, above, below }: RingWidths): Point {
  return { x: (left - right) / 2, y: (below - above) / 2 };
}

/**
 * How far the two pairs of widths are from adding up to the same, mm. Across the middle each pair is the large diameter
 * less the small one, whatever the offset (to its square over the diameter): more than measuring allows is a slip.
 */
function unevenMm({ left, right, above, below }: RingWidths): number {
  return Math.abs(left + right - above - below);
}

/** Standard uncertainty of a coordinate of an offset from widths that are each known so well. */
export function offsetNoiseMm(widthNoiseMm: number): number {
  return widthNoiseMm / Math.SQRT2;
}

/**
 * Whether four widths may go together: their sums differ by twice the uncertainty of one width at the usual, and by
 * more than six of them hardly ever; a circle cut out of round by UNROUND_MM is no slip either.
 */
export function widthsAgree(widths: RingWidths, widthNoiseMm: number): boolean {
  return unevenMm(widths) <= UNROUND_MM + 6 * widthNoiseMm;
}

/** How far out of round a small circle may be cut, common practice, no source. */
const UNROUND_MM = 0.1;
