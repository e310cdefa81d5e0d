import type { MotifEntry } from '../motif.ts';
import { knotsOf } from './pen/knots.ts';
import { clockPoint } from '../measure/clock.ts';
import { leaf, put } from './pen/forms.ts';
import { closedSpline } from './pen/spline.ts';
import { cut, cutLine, keep, over, overAll, stencil, type Step } from './pen/stencil.ts';

/** A sheaf: ears fanned out above, a band, straw below. */
export const SHEAF: MotifEntry = {
  id: 'sheaf',
  label: 'sheaf',
  options: [{ id: 'ears', label: 'Ears', least: 3, most: 5, step: 2, usual: 5 }],
  draw({ ears = 5 }) {
    const count = ears < 4 ? 3 : 5;
    const steps: (Step | readonly Step[])[] = [];
    // Outer ears first: the one in the middle lies over all.
    const places = Array.from({ length: count }, (_, i) => i - (count - 1) / 2);
    for (const place of places.sort((a, b) => Math.abs(b) - Math.abs(a) || a - b)) {
      const deg = place * (count === 3 ? 32 : 25);
      const foot: [number, number] = [place * 4.6, 42];
      const up = (d: number, aside = 0): [number, number] => {
        const [along, across] = [clockPoint(d, deg), clockPoint(aside, deg + 90)];
        return [foot[0] + along.x + across.x, foot[1] + along.y + across.y - Math.abs(place) * 1.5];
      };
      steps.push(cutLine([foot, up(17)], 4));
      const grain = (along: number, side: number) =>
        put(leaf(17, 8.6, 0.44), ...up(along, side * 2.2), deg + side * 27);
      steps.push(over(grain(44, 0), 4));
      for (const along of [32.5, 21]) steps.push(overAll([grain(along, -1), grain(along, 1)], 4));
    }
    const straws = 5;
    for (let i = 0; i < straws; i++) {
      const place = i - (straws - 1) / 2;
      steps.push(cut(straw(place * 6, place * 11.5, 7.4)));
    }
    const band = closedSpline(knotsOf('sheafBand'));
    steps.push(keep(put(band, 0, 4.4), put(band, 0, -4.4)), cut(band));
    return stencil(steps);
  },
};

function straw(top: number, foot: number, wide: number) {
  const w = wide / 2;
  return closedSpline([
    [top - w * 0.5, 34, 'corner'],
    [top + w * 0.5, 34, 'corner'],
    [top + (foot - top) * 0.36 + w * 0.5, 18],
    [foot + w * 0.72, 1, 'corner'],
    [foot - w * 0.72, -1, 'corner'],
    [top + (foot - top) * 0.36 - w * 0.5, 18],
  ]);
}
