import type { MotifEntry } from './motif.ts';
import { circle } from './pen/forms.ts';
import { closedSpline } from './pen/spline.ts';
import { box, flipped } from './pen/forms.ts';
import { cut, cutLine, keep, keepLine, stencil } from './pen/stencil.ts';

/** A stocked anchor: ring, stock, shank, arms and flukes. */
export const ANCHOR: MotifEntry = {
  id: 'anchor',
  label: 'anchor',
  options: [],
  draw() {
    const arm = closedSpline([
      [0, 0, 'corner'],
      [14, 3.5],
      [27, 12],
      [35, 26, 'corner'],
      [40.5, 24, 'corner'],
      [39, 34],
      [34.5, 45, 'corner'],
      [27, 37],
      [20, 31, 'corner'],
      [26.5, 28.5, 'corner'],
      [20, 20],
      [11, 14.5],
      [0, 12.5, 'corner'],
    ]);
    return stencil([
      cut(arm, flipped(arm)),
      cut(box(-4, 6, 4, 83)),
      cutLine(
        [
          [-21, 71],
          [21, 71],
        ],
        7.5,
      ),
      cut(circle(-22, 71, 5.4), circle(22, 71, 5.4)),
      keep(box(-9, 80.5, 9, 84)),
      cut(circle(0, 91.5, 10.5)),
      keep(circle(0, 91.5, 5)),
      keepLine(
        [
          [0, 91.5],
          [0, 104],
        ],
        4.4,
        'butt',
      ),
      keep(box(-9, 80, 9, 82.6)),
    ]);
  },
};
