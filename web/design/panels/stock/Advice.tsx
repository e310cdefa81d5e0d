import { Check } from 'lucide-react';
import { type Reason, recommendStock } from '../../../../geometry/stock/recommend-stock.ts';
import { materialIn } from '../../../../geometry/stock/stock-book.ts';
import { setStock } from '../../../state/actions/set-fields.ts';
import { useAct, useCurrentPlate, useDesign, usePage, useUi } from '../../../page/page-context.ts';
import type { Unit } from '../../../words/preferences.ts';
import { Button } from '../../../ui/Button.tsx';
import { Fold } from '../../../ui/Fold.tsx';
import { formatNumber, lengthWords } from '../../../words/say/format-number.ts';
import { materialName } from '../../../words/say/record-words.ts';
import { t } from '../../../words/t.ts';
import css from './StockFields.module.css';
import { SAME_GAUGE_MM } from '../../../../geometry/units.ts';

/** What we would take for this use, this size and this design, with the reasons; one press takes it. */
export function Advice() {
  const { stock } = useDesign();
  const { plate } = useCurrentPlate();
  const { book } = usePage();
  const unit = useUi((s) => s.unit);
  const act = useAct();
  if (plate === undefined) return null;
  const { leastOpeningMm, leastWebMm } = plate.measures;
  const advice = recommendStock(stock.use, plate.diameterMm, { leastOpeningMm, leastWebMm }, book);
  if (!('stock' in advice)) {
    const { detailMm, needsMm } = advice.tooFine;
    return (
      <p className={css.box}>
        {t(plate.verdict === 'stop' ? 'advice.recommend.tooFine' : 'advice.recommend.fine', {
          detail: exact(detailMm, unit),
          needs: exact(needsMm, unit),
        })}
      </p>
    );
  }
  const wanted = advice.stock;
  const material = materialIn(book, wanted.material);
  const taken =
    wanted.material === stock.material &&
    wanted.process === stock.process &&
    Math.abs(wanted.thicknessMm - stock.thicknessMm) < SAME_GAUGE_MM;
  return (
    <section className={css.box} aria-label={t('advice.recommend.title')}>
      <p className={css.lead}>
        {taken ? t('advice.recommend.taken') : t('advice.recommend.title')}
        {taken && <Check size={16} aria-hidden />}
      </p>
      <p className={css.pick}>
        {t(`advice.recommend.for.${stock.use}`)}:{' '}
        {t('advice.recommend.stock', {
          thickness: exact(wanted.thicknessMm, unit),
          material: material === undefined ? wanted.material : materialName(material),
        })}
      </p>
      <ul className={css.reasons}>
        {advice.reasons.map((reason) => (
          <li key={reason.code}>{reasonSentence(reason, unit)}</li>
        ))}
      </ul>
      {!taken && (
        <div>
          <Button kind="plain" onClick={() => act((d) => setStock(d, wanted))}>
            {t('advice.recommend.take')}
          </Button>
        </div>
      )}
      <Fold title={t('advice.recommend.why')}>
        <ul className={css.small}>
          {advice.reasons.map((reason) => (
            <li key={reason.code}>
              {t('advice.recommend.fromCode', { what: reasonSentence(reason, unit), source: `(${reason.source})` })}
            </li>
          ))}
        </ul>
      </Fold>
    </section>
  );
}

function reasonSentence(reason: Reason, unit: Unit): string {
  const key = `advice.recommend.reasons.${reason.code}` as const;
  switch (reason.code) {
    case 'stands-torch':
      return t(key, { percent: formatNumber(reason.keepsShare * 100, 0), degrees: formatNumber(reason.atC, 0) });
    case 'lighter':
      return t(key, { kg: formatNumber(reason.kg, 1), usual: formatNumber(reason.usualKg, 1) });
    case 'holds-flat':
      return t(key, { thickness: exact(reason.thicknessMm, unit), diameter: lengthWords(reason.diameterMm, unit) });
    case 'fine-detail':
      return t(key, { detail: exact(reason.detailMm, unit), needs: exact(reason.thickerNeedsMm, unit) });
    case 'finest-cut':
      return t(key, { kerf: exact(reason.kerfMm, unit) });
    case 'torch-bridges':
      return t(key, { bridge: exact(reason.bridgeMm, unit) });
    case 'lasts-in-paint':
      return t(key);
  }
}

function exact(mm: number, unit: Unit): string {
  return lengthWords(mm, unit, unit === 'mm' ? 2 : 3);
}
