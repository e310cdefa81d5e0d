import type { Design, RingText } from '../../geometry/design/schema.ts';
import type { Change } from '../state/history.ts';
import { editElement } from './edit-element.ts';

export type RingTextPart = Partial<Pick<RingText, 'middleDeg' | 'reads' | 'fit'>>;

/** Sets where a ring text stands and how it is spaced; runs of the same setting are one step. */
export function setRingText(design: Design, id: string, part: RingTextPart): Change {
  return {
    design: editElement(design, id, (e) => (e.kind === 'ringText' ? { ...e, ...part } : e)),
    undo: 'merge',
    about: `ring:${id}:${Object.keys(part).sort().join()}`,
  };
}
