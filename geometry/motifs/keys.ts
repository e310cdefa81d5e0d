import type { MotifEntry } from '../motif.ts';
import { box, circle, flipped, put } from './pen/forms.ts';
import { cut, keep, overAll, stencil } from './pen/stencil.ts';

export const KEYS: MotifEntry = {
  id: 'keys',
  label: 'crossed keys',
  options: [{ id: 'spread', label: 'Spread, degrees', least: 28, most: 50, step: 1, usual: 40 }],
  draw({ spread = 40 }) {
    const parts = [
      box(-3.2, -26, 3.2, 62),
      box(2, 40, 16, 46.5),
      box(2, 51, 18, 60),
      circle(0, -38, 15),
      box(-6.5, -21, 6.5, -15.5),
    ];
    const key = parts.map((p) => put(p, 0, 0, -spread));
    const hole = put(circle(0, -39, 6.4), 0, 0, -spread);
    return stencil([cut(...key.map(flipped)), keep(flipped(hole)), overAll(key, 4), keep(hole)]);
  },
};
