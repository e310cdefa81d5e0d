import type { MotifEntry } from './motif.ts';
import { flipped, leaf, mirrored, put } from './pen/forms.ts';
import { cut, cutLine, keepLine, stencil, type Step } from './pen/stencil.ts';

/** An acorn in its cup, with two leaves. */
export const ACORN: MotifEntry = {
  id: 'acorn',
  label: 'acorn',
  options: [{ id: 'leaves', label: 'Leaves', least: 0, most: 2, step: 2, usual: 2 }],
  draw({ leaves = 2 }) {
    const nut = mirrored([
      [0, 44],
      [24, 41, 'corner'],
      [24.5, 30],
      [17, 13],
      [5, 5.5],
      [0, 0, 'corner'],
    ]);
    const cup = mirrored([
      [0, 74],
      [20, 69],
      [31, 53],
      [29.5, 47, 'corner'],
      [0, 50],
    ]);
    const steps: Step[] = [cut(nut), cut(cup)];
    steps.push(
      keepLine(
        [
          [-40, 58.5],
          [0, 61.5],
          [40, 58.5],
        ],
        4.2,
      ),
    );
    steps.push(
      cutLine(
        [
          [0, 72],
          [-1, 82],
          [-6, 94],
        ],
        5,
      ),
    );
    if (leaves >= 1) {
      const one = put(leaf(34, 16, 0.5), 7, 79, 68);
      steps.push(
        cut(one),
        keepLine(
          [
            [4, 77.5],
            [17, 83],
            [28, 87.5],
          ],
          4.2,
        ),
      );
      const two = flipped(put(leaf(34, 16, 0.5), 11.5, 79, 68));
      steps.push(
        cut(two),
        keepLine(
          [
            [-8.5, 77.5],
            [-21.5, 83],
            [-32.5, 87.5],
          ],
          4.2,
        ),
      );
    }
    return stencil(steps);
  },
};
