import { elementWords } from '../panels/element-words.ts';
import { t } from '../words/t.ts';
import type { OrderItem } from './cut-store.ts';

/** What a contour of a plate is called: the element it belongs to, by the design it is of. */
export function pieceWords(items: readonly OrderItem[], plate: string, pass: string): string {
  const [wish = ''] = plate.split('#');
  const contour = pass.slice(plate.length + 1);
  if (contour === 'rim') return t('cut.order.rim');
  const item = items.find(({ key }) => key === wish.replace(/\d+$/, ''));
  const element = item?.design.elements.find(({ id }) => contour.startsWith(`${id}/`));
  return element ? elementWords(element) : contour;
}
