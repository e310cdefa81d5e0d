import type { Offer } from '../../../geometry/design/schema.ts';
import type { Quote } from '../../../geometry/shop/quote.ts';
import text from '../../ui/text.module.css';
import { momentDay } from '../../words/say/moment-words.ts';
import { moneyWords } from '../../words/say/money-words.ts';
import { t } from '../../words/t.ts';

export interface OfferLinesProps {
  readonly offer: Offer;
  /** By the list as it is today. */
  readonly today: Quote | undefined;
}

/** Number and day of an offer, until when it holds, and what the list says by now where that is something else. */
export function OfferLines({ offer, today }: OfferLinesProps) {
  const { number, made, validUntil, price } = offer;
  const day = momentDay(made);
  const other = today && price && (today.totalMinor !== price.totalMinor || today.currency !== price.currency);
  return (
    <p className={text.note}>
      {number === '' ? t('proof.offer.bare', { day }) : t('proof.offer.made', { number, day })}
      {validUntil !== undefined && ` ${t('proof.offer.until', { day: momentDay(validUntil) })}`}
      {other && ` ${t('proof.offer.today', { total: moneyWords(today.totalMinor, today.currency) })}`}
    </p>
  );
}
