import type { MotifEntry } from '../motif.ts';
import { clockPoint } from '../measure/clock.ts';
import { mirrored } from './pen/forms.ts';
import { cut, keepLine, stencil, type Step } from './pen/stencil.ts';

/** A horseshoe, open side up; its nail holes are notches from the inner edge, so that nothing in them is loose. */
export const HORSESHOE: MotifEntry = {
  id: 'horseshoe',
  label: 'horseshoe',
  options: [{ id: 'nails', label: 'Nails on each side', least: 2, most: 4, step: 1, usual: 3 }],
  draw({ nails = 3 }) {
    const shoe = mirrored([
      [0, 0],
      [24, 5],
      [40, 22],
      [46, 47],
      [42, 74],
      [33, 98, 'corner'],
      [31, 101, 'corner'],
      [17.5, 97, 'corner'],
      [17, 93, 'corner'],
      [23.5, 71],
      [26, 49],
      [22, 31],
      [12, 21],
      [0, 18.5],
    ]);
    const steps: Step[] = [cut(shoe)];
    const count = Math.round(nails);
    for (const side of [-1, 1])
      for (let i = 0; i < count; i++) {
        const deg = 180 - side * (44 + (i * 84) / (count - 1));
        const [a, b] = [clockPoint(20, deg), clockPoint(37, deg)];
        const squash = (p: { x: number; y: number }): [number, number] => [p.x * 1.02, 50 + p.y * 1.06];
        steps.push(keepLine([squash(a), squash(b)], 4.6));
      }
    return stencil(steps);
  },
};
