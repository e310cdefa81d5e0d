import { clockPoint } from '../measure/clock.ts';
import type { MotifEntry } from './motif.ts';

/** A star of so many points; depth is how far the notches reach in, as a share of the radius. */
export const STAR: MotifEntry = {
  id: 'star',
  label: 'star',
  options: [
    { id: 'points', label: 'Points', least: 4, most: 16, step: 1, usual: 5 },
    { id: 'depth', label: 'Depth, %', least: 20, most: 80, step: 1, usual: 60 },
  ],
  draw({ points = 5, depth = 60 }) {
    const count = Math.round(points);
    const corners = Array.from({ length: 2 * count }, (_, i) =>
      clockPoint(i % 2 === 0 ? 1 : 1 - depth / 100, (i * 180) / count),
    );
    return [
      ...corners.map((p, i) => ({ type: i === 0 ? ('M' as const) : ('L' as const), x: p.x, y: p.y })),
      { type: 'Z' },
    ];
  },
};
