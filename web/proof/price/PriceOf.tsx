import type { Design } from '../../../geometry/design/schema.ts';
import { Price } from '../../handover/price/Price.tsx';
import css from '../../handover/price/Price.module.css';
import { quoteFor } from '../../handover/price/quote-for.ts';
import { usePage } from '../../page/page-context.ts';
import { refusalWords } from '../../words/say/finding-words.ts';
import { t } from '../../words/t.ts';
import text from '../../ui/text.module.css';
import type { PlannedDesign } from '../state/planned-design.ts';

interface PriceOfProps {
  readonly design: Design;
  readonly planned: PlannedDesign;
  /** Of what it is the price, for who does not see where it stands. */
  readonly name: string;
}

/** The price of a design that is planned, or why it is on request. */
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
  return <Price quote={quote} name={name} />;
}
