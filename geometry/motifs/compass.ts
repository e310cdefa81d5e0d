import type { MotifEntry } from '../motif.ts';
import { clockPoint } from '../measure/clock.ts';
import { polygon } from './pen/forms.ts';
import type { Knot } from './pen/spline.ts';
import { cut, cutLine, keep, keepLine, stencil, type Step } from './pen/stencil.ts';

/** A compass rose: every point parted along its middle, long points over short ones; a ring if asked. */
export const COMPASS: MotifEntry = {
  id: 'compass',
  label: 'compass rose',
  options: [
    { id: 'points', label: 'Points', least: 4, most: 8, step: 4, usual: 8 },
    { id: 'ring', label: 'Ring', least: 0, most: 1, step: 1, usual: 1 },
  ],
  draw({ points = 8, ring = 1 }) {
    const steps: Step[] = [];
    if (ring >= 0.5)
      for (const deg of [0, 90, 180, 270]) {
        const arc = Array.from({ length: 9 }, (_, i) => xy(36, deg + 16 + (i * 58) / 8));
        steps.push(cutLine(arc, 4.4, 'butt'));
      }
    if (points >= 6) for (const deg of [45, 135, 225, 315]) steps.push(...spike(deg, 43, 17, 24));
    for (const deg of [0, 90, 180, 270]) steps.push(...spike(deg, 50, 13.5, 45));
    return stencil(steps, 3.6, 1.5);
  },
};

/** A web round the point, the point, and the web that parts it. */
function spike(deg: number, long: number, waist: number, half: number): Step[] {
  const form = (web: number) =>
    polygon([
      xy(long + 2.5 * web, deg),
      xy(waist + 1.25 * web, deg + half),
      xy(0, deg),
      xy(waist + 1.25 * web, deg - half),
    ]);
  return [keep(form(4)), cut(form(0)), keepLine([xy(-4, deg), xy(long * 1.2, deg)], 4, 'butt')];
}

function xy(r: number, deg: number): [number, number] & Knot {
  const p = clockPoint(r, deg);
  return [p.x, p.y];
}
