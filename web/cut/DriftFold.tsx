import { useState } from 'react';
import { judgeDrift } from '../../geometry/cutplan/judge-drift.ts';
import type { WitnessMark } from '../../geometry/cutplan/witness.ts';
import type { Point } from '../../geometry/shapes.ts';
import { processIn } from '../../geometry/stock/stock-book.ts';
import { limitDeviationMm } from '../../geometry/stock/tolerances.ts';
import { usePage, useUi } from '../app/page-context.ts';
import { Field } from '../ui/Field.tsx';
import { findingWords, wordingText } from '../ui/finding-words.ts';
import { formatNumber, lengthWords } from '../ui/format-number.ts';
import { LengthField } from '../ui/LengthField.tsx';
import { NumberField } from '../ui/NumberField.tsx';
import { t } from '../words/t.ts';
import { Check } from './Check.tsx';
import { useCut, useCutParts, usePlannedSheet } from './cut-context.ts';
import css from './folds.module.css';
import { stockOf } from './order.ts';

const MOST_STAGES = 4;

/** Marks in the skeleton that show whether the sheet moved, and what was measured on them. */
export function DriftFold() {
  const { work } = useCutParts();
  const wishes = useCut((s) => s.wishes);
  const planned = usePlannedSheet();
  const unit = useUi((s) => s.unit);
  return (
    <>
      <p className={css.note}>{t('cut.drift.what')}</p>
      <Check label={t('cut.drift.marks')} checked={wishes.witness} onChange={(witness) => work.wish({ witness })} />
      {wishes.witness && (
        <NumberField
          label={t('cut.drift.stages')}
          hint={t('cut.drift.stagesHint')}
          value={wishes.stages}
          whole
          least={1}
          most={MOST_STAGES}
          onChange={(stages) => work.wish({ stages })}
        />
      )}
      {planned?.findings.map((finding) => (
        <p key={finding.sentence} className={css.look}>
          {findingWords(finding, unit)}
        </p>
      ))}
      {wishes.witness && !planned && <p className={css.note}>{t('cut.order.notYet')}</p>}
      {planned && planned.marks.length > 0 && <Measured marks={planned.marks} />}
    </>
  );
}

function Measured({ marks }: { readonly marks: readonly WitnessMark[] }) {
  const { store } = useCutParts();
  const { book } = usePage();
  const unit = useUi((s) => s.unit);
  const stock = useCut(stockOf);
  const sheet = useCut((s) => s.sheets[s.sheetAt]);
  const selected = useCut((s) => s.selected);
  const [offsets, setOffsets] = useState<Readonly<Record<string, Point>>>({});
  const [noiseMm, setNoise] = useState(0.02);
  const plates = [...new Set(marks.map(({ plate }) => plate))];
  const id = selected !== undefined && plates.includes(selected) ? selected : plates[0];
  const plate = sheet?.plates.find((p) => p.id === id);
  const process = processIn(book, stock?.process ?? '');
  if (!plate || !stock || !process) return null;
  const limitMm = limitDeviationMm(process.tolerance, plate.diameterMm, stock.thicknessMm);
  const own = marks.filter((mark) => mark.plate === plate.id);
  const readings = own.flatMap((mark) => (offsets[mark.id] ? [{ mark, offset: offsets[mark.id]! }] : []));
  const report = limitMm === undefined ? undefined : judgeDrift(readings, { plate, limitMm, noiseMm });
  const last = report?.stages.at(-1);
  const set = (mark: WitnessMark, part: Partial<Point>): void =>
    setOffsets({ ...offsets, [mark.id]: { ...(offsets[mark.id] ?? { x: 0, y: 0 }), ...part } });
  return (
    <section className={css.list} aria-label={t('cut.drift.measured')}>
      <Field label={t('cut.drift.plate')}>
        {({ id: field }) => (
          <select
            id={field}
            className={css.select}
            value={plate.id}
            onChange={(e) => store.getState().set({ selected: e.target.value })}
          >
            {plates.map((one) => (
              <option key={one}>{one}</option>
            ))}
          </select>
        )}
      </Field>
      <p className={css.note}>{t('cut.drift.how')}</p>
      {own.map((mark) => (
        <fieldset key={mark.id}>
          <legend className={`${css.note} ${css.group}`}>
            {t('cut.drift.mark', {
              mark: mark.id.slice(plate.id.length + 1),
              x: lengthWords(mark.at.x, unit, 0),
              y: lengthWords(mark.at.y, unit, 0),
              stage: mark.stage,
            })}
          </legend>
          <div className={css.pair}>
            {(['x', 'y'] as const).map((axis) => (
              <LengthField
                key={axis}
                label={t(`cut.drift.${axis}`)}
                mm={offsets[mark.id]?.[axis]}
                unit={unit}
                decimals={unit === 'mm' ? 3 : 4}
                leastMm={-5}
                mostMm={5}
                onChange={(mm) => set(mark, { [axis]: mm })}
              />
            ))}
          </div>
        </fieldset>
      ))}
      <LengthField
        label={t('cut.drift.noise')}
        mm={noiseMm}
        unit={unit}
        decimals={unit === 'mm' ? 3 : 4}
        leastMm={0.001}
        mostMm={1}
        onChange={setNoise}
      />
      {limitMm === undefined && <p className={css.look}>{t('cut.drift.noLimit')}</p>}
      {report && last && (
        <div role="status" className={css.list} data-testid="drift">
          {report.sentences.map((sentence, i) => (
            <p key={sentence.english} className={i === 0 ? css[VERDICT[report.verdict]] : css.note}>
              {wordingText(sentence, unit)}
            </p>
          ))}
          <p className={css.note}>
            {t('cut.drift.shift', {
              x: lengthWords(last.shift.x, unit, 3),
              y: lengthWords(last.shift.y, unit, 3),
            })}{' '}
            {last.turnDeg !== undefined && t('cut.drift.turn', { turn: formatNumber(last.turnDeg, 4) })}{' '}
            {t('cut.drift.limit', {
              limit: lengthWords(report.limitMm, unit, 3),
              standard: `${process.tolerance.standard}-${process.tolerance.class}`,
            })}
          </p>
        </div>
      )}
    </section>
  );
}

const VERDICT = { pass: 'good', fail: 'bad', unproven: 'look' } as const;
