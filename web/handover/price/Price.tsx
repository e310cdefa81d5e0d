import type { Quote } from '../../../geometry/shop/quote.ts';
import { Fold } from '../../ui/Fold.tsx';
import text from '../../ui/text.module.css';
import { formatNumber } from '../../words/say/format-number.ts';
import { moneyWords } from '../../words/say/money-words.ts';
import { t } from '../../words/t.ts';
import css from './Price.module.css';
import { OfferLines, type OfferLinesProps } from './OfferLines.tsx';
import { PriceLines } from './PriceLines.tsx';

interface PriceProps {
  readonly quote: Quote;
  /** Of what it is the price, for who does not see where it stands. */
  readonly name: string;
  /** What it was offered or approved by, and the price by today's list. */
  readonly agreed?: OfferLinesProps | undefined;
}

/** What the customer pays, when it is ready, and on demand how it adds up. */
export function Price({ quote, name, agreed }: PriceProps) {
  return (
    <div className={css.price}>
      <p className={text.title} data-testid="price">
        {moneyWords(quote.totalMinor, quote.currency)}
      </p>
      <p className={text.note}>{taxWords(quote)}</p>
      {agreed && <OfferLines {...agreed} />}
      {quote.lead && <p>{leadWords(quote.lead)}</p>}
      <Fold title={<span aria-label={t('proof.price.linesOf', { name })}>{t('proof.price.lines')}</span>}>
        <PriceLines quote={quote} />
      </Fold>
    </div>
  );
}

function taxWords({ tax, currency }: Quote): string {
  if (!tax) return t('proof.price.noTax');
  const values = {
    name: tax.name,
    percent: formatNumber(tax.percent, 2),
    amount: moneyWords(tax.minor, currency),
  };
  return t('proof.price.withTax', values);
}

function leadWords({ least, most }: NonNullable<Quote['lead']>): string {
  return least === most ? t('proof.price.leadOne', { count: most }) : t('proof.price.lead', { least, most });
}
