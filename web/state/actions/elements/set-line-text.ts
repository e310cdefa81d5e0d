import type { Design, LineText } from '../../../../geometry/design/schema.ts';
import type { Change } from '../../change.ts';
import { editElement } from './edit-element.ts';
import { typedOrChosen } from './typed-or-chosen.ts';

export type LineTextPart = Partial<Pick<LineText, 'x' | 'y' | 'capHeight' | 'turnDeg' | 'fit'>>;

/** Sets where a line of text stands, how tall it is and how it is spaced; runs of the same setting are one step. */
export function setLineText(design: Design, id: string, part: LineTextPart): Change {
  return {
    design: editElement(design, id, (e) => (e.kind === 'lineText' ? { ...e, ...part } : e)),
    undo: typedOrChosen(part),
    about: `line:${id}:${Object.keys(part).sort().join()}`,
  };
}
