import type { MotifEntry } from '../motif.ts';
import { circle, polygon, put } from './pen/forms.ts';
import { closedSpline, type Knot } from './pen/spline.ts';
import { cut, keepLine, stencil, type Step } from './pen/stencil.ts';

/** A crown: so many points with a ball each, over a band with stones. */
export const CROWN: MotifEntry = {
  id: 'crown',
  label: 'crown',
  options: [{ id: 'points', label: 'Points', least: 3, most: 7, step: 2, usual: 5 }],
  draw({ points = 5 }) {
    const count = Math.round(points);
    const [foot, spread] = [42, 54];
    const x = (i: number): number => -spread + (2 * spread * i) / (count - 1);
    const height = (i: number): number => 66 + 10 * (1 - Math.abs((2 * i) / (count - 1) - 1));
    const knots: Knot[] = [[-foot, 26, 'corner']];
    for (let i = 0; i < count; i++) {
      knots.push([x(i), height(i), 'corner']);
      if (i < count - 1) knots.push([((x(i) + x(i + 1)) / 2) * 0.9, 43 + 2 * Math.abs(i - (count - 2) / 2), 'corner']);
    }
    knots.push([foot, 26, 'corner'], [0, 21]);
    const steps: Step[] = [cut(closedSpline(knots))];
    for (let i = 0; i < count; i++) steps.push(cut(circle(x(i), height(i) + 8, 6)));
    // The band, bent like the foot of the crown, with lozenges left open in a groove of metal.
    const bend = (dy: number): Knot[] => [
      [-foot + 1, dy + 5],
      [0, dy],
      [foot - 1, dy + 5],
    ];
    steps.push(cut(closedSpline([...corners(bend(16)), ...corners(bend(0)).reverse()])));
    const stones = count + 2;
    steps.push(keepLine(inset(bend(8), 5), 9.5));
    for (let i = 0; i < stones; i++) {
      const t = (2 * (i + 0.5)) / stones - 1;
      const at = put(i % 2 === 0 ? lozenge(3.6) : circle(0, 0, 2.4), t * (foot - 6), 8 + 5 * t * t);
      steps.push(cut(at));
    }
    return stencil(steps.slice(0, 2 + count));
  },
};

function corners(line: readonly Knot[]): Knot[] {
  return line.map(([x, y], i) => (i === 1 ? [x, y] : [x, y, 'corner']));
}

function inset(line: readonly Knot[], by: number): Knot[] {
  return line.map(([x, y]) => [x - Math.sign(x) * by, y]);
}

function lozenge(r: number) {
  return polygon([
    [0, r],
    [r * 1.3, 0],
    [0, -r],
    [-r * 1.3, 0],
  ]);
}
