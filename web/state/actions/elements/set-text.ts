import { isText } from '../../../../geometry/design/kinds.ts';
import { LONGEST_TEXT } from '../../../../geometry/design/limits.ts';
import type { Design } from '../../../../geometry/design/schema.ts';
import type { Change } from '../../change.ts';
import { editElement } from './edit-element.ts';

/** Types into one text element; typing in one field is one step. Line breaks become spaces. */
export function setText(design: Design, id: string, typed: string): Change {
  const text = typed.replace(/[\r\n\t]+/g, ' ').slice(0, LONGEST_TEXT);
  return {
    design: editElement(design, id, (e) => (!isText(e) || e.text === text ? e : { ...e, text })),
    undo: 'merge',
    about: `text:${id}`,
  };
}
