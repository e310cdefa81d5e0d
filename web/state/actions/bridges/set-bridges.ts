import type { BridgeWishes, Design } from '../../../../geometry/design/schema.ts';
import type { Change } from '../../change.ts';
import { typedOrChosen } from '../elements/typed-or-chosen.ts';

export function setBridges(design: Design, part: Partial<BridgeWishes>): Change {
  return {
    design: { ...design, bridges: { ...design.bridges, ...part } },
    undo: typedOrChosen(part),
    about: `bridges:${Object.keys(part).sort().join()}`,
  };
}
