import type { MotifEntry } from './motif.ts';
import { closedSpline } from './pen/spline.ts';
import { box } from './pen/forms.ts';
import { cut, cutLine, keepLine, stencil } from './pen/stencil.ts';

/** A copper pot still: fire box, onion, swan neck and lyne arm. */
export const POT_STILL: MotifEntry = {
  id: 'potStill',
  label: 'pot still',
  options: [],
  draw() {
    const pot = closedSpline([
      [-36, 16, 'corner'],
      [-38.5, 28],
      [-34, 41],
      [-22, 50],
      [-13, 57],
      [-9.5, 70],
      [-6.5, 88],
      [-1, 97],
      [10, 100],
      [22, 96.5],
      [42, 87],
      [60, 77, 'corner'],
      [57, 70.5, 'corner'],
      [40, 77.5],
      [22, 83],
      [13, 83],
      [10, 76],
      [12, 60],
      [21, 50],
      [33, 41],
      [37.5, 28],
      [35, 16, 'corner'],
    ]);
    return stencil([
      cut(pot),
      keepLine(
        [
          [-46, 43],
          [0, 38.5],
          [46, 43],
        ],
        4.4,
      ),
      keepLine(
        [
          [-22, 68],
          [1, 65.5],
          [22, 68],
        ],
        4.2,
      ),
      keepLine(
        [
          [33, 101],
          [29.5, 90],
          [26, 76],
        ],
        4.2,
      ),
      cut(box(-31, 0, 30, 11.5)),
      keepLine(
        [
          [-12, -3],
          [-12, 4.5],
          [0, 7],
          [11, 4.5],
          [11, -3],
        ],
        0.1,
      ),
      cutLine(
        [
          [58, 66],
          [58, 8],
        ],
        7.4,
        'butt',
      ),
      cutLine(
        [
          [50, 3.7],
          [66, 3.7],
        ],
        7.4,
        'butt',
      ),
    ]);
  },
};
