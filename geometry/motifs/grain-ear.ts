import type { MotifEntry } from '../motif.ts';
import { flipped, leaf, put } from './pen/forms.ts';
import type { Knot } from './pen/spline.ts';
import { cut, cutLine, overAll, stencil, type Step } from './pen/stencil.ts';

/** An ear of barley or wheat: so many pairs of grains up a stem, and one at the tip. */
export const GRAIN_EAR: MotifEntry = {
  id: 'grainEar',
  label: 'ear of grain',
  options: [
    { id: 'grains', label: 'Pairs of grains', least: 3, most: 5, step: 1, usual: 4 },
    { id: 'awns', label: 'Awns', least: 0, most: 1, step: 1, usual: 1 },
  ],
  draw({ grains = 4, awns = 1 }) {
    const pairs = Math.round(grains);
    const gap = 60 / pairs;
    const [long, wide] = [gap * 0.85 + 11, gap * 0.4 + 9.6];
    const tip = pairs * gap;
    const steps: (Step | readonly Step[])[] = [cut(put(leaf(long, wide * 0.95, 0.46), 0, tip + 5))];
    // Lower grains lie over higher ones.
    for (let i = pairs - 1; i >= 0; i--) {
      const right = put(leaf(long, wide, 0.44), 6.2, i * gap, 24);
      steps.push(overAll([right, flipped(right)], 4.8));
    }
    if (awns >= 0.5) {
      const top = tip + long;
      const lines: Knot[][] = [
        [
          [0, top + 6],
          [0, top + 17],
        ],
        [
          [13.5, top - 5],
          [16, top + 4],
          [17.5, top + 14],
        ],
        [
          [23, top - 16],
          [27, top - 7],
          [31, top + 2],
        ],
      ];
      for (const line of lines)
        for (const side of [-1, 1]) {
          const awn = line.map(([x, y]): Knot => [side * x, y]);
          steps.push(cutLine(awn, 3.8));
        }
    }
    steps.push(
      cutLine(
        [
          [0, -6],
          [0.4, -13],
          [2.6, -22],
        ],
        5.4,
      ),
    );
    return stencil(steps);
  },
};
