import type { MotifEntry } from './motif.ts';
import { closedSpline } from './pen/spline.ts';
import { leaf, put } from './pen/forms.ts';
import { cut, cutLine, keepLine, stencil } from './pen/stencil.ts';

/** A pear with its stalk and a leaf; a web from top to bottom is the light on its side. */
export const PEAR: MotifEntry = {
  id: 'pear',
  label: 'pear',
  options: [{ id: 'light', label: 'Light on its side', least: 0, most: 1, step: 1, usual: 1 }],
  draw({ light = 1 }) {
    const body = closedSpline([
      [1, 77],
      [10.5, 70],
      [14, 55],
      [25, 40],
      [30, 22],
      [20, 4],
      [2, 0.5],
      [-18, 4],
      [-29, 22],
      [-24, 41],
      [-13.5, 55],
      [-9.5, 70],
    ]);
    const steps = [cut(body)];
    if (light >= 0.5)
      steps.push(
        keepLine(
          [
            [3, 81],
            [5, 59],
            [13.5, 38],
            [16, 20],
            [6, -4],
          ],
          4.6,
        ),
      );
    steps.push(
      keepLine(
        [
          [0, 79],
          [2, 79],
        ],
        8,
      ),
      cutLine(
        [
          [0.5, 83],
          [1, 90],
          [-4, 99],
        ],
        4.8,
      ),
      cut(put(leaf(33, 15.5, 0.45), 5, 84.5, 66)),
    );
    return stencil(steps);
  },
};
