import type { MotifEntry } from '../motif.ts';
import { closedSpline } from './pen/spline.ts';
import { pair, polygon } from './pen/forms.ts';
import { cut, stencil } from './pen/stencil.ts';

/** A rule that swells and curls, to part two lines of text: a lozenge in the middle. */
export const FLOURISH: MotifEntry = {
  id: 'flourish',
  label: 'flourish',
  options: [{ id: 'length', label: 'Length, % of its height', least: 360, most: 600, step: 10, usual: 400 }],
  draw({ length = 400 }) {
    const end = length / 2;
    const swell = closedSpline([
      [36, 50, 'corner'],
      [end * 0.4, 66],
      [end * 0.7, 60],
      [end - 36, 54],
      [end - 16, 66],
      [end - 24, 86],
      [end - 42, 82],
      [end - 44, 70],
      [end - 60, 76],
      [end - 46, 98],
      [end - 14, 98],
      [end, 68],
      [end - 26, 34],
      [end * 0.7, 34],
      [end * 0.4, 34],
    ]);
    return stencil([
      cut(
        polygon([
          [0, 82],
          [24, 50],
          [0, 18],
          [-24, 50],
        ]),
      ),
      cut(...pair(swell)),
    ]);
  },
};
