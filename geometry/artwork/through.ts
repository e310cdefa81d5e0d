import { mapOutline } from '../measure/map-outline.ts';
import type { Outline } from '../shapes.ts';
import type { Matrix } from './painted.ts';

/** An outline sent through a matrix. */
export function through(outline: Outline, [a, b, c, d, e, f]: Matrix): Outline {
  return mapOutline(outline, (x, y) => ({ x: a * x + c * y + e, y: b * x + d * y + f }));
}

/** First the inner matrix, then the outer. */
export function placed(outer: Matrix, inner: Matrix): Matrix {
  const [a, b, c, d, e, f] = outer;
  const [g, h, i, j, k, l] = inner;
  return [a * g + c * h, b * g + d * h, a * i + c * j, b * i + d * j, a * k + c * l + e, b * k + d * l + f];
}
