import type { MotifEntry } from './motif.ts';
import { mirrored } from './pen/forms.ts';
import { cut, cutLine, keepBothSides, keepLine, stencil, type Step } from './pen/stencil.ts';

/** A vine leaf: five lobes, and veins of metal that part it from the stalk outwards. */
export const VINE_LEAF: MotifEntry = {
  id: 'vineLeaf',
  label: 'vine leaf',
  options: [],
  draw() {
    const blade = mirrored([
      [0, 100, 'corner'],
      [5, 90],
      [13, 88, 'corner'],
      [13.5, 80],
      [22, 74, 'corner'],
      [19, 68],
      [18, 62, 'corner'],
      [24, 68],
      [32, 69, 'corner'],
      [36, 74],
      [45, 75, 'corner'],
      [44, 65],
      [50, 57, 'corner'],
      [43, 51],
      [44, 43, 'corner'],
      [36, 42],
      [29, 37, 'corner'],
      [36, 35],
      [41, 28, 'corner'],
      [35, 22],
      [33, 13, 'corner'],
      [24, 14],
      [14, 10, 'corner'],
      [9, 17],
      [0, 24, 'corner'],
    ]);
    const steps: Step[] = [
      cut(blade),
      keepLine(
        [
          [0, 20],
          [0, 89],
        ],
        4.2,
      ),
    ];
    steps.push(...keepBothSides(VEINS));
    steps.push(
      cutLine(
        [
          [0, 18],
          [1, 8],
          [6, -2],
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
      [0, 28],
      [16, 43],
      [35, 63],
    ],
    4,
  ],
  [
    [
      [0, 28],
      [13, 26],
      [29, 20.5],
    ],
    4,
  ],
  [
    [
      [0, 56],
      [6, 64],
      [11, 71],
    ],
    4.2,
  ],
];
