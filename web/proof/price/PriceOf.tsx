import { quoteOfOffer } from '../../../geometry/approval/offer.ts';
import { offerNow } from '../../../geometry/approval/standing.ts';
import { fingerprintOf } from '../../../geometry/design/fingerprint.ts';
import { ownRules } from '../../../geometry/stock/own-rules.ts';
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
  const today = shop && quoteFor(shop, book, design, planned.plates);
  const offer = offerNow(design, fingerprintOf(design, ownRules(design, book)));
  const quote = (offer && quoteOfOffer(offer)) ?? today;
  if (!quote) return <p className={text.title}>{t('proof.price.onRequest')}</p>;
  if ('problem' in quote) {
    return (
      <div className={css.price}>
        <p className={text.title}>{t('proof.price.onRequest')}</p>
        <p className={text.note}>{refusalWords(quote)}</p>
      </div>
    );
  }
  const agreed = offer?.price && { offer, today: today && 'lines' in today ? today : undefined };
  return <Price quote={quote} name={name} agreed={agreed} />;
}
