import type { Design, Stock } from '../../geometry/design/schema.ts';
import type { Change } from '../state/history.ts';

/** Sets material, thickness, process or use. */
export function setStock(design: Design, part: Partial<Stock>): Change {
  return {
    design: { ...design, stock: { ...design.stock, ...part } },
    undo: 'merge',
    about: `stock:${Object.keys(part).sort().join()}`,
  };
}
