import type { MotifEntry } from './motif.ts';
import { mirrored } from './pen/forms.ts';
import { cut, cutLine, keepBothSides, keepLine, stencil, type Step } from './pen/stencil.ts';

/** A leaf of the oak that barrels are made of: round lobes, a midrib that parts it, veins into the lobes. */
export const OAK_LEAF: MotifEntry = {
  id: 'oakLeaf',
  label: 'oak leaf',
  options: [{ id: 'veins', label: 'Veins', least: 0, most: 1, step: 1, usual: 1 }],
  draw({ veins = 1 }) {
    const blade = mirrored([
      [0, 100],
      [9, 97],
      [12.5, 89],
      [9.5, 82],
      [18, 82.5],
      [25, 75],
      [21.5, 66],
      [14, 62.5],
      [24, 62],
      [31.5, 53],
      [27, 43.5],
      [15.5, 40.5],
      [22, 37.5],
      [24, 29],
      [18, 23],
      [8, 21],
      [5, 14],
      [0, 11],
    ]);
    const steps: Step[] = [
      cut(blade),
      keepLine(
        [
          [0, 4],
          [0, 91],
        ],
        4.4,
      ),
    ];
    if (veins >= 0.5) steps.push(...keepBothSides(VEINS));
    steps.push(
      keepLine(
        [
          [0, 4],
          [0, 14],
        ],
        12,
      ),
      cutLine(
        [
          [0, 10],
          [0.5, 4],
          [3, -5],
        ],
        4.6,
      ),
    );
    return stencil(steps);
  },
};

const VEINS: Parameters<typeof keepBothSides>[0] = [
  [
    [
      [0, 64],
      [7, 69],
      [15, 74],
    ],
    4.2,
  ],
  [
    [
      [0, 41],
      [9, 47],
      [20, 52.5],
    ],
    4.2,
  ],
  [
    [
      [0, 22],
      [7, 26],
      [14, 30],
    ],
    4.2,
  ],
];
