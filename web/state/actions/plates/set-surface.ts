import type { Design, Side } from '../../../../geometry/design/schema.ts';
import type { Change } from '../../change.ts';
import { typedOrChosen } from '../elements/typed-or-chosen.ts';

/** From the head of the barrel to its side, and back. */
export function setSurface(design: Design, kind: 'head' | 'side'): Change {
  const side: Side = { kind: 'side', lines: 'along-hoops', spread: true };
  return { design: { ...design, surface: kind === 'head' ? 'head' : side }, undo: 'step' };
}

/** Sets what the side measures (mm), which way its lines run, or whether lettering is spread; not for a head. */
export function setSide(design: Design, part: Partial<Omit<Side, 'kind'>>): Change {
  if (design.surface === 'head') return { design, undo: 'step' };
  return {
    design: { ...design, surface: { ...design.surface, ...part } },
    undo: typedOrChosen(part),
    about: `side:${Object.keys(part).sort().join()}`,
  };
}
