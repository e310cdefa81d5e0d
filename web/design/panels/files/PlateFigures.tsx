import { showFingerprint } from '../../../../geometry/design/show-fingerprint.ts';
import type { PlateSpec } from '../../../../geometry/design/schema.ts';
import type { PlateResult } from '../../../../geometry/plate/plate.ts';
import { useUi } from '../../../page/page-context.ts';
import { formatNumber, lengthWords } from '../../../words/say/format-number.ts';
import { VerdictMark } from '../../../ui/VerdictMark.tsx';
import { t } from '../../../words/t.ts';
import css from './PlateFigures.module.css';

interface PlateFiguresProps {
  readonly spec: PlateSpec;
  readonly plate: PlateResult | undefined;
}

const LB_PER_KG = 1 / 0.45359237;

/** What was measured on one finished plate. */
export function PlateFigures({ spec, plate }: PlateFiguresProps) {
  const unit = useUi((s) => s.unit);
  if (plate === undefined) return <p>{t('take.notReady')}</p>;
  const { measures } = plate;
  const length = (mm: number | undefined): string =>
    mm === undefined ? t('figures.none') : lengthWords(mm, unit, unit === 'mm' ? 2 : 3);
  const rows: [string, string][] = [
    [t('figures.diameter'), lengthWords(plate.diameterMm, unit)],
    [t('figures.openings'), String(measures.openings)],
    [t('figures.islands'), String(measures.islands)],
    [t('figures.bridges'), String(measures.bridges)],
    [t('figures.leastBridge'), length(measures.leastBridgeMm)],
    [t('figures.leastWeb'), length(measures.leastWebMm)],
    [t('figures.leastOpening'), length(measures.leastOpeningMm)],
    [
      t('figures.weight'),
      unit === 'mm' ? `${formatNumber(measures.massKg, 2)} kg` : `${formatNumber(measures.massKg * LB_PER_KG, 2)} lb`,
    ],
  ];
  return (
    <div className={css.plate}>
      <p className={css.name}>
        <VerdictMark verdict={plate.verdict} /> {t('take.plate', { name: spec.name, count: spec.quantity })}
      </p>
      <dl className={css.rows}>
        {rows.map(([name, value]) => (
          <div key={name} className={css.row}>
            <dt>{name}</dt>
            <dd>{value}</dd>
          </div>
        ))}
        <div className={css.row}>
          <dt>{t('figures.fingerprint')}</dt>
          <dd className={css.print}>{showFingerprint(plate.fingerprint)}</dd>
        </div>
      </dl>
    </div>
  );
}
