import type { MotifEntry } from '../motif.ts';
import type { Knot } from './pen/spline.ts';
import { cutLine, overLine, stencil, type Step } from './pen/stencil.ts';

/** A plaited ring: one cord with so many loops, over and under in turn. */
export const KNOT: MotifEntry = {
  id: 'knot',
  label: 'knot',
  options: [{ id: 'loops', label: 'Loops', least: 3, most: 7, step: 2, usual: 3 }],
  draw({ loops = 3 }) {
    const n = Math.round(loops / 2 - 0.5) * 2 + 1;
    const [ring, wave] = n === 3 ? [28.5, 15.5] : n === 5 ? [32, 12.5] : [35, 10.5];
    const width = n === 3 ? 9 : n === 5 ? 7 : 5.6;
    // A cord on a torus, twice round it lengthwise (torus knot 2, n): it crosses itself n times.
    const at = (t: number): Knot => {
      const r = ring + wave * Math.cos((n * t) / 2);
      return [r * Math.sin(t), r * Math.cos(t)];
    };
    const piece = (from: number, to: number): Knot[] => {
      const steps = Math.max(4, Math.ceil((to - from) * 12));
      return Array.from({ length: steps + 1 }, (_, i) => at(from + ((to - from) * i) / steps));
    };
    const cord = cutLine(piece(0, 4 * Math.PI), width);
    // It crosses itself where cos(n t / 2) is 0; every second passage goes over.
    const steps: (Step | readonly Step[])[] = [cord];
    const reach = (Math.PI / n) * 0.5;
    for (let k = 0; k < 2 * n; k++) {
      const t = ((2 * k + 1) * Math.PI) / n;
      if (k % 2 === 0) steps.push(overLine(piece(t - reach, t + reach), width, 'butt', 4));
    }
    return stencil(steps);
  },
};
