import type { PlateSpec } from '../../geometry/design/schema.ts';
import type { PlateResult } from '../../geometry/plate.ts';
import { useUi } from '../app/page-context.ts';
import { formatNumber, lengthWords } from '../ui/format-number.ts';
import { VerdictMark } from '../ui/VerdictMark.tsx';
import { words } from '../words/en.ts';
import css from './PlateFigures.module.css';

interface PlateFiguresProps {
  readonly spec: PlateSpec;
  readonly plate: PlateResult | undefined;
}

const LB_PER_KG = 1 / 0.45359237;

/** What was measured on one finished plate. */
export function PlateFigures({ spec, plate }: PlateFiguresProps) {
  const unit = useUi((s) => s.unit);
  if (plate === undefined) return <p>{words.take.notReady}</p>;
  const { measures } = plate;
  const length = (mm: number | undefined): string =>
    mm === undefined ? words.figures.none : lengthWords(mm, unit, unit === 'mm' ? 2 : 3);
  const rows: [string, string][] = [
    [words.figures.diameter, lengthWords(plate.diameterMm, unit)],
    [words.figures.openings, String(measures.openings)],
    [words.figures.islands, String(measures.islands)],
    [words.figures.bridges, String(measures.bridges)],
    [words.figures.leastBridge, length(measures.leastBridgeMm)],
    [words.figures.leastWeb, length(measures.leastWebMm)],
    [words.figures.leastOpening, length(measures.leastOpeningMm)],
    [
      words.figures.weight,
      unit === 'mm' ? `${formatNumber(measures.massKg, 2)} kg` : `${formatNumber(measures.massKg * LB_PER_KG, 2)} lb`,
    ],
  ];
  return (
    <div className={css.plate}>
      <p className={css.name}>
        <VerdictMark verdict={plate.verdict} /> {words.take.plate(spec.name, spec.quantity)}
      </p>
      <dl className={css.rows}>
        {rows.map(([name, value]) => (
          <div key={name} className={css.row}>
            <dt>{name}</dt>
            <dd>{value}</dd>
          </div>
        ))}
        <div className={css.row}>
          <dt>{words.figures.fingerprint}</dt>
          <dd className={css.print}>{plate.fingerprint}</dd>
        </div>
      </dl>
    </div>
  );
}
