import type { MotifEntry } from '../motif.ts';
import { closedSpline } from './pen/spline.ts';
import { flipped, put } from './pen/forms.ts';
import { over, stencil } from './pen/stencil.ts';

/** Two cooper's hammers, crossed. */
export const HAMMERS: MotifEntry = {
  id: 'hammers',
  label: 'crossed hammers',
  options: [{ id: 'spread', label: 'Spread, degrees', least: 28, most: 48, step: 1, usual: 40 }],
  draw({ spread = 40 }) {
    const one = [put(handle(), 0, 0, spread), put(head(), 0, 0, spread)];
    return stencil([over(flipped(one[0]!), 4), over(one[0]!, 4), over(flipped(one[1]!), 4), over(one[1]!, 4)]);
  },
};

/** Upright, middle of the crossing at the origin. */
function handle() {
  return closedSpline([
    [-3.2, 42, 'corner'],
    [3.2, 42, 'corner'],
    [3, 10],
    [3.8, -30],
    [5.2, -50],
    [3.4, -58],
    [-3.4, -58],
    [-5.2, -50],
    [-3.8, -30],
    [-3, 10],
  ]);
}

/** Square face to the left, a driver's wedge to the right. */
function head() {
  return closedSpline([
    [-23, 39, 'corner'],
    [-17.5, 38.6, 'corner'],
    [-16.5, 41, 'corner'],
    [-7, 42, 'corner'],
    [8, 42, 'corner'],
    [17, 44.5],
    [25, 51, 'corner'],
    [24, 54, 'corner'],
    [14, 57],
    [7, 58, 'corner'],
    [-7, 58, 'corner'],
    [-16.5, 59, 'corner'],
    [-17.5, 61.4, 'corner'],
    [-23, 61, 'corner'],
  ]);
}
