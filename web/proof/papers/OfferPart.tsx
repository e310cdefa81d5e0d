import { FileSignature } from 'lucide-react';
import { useState } from 'react';
import { changesSince, offerHolds, offerOf, pricesMark } from '../../../geometry/approval/offer.ts';
import type { Offer } from '../../../geometry/design/schema.ts';
import type { Quote } from '../../../geometry/shop/quote.ts';
import { OfferLines } from '../../handover/price/OfferLines.tsx';
import { useAct, useDesign, usePage, useUi } from '../../page/page-context.ts';
import { setOffer } from '../../state/actions/agreed/agree.ts';
import { nextOfferNumber } from '../../state/own/offer-numbers.ts';
import { Button } from '../../ui/Button.tsx';
import layout from '../../ui/layout.module.css';
import text from '../../ui/text.module.css';
import { wordingText } from '../../words/say/finding-words.ts';
import { moneyWords } from '../../words/say/money-words.ts';
import { t } from '../../words/t.ts';
import { dayNow } from '../state/now.ts';
import { useFingerprint } from '../state/use-designs.ts';

/** The offer under its number, and the button that makes the first or the next; today: the price by today's list. */
export function OfferPart({ today, waits }: { readonly today: Quote | undefined; readonly waits: boolean }) {
  const design = useDesign();
  const fingerprint = useFingerprint();
  const { shop } = usePage();
  const act = useAct();
  const [making, setMaking] = useState(false);
  const { offer } = design;

  async function make(): Promise<void> {
    setMaking(true);
    const made = dayNow();
    const number = await nextOfferNumber(made, {
      storage: () => localStorage,
      locks: (navigator as Partial<Navigator>).locks,
      random: (count) => crypto.getRandomValues(new Uint8Array(count)),
    }).finally(() => setMaking(false));
    const shopPrices = shop && pricesMark(shop);
    // of the design as it was when the button was pressed, or not at all
    act((now) =>
      setOffer(now, now === design ? offerOf(now, { fingerprint, made, number, quote: today, shopPrices }) : now.offer),
    );
  }

  return (
    <>
      {offer ? <Made offer={offer} today={today} /> : <p>{t('proof.offer.none')}</p>}
      <div className={layout.buttons}>
        <Button kind="plain" disabled={waits || making} onClick={() => void make()}>
          <FileSignature size={16} aria-hidden /> {t(offer ? 'proof.offer.again' : 'proof.offer.make')}
        </Button>
      </div>
    </>
  );
}

function Made({ offer, today }: { readonly offer: Offer; readonly today: Quote | undefined }) {
  const design = useDesign();
  const fingerprint = useFingerprint();
  const unit = useUi((s) => s.unit);
  const { validUntil, price } = offer;
  const changes = changesSince(offer, design);
  return (
    <div data-testid="offer">
      <p>{price ? moneyWords(price.totalMinor, price.currency) : t('proof.price.onRequest')}</p>
      <OfferLines offer={offer} today={today} />
      {validUntil !== undefined && validUntil < dayNow() && <p className={text.bad}>{t('proof.offer.over')}</p>}
      {!offerHolds(offer, design, fingerprint) && (
        <p className={text.bad}>
          {t('proof.offer.changed')}{' '}
          {changes.length > 0
            ? changes.map((words) => wordingText(words, unit)).join('; ')
            : t('proof.offer.otherDrawing')}
        </p>
      )}
    </div>
  );
}
