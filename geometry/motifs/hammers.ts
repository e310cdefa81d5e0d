import type { MotifEntry } from '../motif.ts';
import { knotsOf } from './pen/knots.ts';
import { closedSpline } from './pen/spline.ts';
import { flipped, put } from './pen/forms.ts';
import { over, stencil } from './pen/stencil.ts';

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
  return closedSpline(knotsOf('hammerHandle'));
}

/** Square face to the left, a driver's wedge to the right. */
function head() {
  return closedSpline(knotsOf('hammerHead'));
}
