import { FINGER_HOLES_ID, HAND_SLOTS_ID, MASK_ID } from '../../../geometry/layout/no-element.ts';
import { elementWords } from '../../page/element-words.ts';
import type { Key } from '../../words/keys.ts';
import { t } from '../../words/t.ts';
import type { OrderItem } from '../state/cut-store.ts';

/** What a contour of a plate is called: the element it belongs to, by the design it is of. */
export function pieceWords(items: readonly OrderItem[], plate: string, pass: string): string {
  const [wish = ''] = plate.split('#');
  const contour = pass.slice(plate.length + 1);
  if (contour === 'rim') return t('cut.order.rim');
  const item = items.find(({ key }) => key === wish.replace(/\d+$/, ''));
  const element = item?.design.elements.find(({ id }) => contour.startsWith(`${id}/`));
  if (element) return elementWords(element);
  const [drawnByNone = ''] = contour.split('/');
  return t(NO_ELEMENT[drawnByNone] ?? 'cut.order.pieces.other');
}

const NO_ELEMENT: Readonly<Record<string, Key>> = {
  [FINGER_HOLES_ID]: 'cut.order.pieces.fingers',
  [HAND_SLOTS_ID]: 'cut.order.pieces.hands',
  [MASK_ID]: 'cut.order.pieces.mask',
};
