import type { MotifEntry } from '../motif.ts';
import { closedSpline, type Knot } from './pen/spline.ts';
import { cut, keepLine, stencil, type Step } from './pen/stencil.ts';

/** A barrel standing: staves parted by webs, hoops between them. */
export const BARREL: MotifEntry = {
  id: 'barrel',
  label: 'barrel',
  options: [
    { id: 'hoops', label: 'Pairs of hoops', least: 1, most: 2, step: 1, usual: 2 },
    { id: 'staves', label: 'Staves', least: 3, most: 5, step: 1, usual: 5 },
  ],
  draw({ hoops = 2, staves = 5 }) {
    const count = Math.round(staves);
    const steps: Step[] = [];
    // Bands from the foot to the middle, mirrored above: hoops are whole, staves between them parted.
    const bands = hoops < 1.5 ? HOOPS_1 : HOOPS_2;
    for (const { from, to, hoop } of bands) {
      const band: Step[] = [cut(slice(from, to, hoop ? 2 : 0))];
      if (!hoop)
        for (let i = 1; i < count; i++) {
          // Seen from the front, staves get narrower towards the sides.
          const share = Math.sin(((2 * i) / count - 1) * 1.15) / Math.sin(1.15);
          band.push(
            keepLine(
              [0, 25, 50, 75, 100].map((y): Knot => [share * half(y), y]),
              4.2,
            ),
          );
        }
      steps.push(...band);
    }
    const staved = bands.filter((b) => !b.hoop);
    const hooped = bands.filter((b) => b.hoop);
    return stencil([
      ...staved.map((b) => cut(slice(b.from, b.to, 0))),
      ...steps.filter((s) => !s.cut),
      ...hooped.map((b) => cut(slice(b.from, b.to, 2))),
    ]);
  },
};

interface Band {
  readonly from: number;
  readonly to: number;
  readonly hoop: boolean;
}

const HOOPS_1: readonly Band[] = [
  { from: 0, to: 14, hoop: false },
  { from: 18, to: 26, hoop: true },
  { from: 30, to: 70, hoop: false },
  { from: 74, to: 82, hoop: true },
  { from: 86, to: 100, hoop: false },
];
const HOOPS_2: readonly Band[] = [
  { from: -1, to: 8.5, hoop: true },
  { from: 12.5, to: 21.5, hoop: false },
  { from: 25.5, to: 33, hoop: true },
  { from: 37, to: 63, hoop: false },
  { from: 67, to: 74.5, hoop: true },
  { from: 78.5, to: 87.5, hoop: false },
  { from: 91.5, to: 101, hoop: true },
];

/** Half the width at a height from 0 to 100: an end of 29, a belly of 38. */
function half(y: number): number {
  return 29 + 9 * (1 - (y / 50 - 1) ** 2);
}

/** The part of the barrel between two heights; its edges sag below the middle and rise above it. */
function slice(from: number, to: number, out: number) {
  const bow = (y: number): number => 4 * (y / 50 - 1);
  const w = (y: number): number => half(y) + out;
  const middle = (from + to) / 2;
  return closedSpline([
    [-w(to), to, 'corner'],
    [0, to + bow(to)],
    [w(to), to, 'corner'],
    [w(middle), middle],
    [w(from), from, 'corner'],
    [0, from + bow(from)],
    [-w(from), from, 'corner'],
    [-w(middle), middle],
  ]);
}
