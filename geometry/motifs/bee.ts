import type { MotifEntry } from './motif.ts';
import { circle, flipped, mirrored, put } from './pen/forms.ts';
import { closedSpline } from './pen/spline.ts';
import { cut, cutLine, keepLine, over, stencil, type Step } from './pen/stencil.ts';

/** A honey bee from above, wings spread; its stripes are webs. */
export const BEE: MotifEntry = {
  id: 'bee',
  label: 'bee',
  options: [{ id: 'stripes', label: 'Stripes', least: 2, most: 4, step: 1, usual: 3 }],
  draw({ stripes = 3 }) {
    const abdomen = mirrored([
      [0, 55],
      [11, 52],
      [16, 40],
      [14.5, 24],
      [8, 9],
      [0, 0, 'corner'],
    ]);
    const wing = closedSpline([
      [8, 66, 'corner'],
      [24, 78],
      [43, 85],
      [53, 80],
      [49, 68],
      [35, 60],
      [20, 59],
    ]);
    const hind = closedSpline([
      [11, 57, 'corner'],
      [27, 57],
      [40, 50],
      [42, 41],
      [34, 36],
      [23, 42],
      [16, 50],
    ]);
    const steps: (Step | readonly Step[])[] = [];
    for (const w of [hind, wing]) steps.push(over(w, 4), over(flipped(w), 4));
    for (const side of [-1, 1]) {
      steps.push(
        keepLine(
          [
            [side * 8, 66],
            [side * 25, 69],
            [side * 39, 75],
          ],
          4.2,
        ),
      );
      steps.push(
        cutLine(
          [
            [side * 4.5, 89],
            [side * 8, 97],
            [side * 15, 101],
          ],
          3,
        ),
      );
    }
    steps.push(over(abdomen, 4));
    const count = Math.round(stripes);
    for (let i = 0; i < count; i++) {
      const y = 43 - (i * 30) / Math.max(count, 3);
      steps.push(
        keepLine(
          [
            [-22, y + 3],
            [0, y - 1.6],
            [22, y + 3],
          ],
          4,
        ),
      );
    }
    steps.push(over(circle(0, 66, 11), 4), over(put(circle(0, 0, 7.4), 0, 84), 4));
    steps.push(cut([]));
    return stencil(steps);
  },
};
