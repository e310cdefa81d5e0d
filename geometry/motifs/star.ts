import { clockPoint } from '../measure/clock.ts';
import type { MotifEntry } from '../motif.ts';
import { polygon } from './pen/forms.ts';
import { cut, stencil } from './pen/stencil.ts';

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
    // Needle points and the metal between them are blunted to what a cut can show.
    return stencil([cut(polygon(corners.map((p) => [100 * p.x, 100 * p.y] as const)))], 1.5, 1.5);
  },
};
