import { Price } from '../../../handover/price/Price.tsx';
import { useQuote } from '../../../handover/price/use-quote.ts';
import { Cautions } from '../../../page/Cautions.tsx';
import { useCurrentPlate, useDesign, usePlates } from '../../../page/page-context.ts';
import { Fold } from '../../../ui/Fold.tsx';
import css from '../../../ui/fields.module.css';
import layout from '../../../ui/layout.module.css';
import text from '../../../ui/text.module.css';
import { moneyWords } from '../../../words/say/money-words.ts';
import { t } from '../../../words/t.ts';
import { Downloads } from './Downloads.tsx';
import { LinkField } from './LinkField.tsx';
import { OrderFields } from './OrderFields.tsx';
import { PlateFigures } from './PlateFigures.tsx';
import { Refusal } from './Refusal.tsx';
import { SendToShop } from './SendToShop.tsx';

/** Fourth question, hardly one: what it costs, off to the shop with it, and a fold below the files. */
export function FilesPanel() {
  const design = useDesign();
  const { plate } = useCurrentPlate();
  const plates = usePlates((s) => s.plates);
  const settled = usePlates((s) => !s.busy && s.trouble === undefined);
  const { quoted, shop } = useQuote();
  const stopped = design.plates.filter((p) => plates[p.id]?.verdict === 'stop');
  const quote = quoted.state === 'ready' ? quoted.quote : undefined;
  return (
    <>
      <div className={layout.stack}>
        {stopped.length > 0 ? (
          <Refusal plates={stopped.flatMap((p) => plates[p.id] ?? [])} />
        ) : quote ? (
          <Price quote={quote} name={design.title} />
        ) : (
          <p className={text.title}>
            {t(quoted.state === 'working' ? 'proof.price.working' : 'proof.price.onRequest')}
          </p>
        )}
        <SendToShop
          shop={shop}
          plate={plate}
          price={quote && moneyWords(quote.totalMinor, quote.currency)}
          disabled={!settled || stopped.length > 0}
        />
        <LinkField />
      </div>
      <section className={css.section} aria-labelledby="order-title">
        <h3 id="order-title" className={css.title}>
          {t('take.order')}
        </h3>
        <OrderFields />
      </section>
      <Fold title={t('take.files')}>
        <Downloads />
        <section className={css.section} aria-labelledby="figures-title">
          <h3 id="figures-title" className={css.title}>
            {t('take.figures')}
          </h3>
          {design.plates.map((spec) => (
            <PlateFigures key={spec.id} spec={spec} plate={plates[spec.id]} />
          ))}
        </section>
        <section className={css.section} aria-labelledby="cautions-title">
          <h3 id="cautions-title" className={css.title}>
            {t('take.cautions')}
          </h3>
          <Cautions />
        </section>
      </Fold>
    </>
  );
}
