import type { MotifEntry } from './motif.ts';
import { mirrored, put } from './pen/forms.ts';
import { cut, keep, stencil, type Step } from './pen/stencil.ts';

/** A heart; with a second line round it if asked. */
export const HEART: MotifEntry = {
  id: 'heart',
  label: 'heart',
  options: [{ id: 'lines', label: 'Lines', least: 1, most: 2, step: 1, usual: 1 }],
  draw({ lines = 1 }) {
    const heart = mirrored([
      [0, 80, 'corner'],
      [10, 93],
      [27, 99.5],
      [44, 92],
      [52, 74],
      [48, 54],
      [30, 27],
      [0, 0, 'corner'],
    ]);
    const steps: Step[] = [cut(heart)];
    if (lines >= 1.5)
      steps.push(keep(put(heart, 0, 56 * (1 - 0.8), 0, 0.8)), cut(put(heart, 0, 56 * (1 - 0.68), 0, 0.68)));
    return stencil(steps);
  },
};
