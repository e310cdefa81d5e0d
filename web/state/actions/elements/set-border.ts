import type { Border, Design } from '../../../../geometry/design/schema.ts';
import type { Change } from '../../change.ts';
import { editElement } from './edit-element.ts';
import { typedOrChosen } from './typed-or-chosen.ts';

/** Sets the style or the count of a border. */
export function setBorder(design: Design, id: string, part: Partial<Pick<Border, 'style' | 'count'>>): Change {
  return {
    design: editElement(design, id, (e) => (e.kind === 'border' ? { ...e, ...part } : e)),
    undo: typedOrChosen(part),
    about: `border:${id}:${Object.keys(part).sort().join()}`,
  };
}
