import type { MotifEntry } from './motif.ts';
import { flipped, leaf, put } from './pen/forms.ts';
import type { Knot } from './pen/spline.ts';
import { cut, cutLine, overAll, stencil, type Step } from './pen/stencil.ts';

/** An ear of barley or wheat: so many pairs of grains up a stem, and one at the tip. */
export const GRAIN_EAR: MotifEntry = {
  id: 'grainEar',
  label: 'ear of grain',
  options: [
    { id: 'grains', label: 'Pairs of grains', least: 3, most: 6, step: 1, usual: 4 },
    { id: 'awns', label: 'Awns', least: 0, most: 1, step: 1, usual: 1 },
  ],
  draw({ grains = 4, awns = 1 }) {
    const pairs = Math.round(grains);
    const gap = 15;
    const grain = leaf(24, 12.5, 0.44);
    const tip = pairs * gap;
    const steps: (Step | readonly Step[])[] = [cut(put(leaf(24, 11.5, 0.46), 0, tip + 1))];
    // Lower grains lie over higher ones.
    for (let i = pairs - 1; i >= 0; i--) {
      const right = put(grain, 3.2, i * gap, 27);
      steps.push(overAll([right, flipped(right)], 3.3));
    }
    if (awns >= 0.5) {
      const lines: Knot[][] = [
        [
          [0, tip + 30],
          [0, tip + 44],
        ],
        [
          [11.5, tip + 15],
          [15, tip + 27],
          [17, tip + 40],
        ],
        [
          [19, tip + 5],
          [25, tip + 16],
          [31, tip + 28],
        ],
      ];
      for (const line of lines)
        for (const side of [-1, 1])
          steps.push(
            cutLine(
              line.map(([x, y]): Knot => [side * x, y]),
              3.2,
            ),
          );
    }
    steps.push(
      cutLine(
        [
          [0, -5],
          [0.4, -16],
          [3.4, -30],
        ],
        5.2,
      ),
    );
    return stencil(steps);
  },
};
