import type { MotifEntry } from '../motif.ts';
import { knotsOf } from './pen/knots.ts';
import { closedSpline } from './pen/spline.ts';
import { mirrored, pair, put } from './pen/forms.ts';
import { cut, cutLine, over, stencil, type Step } from './pen/stencil.ts';

/** A hop cone hanging on its bine: rows of scales, upper ones over lower ones, and two small leaves. */
export const HOP_CONE: MotifEntry = {
  id: 'hopCone',
  label: 'hop cone',
  options: [{ id: 'rows', label: 'Rows of scales', least: 4, most: 6, step: 1, usual: 5 }],
  draw({ rows = 5 }) {
    const count = Math.round(rows);
    const steps: (Step | readonly Step[])[] = [];
    const pitch = 62 / count;
    const tall = pitch * 2.05;
    for (let row = 0; row < count; row++) {
      // Row 0 is the lowest; the cone is fullest a little above its middle.
      const t = row / (count - 1);
      const y = row * pitch;
      const half = 27 * Math.sin(Math.PI * (0.2 + 0.62 * t));
      const across = row === 0 ? 1 : row % 2 === 1 ? 2 : 3;
      const wide = (2 * half * (across === 1 ? 0.85 : across === 2 ? 1.12 : 1.24)) / across;
      const order = across === 3 ? [-1, 1, 0] : across === 2 ? [-0.5, 0.5] : [0];
      for (const place of order) {
        const x = place * ((2 * half) / across) * 0.94;
        steps.push(over(put(scale(wide, tall), x, y, place * (across === 3 ? 17 : 22))));
      }
    }
    const top = count * pitch + tall * 0.42;
    for (const side of pair(bract())) steps.push(cut(put(side, 0, top + 5)));
    steps.push(
      cutLine(
        [
          [0, top + 8],
          [1, top + 16],
          [5, top + 25],
        ],
        4.4,
      ),
    );
    return stencil(steps, 3.6, 3);
  },
};

/** Tip at the origin, pointing down. */
function scale(wide: number, tall: number) {
  const w = wide / 2;
  return mirrored([
    [0, tall],
    [w * 0.8, tall * 0.86],
    [w, tall * 0.55],
    [w * 0.62, tall * 0.2],
    [0, 0, 'corner'],
  ]);
}

function bract() {
  return closedSpline(knotsOf('hopLeaf'));
}
