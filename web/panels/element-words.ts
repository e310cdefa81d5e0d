import { isDrawing, isText } from '../../geometry/design/kinds.ts';
import type { DesignElement } from '../../geometry/design/schema.ts';
import { t } from '../words/t.ts';

/** What a person calls an element by its place: `Ring text, top`. */
export function kindWords(element: DesignElement): string {
  if (element.kind === 'lineText') return t('say.kinds.line');
  if (element.kind === 'border') return t(`say.borders.${element.style}`);
  if (isDrawing(element)) return element.kind === 'motif' ? t('say.kinds.motif') : t('say.kinds.artwork');
  const clock = ((element.middleDeg % 360) + 360) % 360;
  if (clock < 45 || clock > 315) return t('say.kinds.ringTop');
  return clock > 135 && clock < 225 ? t('say.kinds.ringBottom') : t('say.kinds.ring');
}

/** The same, with its text when it has one. */
export function elementWords(element: DesignElement): string {
  const kind = kindWords(element);
  return !isText(element) || element.text.trim() === '' ? kind : t('say.withText', { kind, text: element.text.trim() });
}
