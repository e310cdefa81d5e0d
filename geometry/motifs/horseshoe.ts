import type { MotifEntry } from '../motif.ts';
import { knotsOf } from './pen/knots.ts';
import { clockPoint } from '../measure/clock.ts';
import { mirrored } from './pen/forms.ts';
import { cut, keepLine, stencil, type Step } from './pen/stencil.ts';

/** A horseshoe, open side up; its nail holes are notches from the inner edge, so that nothing in them is loose. */
export const HORSESHOE: MotifEntry = {
  id: 'horseshoe',
  label: 'horseshoe',
  options: [{ id: 'nails', label: 'Nails on each side', least: 2, most: 4, step: 1, usual: 3 }],
  draw({ nails = 3 }) {
    const shoe = mirrored(knotsOf('horseshoe'));
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
