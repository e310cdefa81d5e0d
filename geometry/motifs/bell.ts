import type { MotifEntry } from './motif.ts';
import { circle, mirrored } from './pen/forms.ts';
import { cut, keep, keepLine, stencil } from './pen/stencil.ts';

/** A bell with its crown loop and clapper. */
export const BELL: MotifEntry = {
  id: 'bell',
  label: 'bell',
  options: [{ id: 'bands', label: 'Bands', least: 0, most: 2, step: 1, usual: 2 }],
  draw({ bands = 2 }) {
    const body = mirrored([
      [0, 86],
      [12, 84],
      [20, 74],
      [23.5, 52],
      [29, 31],
      [43, 15, 'corner'],
      [40, 9.5, 'corner'],
      [0, 6.5],
    ]);
    const count = Math.round(bands);
    const steps = [
      cut(body),
      cut(circle(0, 91, 8.5)),
      keep(circle(0, 92.3, 3.9)),
      keepLine(
        [
          [0, 92],
          [0, 104],
        ],
        4.2,
        'butt',
      ),
      keepLine(
        [
          [-14, 85.5],
          [0, 85.5],
          [14, 85.5],
        ],
        4.2,
      ),
    ];
    if (count >= 1)
      steps.push(
        keepLine(
          [
            [-48, 26.5],
            [0, 22],
            [48, 26.5],
          ],
          4.2,
        ),
      );
    if (count >= 2)
      steps.push(
        keepLine(
          [
            [-40, 71],
            [0, 68.5],
            [40, 71],
          ],
          4.2,
        ),
      );
    steps.push(keep(circle(0, 4, 12)), cut(circle(0, 2.2, 7.8)));
    return stencil(steps);
  },
};
