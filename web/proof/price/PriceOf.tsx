import type { Design } from '../../../geometry/design/schema.ts';
import type { Quote } from '../../../geometry/shop/quote.ts';
import { usePage } from '../../page/page-context.ts';
import { refusalWords } from '../../words/say/finding-words.ts';
import { formatNumber } from '../../words/say/format-number.ts';
import { Fold } from '../../ui/Fold.tsx';
import { moneyWords } from '../../words/say/money-words.ts';
import { t } from '../../words/t.ts';
import text from '../../ui/text.module.css';
import css from './PriceOf.module.css';
import { PriceLines } from './PriceLines.tsx';
import { quoteFor } from './quote-for.ts';
import type { PlannedDesign } from '../state/planned-design.ts';

interface PriceOfProps {
  readonly design: Design;
  readonly planned: PlannedDesign;
  /** Of what it is the price, for who does not see where it stands. */
  readonly name: string;
}

/** What the customer pays, when it is ready, and on demand how it adds up. */
export function PriceOf({ design, planned, name }: PriceOfProps) {
  const { shop, book } = usePage();
  if (planned.state === 'failed') return null;
  if (planned.state === 'working') return <p className={text.soft}>{t('proof.price.working')}</p>;
  if (!shop) return <p className={text.title}>{t('proof.price.onRequest')}</p>;
  const quote = quoteFor(shop, book, design, planned.plates);
  if ('problem' in quote) {
    return (
      <div className={css.price}>
        <p className={text.title}>{t('proof.price.onRequest')}</p>
        <p className={text.note}>{refusalWords(quote)}</p>
      </div>
    );
  }
  return (
    <div className={css.price}>
      <p className={text.title} data-testid="price">
        {moneyWords(quote.totalMinor, quote.currency)}
      </p>
      <p className={text.note}>{taxWords(quote)}</p>
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
