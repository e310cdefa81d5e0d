import type { Card } from '../../state/card.ts';
import { t } from '../../words/t.ts';

/** What a design is called in the list, even when it has no name. */
export function cardTitle(card: Card): string {
  return card.title.trim() === '' ? t('designs.untitled') : card.title;
}
