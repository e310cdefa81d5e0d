import { fingerprintOf } from '../../../geometry/design/fingerprint.ts';
import type { Design } from '../../../geometry/design/schema.ts';
import { writeOrderText } from '../../../geometry/order-file/order-text.ts';
import { ownRules } from '../../../geometry/stock/own-rules.ts';
import type { StockBook } from '../../../geometry/stock/stock-book.ts';
import type { Unit } from '../../words/preferences.ts';
import { wordingText } from '../../words/say/finding-words.ts';

interface LetterAsked {
  readonly design: Design;
  readonly plates: readonly { readonly plateId: string; readonly diameterMm: number }[];
  readonly book: StockBook;
  readonly unit: Unit;
  /** As it is to be read; absent: not said. */
  readonly price?: string | undefined;
}

/** An order as a mail in the language spoken: its first line is the subject. */
export function orderLetter(asked: LetterAsked): { readonly subject: string; readonly body: string } {
  const { design, plates, book, unit, price } = asked;
  const fingerprint = fingerprintOf(design, ownRules(design, book));
  const text = writeOrderText({ design, plates, fingerprint, book, price }, (words) => wordingText(words, unit));
  return { subject: text.slice(0, text.indexOf('\n')), body: text };
}
