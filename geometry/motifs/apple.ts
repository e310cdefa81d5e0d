import type { MotifEntry } from './motif.ts';
import { leaf, mirrored, put } from './pen/forms.ts';
import { cut, cutLine, keepLine, stencil } from './pen/stencil.ts';

/** An apple with its stalk and a leaf; a web from stalk to blossom end is the light on its side. */
export const APPLE: MotifEntry = {
  id: 'apple',
  label: 'apple',
  options: [{ id: 'light', label: 'Light on its side', least: 0, most: 1, step: 1, usual: 1 }],
  draw({ light = 1 }) {
    const body = mirrored([
      [0, 66],
      [11, 72.5],
      [28, 71],
      [40, 54],
      [39, 33],
      [29, 10],
      [14, 0],
      [0, 4],
    ]);
    const steps = [cut(body)];
    if (light >= 0.5)
      steps.push(
        keepLine(
          [
            [1, 75],
            [14, 60],
            [25.5, 43],
            [19, 17],
            [2, -4],
          ],
          4.6,
        ),
      );
    steps.push(
      cutLine(
        [
          [1, 71],
          [2, 84],
          [8, 96],
        ],
        5.4,
      ),
    );
    steps.push(cut(put(leaf(31, 15.5, 0.45), 9, 81, 58)));
    return stencil([
      steps[0]!,
      ...steps.slice(1, -2),
      keepLine(
        [
          [0, 62],
          [1, 72],
        ],
        13,
      ),
      ...steps.slice(-2),
    ]);
  },
};
