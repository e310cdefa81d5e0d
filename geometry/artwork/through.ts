import type { Outline, PathCommand } from '../shapes.ts';
import type { Matrix } from './painted.ts';

/** An outline sent through a matrix. */
export function through(outline: Outline, [a, b, c, d, e, f]: Matrix): Outline {
  const x = (px: number, py: number): number => a * px + c * py + e;
  const y = (px: number, py: number): number => b * px + d * py + f;
  return outline.map((o): PathCommand => {
    switch (o.type) {
      case 'Z':
        return o;
      case 'Q':
        return { type: 'Q', x1: x(o.x1, o.y1), y1: y(o.x1, o.y1), x: x(o.x, o.y), y: y(o.x, o.y) };
      case 'C': {
        const [x1, y1, x2, y2] = [x(o.x1, o.y1), y(o.x1, o.y1), x(o.x2, o.y2), y(o.x2, o.y2)];
        return { type: 'C', x1, y1, x2, y2, x: x(o.x, o.y), y: y(o.x, o.y) };
      }
      default:
        return { type: o.type, x: x(o.x, o.y), y: y(o.x, o.y) };
    }
  });
}

/** First the inner matrix, then the outer. */
export function placed(outer: Matrix, inner: Matrix): Matrix {
  const [a, b, c, d, e, f] = outer;
  const [g, h, i, j, k, l] = inner;
  return [a * g + c * h, b * g + d * h, a * i + c * j, b * i + d * j, a * k + c * l + e, b * k + d * l + f];
}
