import type { MotifEntry } from '../motif.ts';
import { clockPoint } from '../measure/clock.ts';
import { circle, flipped, leaf, put } from './pen/forms.ts';
import type { Knot } from './pen/spline.ts';
import { cut, cutLine, overAll, stencil, type Step } from './pen/stencil.ts';

/** Two laurel branches bound into a wreath open at the top: room for a date or an initial within. */
export const WREATH: MotifEntry = {
  id: 'wreath',
  label: 'laurel wreath',
  options: [{ id: 'leaves', label: 'Leaves on each branch', least: 5, most: 9, step: 1, usual: 7 }],
  draw({ leaves = 7 }) {
    const count = Math.round(leaves);
    const radius = 42;
    const steps: (Step | readonly Step[])[] = [];
    const step = 132 / count;
    const long = 2 * Math.PI * radius * (step / 360) * 1.32;
    const wide = Math.min(11.5, long * 0.46);
    const place = (up: number, aside: number, by: number, turn: number) => {
      const root = clockPoint(radius + aside, 180 - up);
      return put(leaf(long * by, wide * by, 0.48), root.x, root.y, 90 - up + turn);
    };
    const tip = place(19 + count * step - 3, 0, 0.8, 0);
    steps.push(cut(tip, flipped(tip)));
    // Lower leaves lie over higher ones.
    for (let i = count - 1; i >= 0; i--) {
      const [up, by] = [19 + i * step, 1 - 0.22 * (i / count)];
      const [outer, inner] = [place(up, 3, by, 36), place(up, -3, by * 0.9, -36)];
      steps.push(overAll([outer, inner, flipped(outer), flipped(inner)], 4));
    }
    const foot = (side: number): Knot[] =>
      [17, 6, -7, -15].map((deg, i): Knot => {
        const p = clockPoint(radius + (i > 1 ? (i - 1) * 1.5 : 0), 180 - deg);
        return [side * p.x, p.y];
      });
    steps.push(cutLine(foot(1), 3.4), cutLine(foot(-1), 3.4));
    steps.push(cut(circle(0, -radius - 0.6, 5.2)));
    return stencil(steps);
  },
};
