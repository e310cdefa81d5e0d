import type { MotifEntry } from './motif.ts';
import { closedSpline } from './pen/spline.ts';
import { box, mirrored, pair } from './pen/forms.ts';
import { cut, keep, stencil } from './pen/stencil.ts';

/** A heraldic lily: three petals in a band. */
export const LILY: MotifEntry = {
  id: 'lily',
  label: 'heraldic lily',
  options: [],
  draw() {
    const middle = mirrored([
      [0, 100, 'corner'],
      [9, 84],
      [15, 68],
      [11, 52],
      [5.5, 38, 'corner'],
      [0, 38],
    ]);
    const side = closedSpline([
      [9.5, 38, 'corner'],
      [14, 54],
      [25, 69],
      [38, 69],
      [44, 56],
      [39, 44],
      [30, 43],
      [29, 50, 'corner'],
      [35, 52],
      [33, 58],
      [25, 52],
      [19, 38, 'corner'],
    ]);
    const tail = closedSpline([
      [9.5, 26, 'corner'],
      [19, 26, 'corner'],
      [22, 18],
      [31, 13],
      [24, 8],
      [14, 12],
    ]);
    const foot = mirrored([
      [0, 27],
      [5.5, 27, 'corner'],
      [8, 14],
      [0, 0, 'corner'],
    ]);
    return stencil([
      cut(middle, foot, ...pair(side), ...pair(tail)),
      keep(box(-30, 23.6, 30, 41)),
      cut(box(-23, 28.5, 23, 36)),
    ]);
  },
};
