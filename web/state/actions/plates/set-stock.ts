import type { Design, Stock } from '../../../../geometry/design/schema.ts';
import type { Change } from '../../change.ts';
import { typedOrChosen } from '../elements/typed-or-chosen.ts';

/** Sets material, thickness, process or use. */
export function setStock(design: Design, part: Partial<Stock>): Change {
  return {
    design: { ...design, stock: { ...design.stock, ...part } },
    undo: typedOrChosen(part),
    about: `stock:${Object.keys(part).sort().join()}`,
  };
}
