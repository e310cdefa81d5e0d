import type { Point } from '../shapes.ts';
import { fitCircle } from './fit-circle.ts';

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

/** The same from points on the edges of the two circles; undefined where they give no circle. */
export function offsetOfPoints(small: readonly Point[], large: readonly Point[]): Point | undefined {
  const [a, b] = [fitCircle(small), fitCircle(large)];
  return a && b && { x: a.centre.x - b.centre.x, y: a.centre.y - b.centre.y };
}
