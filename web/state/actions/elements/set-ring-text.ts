import type { Design, RingText } from '../../../../geometry/design/schema.ts';
import type { Change } from '../../change.ts';
import { editElement } from './edit-element.ts';
import { typedOrChosen } from './typed-or-chosen.ts';

export type RingTextPart = Partial<Pick<RingText, 'middleDeg' | 'reads' | 'fit'>>;

/** Sets where a ring text stands and how it is spaced; runs of the same setting are one step. */
export function setRingText(design: Design, id: string, part: RingTextPart): Change {
  return {
    design: editElement(design, id, (e) => (e.kind === 'ringText' ? { ...e, ...part } : e)),
    undo: typedOrChosen(part),
    about: `ring:${id}:${Object.keys(part).sort().join()}`,
  };
}
