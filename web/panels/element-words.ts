import { isDrawing, isText } from '../../geometry/design/kinds.ts';
import type { DesignElement } from '../../geometry/design/schema.ts';
import { words } from '../words/en.ts';

/** What a person calls an element by its place: `Ring text, top`. */
export function kindWords(element: DesignElement): string {
  if (element.kind === 'lineText') return words.say.kinds.line;
  if (element.kind === 'border')
    return `${words.say.kinds.border}: ${words.details.styles[element.style].toLowerCase()}`;
  if (isDrawing(element)) return element.kind === 'motif' ? words.say.kinds.motif : words.say.kinds.artwork;
  const clock = ((element.middleDeg % 360) + 360) % 360;
  if (clock < 45 || clock > 315) return words.say.kinds.ringTop;
  return clock > 135 && clock < 225 ? words.say.kinds.ringBottom : words.say.kinds.ring;
}

/** The same, with its text when it has one. */
export function elementWords(element: DesignElement): string {
  const kind = kindWords(element);
  return !isText(element) || element.text.trim() === '' ? kind : `${kind} “${element.text.trim()}”`;
}
