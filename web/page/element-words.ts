import { isText } from '../../geometry/design/kinds.ts';
import type { DesignElement } from '../../geometry/design/schema.ts';
import { MOTIF_LABELS } from '../../geometry/motifs/labels.ts';
import { motifName } from './motif-words.ts';
import { t } from '../words/t.ts';

/** What a person calls an element by its place: `Ring text, top`. */
export function kindWords(element: DesignElement): string {
  if (element.kind === 'lineText') return t('say.kinds.line');
  if (element.kind === 'border') return t(`say.borders.${element.style}`);
  if (element.kind === 'motif') {
    const label = MOTIF_LABELS[element.motif];
    return label === undefined ? t('say.kinds.motif') : motifName({ label });
  }
  if (element.kind === 'artwork') return t('say.kinds.artwork');
  const clock = ((element.middleDeg % 360) + 360) % 360;
  if (clock < 45 || clock > 315) return t('say.kinds.ringTop');
  return clock > 135 && clock < 225 ? t('say.kinds.ringBottom') : t('say.kinds.ring');
}

/** The same, with its text when it has one. */
export function elementWords(element: DesignElement): string {
  const kind = kindWords(element);
  if (element.kind === 'artwork') return t('say.withText', { kind, text: element.name });
  return !isText(element) || element.text.trim() === '' ? kind : t('say.withText', { kind, text: element.text.trim() });
}
