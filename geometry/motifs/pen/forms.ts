import { turnPoint } from '../../measure/clock.ts';
import { mapOutline } from '../../measure/map-outline.ts';
import type { Outline } from '../../shapes.ts';
import { closedSpline, type Knot } from './spline.ts';

/** Handles of the quarter circle a cubic comes nearest to. */
const QUARTER = 0.5522847498;

export function circle(cx: number, cy: number, r: number): Outline {
  const h = r * QUARTER;
  return [
    { type: 'M', x: cx + r, y: cy },
    { type: 'C', x1: cx + r, y1: cy + h, x2: cx + h, y2: cy + r, x: cx, y: cy + r },
    { type: 'C', x1: cx - h, y1: cy + r, x2: cx - r, y2: cy + h, x: cx - r, y: cy },
    { type: 'C', x1: cx - r, y1: cy - h, x2: cx - h, y2: cy - r, x: cx, y: cy - r },
    { type: 'C', x1: cx + h, y1: cy - r, x2: cx + r, y2: cy - h, x: cx + r, y: cy },
    { type: 'Z' },
  ];
}

export function polygon(points: readonly (readonly [number, number])[]): Outline {
  return closedSpline(points.map(([x, y]) => [x, y, 'corner'] as const));
}

export function box(x0: number, y0: number, x1: number, y1: number): Outline {
  return polygon([
    [x0, y0],
    [x1, y0],
    [x1, y1],
    [x0, y1],
  ]);
}

/** A leaf or grain standing on the origin: pointed at the top, fullest at `fullest` of its length, round or pointed below. */
export function leaf(length: number, width: number, fullest = 0.45, foot: 'pointed' | 'round' = 'pointed'): Outline {
  const w = width / 2;
  const knots: Knot[] = [
    [0, length, 'corner'],
    [-w * 0.62, length * (fullest + (1 - fullest) * 0.62)],
    [-w, length * fullest],
    [-w * 0.66, length * fullest * 0.34],
    foot === 'pointed' ? [0, 0, 'corner'] : [0, 0],
    [w * 0.66, length * fullest * 0.34],
    [w, length * fullest],
    [w * 0.62, length * (fullest + (1 - fullest) * 0.62)],
  ];
  return closedSpline(knots);
}

/** From the knots of the right half, top to bottom: first and last lie on the axis x = 0. */
export function mirrored(half: readonly Knot[]): Outline {
  const back = half.slice(1, -1).reverse();
  return closedSpline([...half, ...back.map(([x, y, corner]): Knot => (corner ? [-x, y, corner] : [-x, y]))]);
}

/** Turned clockwise by degrees about the origin, then moved. */
export function put(outline: Outline, x: number, y: number, turnDeg = 0, by = 1): Outline {
  return mapOutline(outline, (px, py) => {
    const t = turnPoint({ x: px, y: py }, turnDeg);
    return { x: t.x * by + x, y: t.y * by + y };
  });
}

export function flipped(outline: Outline): Outline {
  return mapOutline(outline, (x, y) => ({ x: -x, y }));
}

/** The outline and its mirror image. */
export function pair(outline: Outline): readonly [Outline, Outline] {
  return [outline, flipped(outline)];
}
