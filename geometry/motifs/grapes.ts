import type { MotifEntry } from '../motif.ts';
import { knotsOf } from './pen/knots.ts';
import { circle, put } from './pen/forms.ts';
import { closedSpline } from './pen/spline.ts';
import { cut, cutLine, keepLine, stencil, type Step } from './pen/stencil.ts';

/** A bunch of grapes with a leaf: rows that get shorter by one berry downwards. */
export const GRAPES: MotifEntry = {
  id: 'grapes',
  label: 'bunch of grapes',
  options: [{ id: 'rows', label: 'Rows of berries', least: 3, most: 5, step: 1, usual: 4 }],
  draw({ rows = 4 }) {
    const count = Math.round(rows);
    const pitch = 62 / (count + 0.3);
    const steps: Step[] = [];
    const top = count * pitch * 0.87;
    for (let row = 0; row < count; row++) {
      for (let i = 0; i < count - row; i++) {
        const x = (i - (count - row - 1) / 2) * pitch;
        steps.push(cut(circle(x, top - row * pitch * 0.87, (pitch - 4.6) / 2)));
      }
    }
    const y = top + pitch / 2 + 4;
    steps.push(cut(put(vine(), -3, y, -14, 0.9), put(vine(), 3, y, 62, 0.62)));
    steps.push(
      keepLine(
        [
          [-4, y - 3],
          [-10, y + 14],
          [-11, y + 23],
        ],
        4.2,
      ),
    );
    steps.push(
      cutLine(
        [
          [1.5, y + 1],
          [5, y + 15],
          [15, y + 23],
        ],
        4.4,
      ),
    );
    return stencil(steps);
  },
};

/** A small lobed leaf, its stalk end at the origin. */
function vine() {
  return closedSpline(knotsOf('grapeLeaf'));
}
