import { useState } from 'react';
import { judgeDrift } from '../../../geometry/cutplan/drift/judge-drift.ts';
import {
  offsetNoiseMm,
  offsetOfWidths,
  type RingWidths,
  widthsAgree,
} from '../../../geometry/cutplan/drift/read-offset.ts';
import type { WitnessMark } from '../../../geometry/cutplan/drift/witness.ts';
import type { Point } from '../../../geometry/shapes.ts';
import { processIn } from '../../../geometry/stock/stock-book.ts';
import { limitDeviationMm } from '../../../geometry/stock/tolerances.ts';
import { usePage, useUi } from '../../page/page-context.ts';
import { Choice } from '../../ui/fields/Choice.tsx';
import { SelectField } from '../../ui/fields/SelectField.tsx';
import { wordingText } from '../../words/say/finding-words.ts';
import { formatNumber, lengthWords } from '../../words/say/format-number.ts';
import { LengthField } from '../../ui/fields/LengthField.tsx';
import { t } from '../../words/t.ts';
import { useCut, useCutParts } from '../state/cut-context.ts';
import fields from '../../ui/fields.module.css';
import text from '../../ui/text.module.css';
import css from './folds.module.css';
import { stockOf } from '../state/plates-wanted.ts';
import { CALLIPER_NOISE_MM } from '../../../geometry/units.ts';

type By = 'ring' | 'offset';

/** What was typed for a mark; nothing counts before all of it is there. */
interface Typed {
  readonly widths?: Partial<RingWidths>;
  readonly offset?: Partial<Point>;
}

const SIDES = ['left', 'right', 'above', 'below'] as const;
const AXES = ['x', 'y'] as const;

/** What was measured on the marks of a plate, and what that says of it. */
export function Measured({ marks }: { readonly marks: readonly WitnessMark[] }) {
  const { store } = useCutParts();
  const { book } = usePage();
  const unit = useUi((s) => s.unit);
  const stock = useCut(stockOf);
  const sheet = useCut((s) => s.history.present[s.sheetAt]);
  const selected = useCut((s) => s.selected);
  const [by, setBy] = useState<By>('ring');
  const [typed, setTyped] = useState<Readonly<Record<string, Typed>>>({});
  const [noiseMm, setNoise] = useState(CALLIPER_NOISE_MM);
  const plates = [...new Set(marks.map(({ plate }) => plate))];
  const id = selected !== undefined && plates.includes(selected) ? selected : plates[0];
  const plate = sheet?.plates.find((p) => p.id === id);
  const process = processIn(book, stock?.process ?? '');
  if (!plate || !stock || !process) return null;
  const limitMm = limitDeviationMm(process.tolerance, plate.diameterMm, stock.thicknessMm);
  const own = marks.filter((mark) => mark.plate === plate.id);
  const stages = Math.max(...own.map(({ stage }) => stage));
  const readings = own.flatMap((mark, i) => {
    const offset = offsetFrom(typed[mark.id], by, noiseMm);
    // a sentence about a mark names it as it is named here
    return offset ? [{ mark: { ...mark, id: String(i + 1) }, offset }] : [];
  });
  const report =
    limitMm === undefined
      ? undefined
      : judgeDrift(readings, { plate, limitMm, noiseMm: by === 'ring' ? offsetNoiseMm(noiseMm) : noiseMm });
  const last = report?.stages.at(-1);
  const decimals = unit === 'mm' ? 3 : 4;
  return (
    <section className={css.list} aria-label={t('cut.drift.measured')}>
      <SelectField
        label={t('cut.drift.plate')}
        value={plate.id}
        options={plates.map((one) => ({ value: one, label: one }))}
        onChange={(to) => store.getState().set({ selected: to })}
      />
      <Choice<By>
        legend={t('cut.drift.by')}
        showLegend
        value={by}
        options={{ ring: t('cut.drift.byRing'), offset: t('cut.drift.byOffset') }}
        onChange={setBy}
      />
      <p className={text.note}>{t(by === 'ring' ? 'cut.drift.howRing' : 'cut.drift.how')}</p>
      {by === 'ring' && own[0] && (
        <p className={text.note}>
          {t('cut.drift.nominal', {
            drawn: lengthWords(ringMm(own[0]), unit, 2),
            kerf: lengthWords(process.kerfMm.value, unit, 2),
            left: lengthWords(ringMm(own[0]) - process.kerfMm.value, unit, 2),
          })}
        </p>
      )}
      {own.map((mark, i) => {
        const { widths = {}, offset = {} } = typed[mark.id] ?? {};
        const set = (part: Typed): void => setTyped({ ...typed, [mark.id]: { ...typed[mark.id], ...part } });
        const ring = by === 'ring' && isWhole(widths) ? widths : undefined;
        return (
          <fieldset key={mark.id}>
            <legend className={`${text.note} ${css.group}`}>
              {t(stages > 1 ? 'cut.drift.markStage' : 'cut.drift.mark', {
                number: i + 1,
                x: lengthWords(mark.at.x, unit, 0),
                y: lengthWords(mark.at.y, unit, 0),
                stage: mark.stage,
              })}
            </legend>
            <div className={fields.pair}>
              {by === 'ring'
                ? SIDES.map((side) => (
                    <LengthField
                      key={side}
                      label={t(`cut.drift.${side}`)}
                      mm={widths[side]}
                      decimals={decimals}
                      leastMm={0}
                      mostMm={mark.outerMm}
                      onChange={(mm) => set({ widths: { ...widths, [side]: mm } })}
                      onEmpty={() => set({ widths: without(widths, side) })}
                    />
                  ))
                : AXES.map((axis) => (
                    <LengthField
                      key={axis}
                      label={t(`cut.drift.${axis}`)}
                      mm={offset[axis]}
                      decimals={decimals}
                      leastMm={-5}
                      mostMm={5}
                      onChange={(mm) => set({ offset: { ...offset, [axis]: mm } })}
                      onEmpty={() => set({ offset: without(offset, axis) })}
                    />
                  ))}
            </div>
            {ring && !widthsAgree(ring, noiseMm) && (
              <p role="alert" className={text.look}>
                {t('cut.drift.uneven', {
                  across: lengthWords(ring.left + ring.right, unit, decimals),
                  upright: lengthWords(ring.above + ring.below, unit, decimals),
                })}
              </p>
            )}
          </fieldset>
        );
      })}
      <LengthField
        label={t(by === 'ring' ? 'cut.drift.noiseRing' : 'cut.drift.noise')}
        mm={noiseMm}
        decimals={decimals}
        leastMm={0.001}
        mostMm={1}
        onChange={setNoise}
      />
      {limitMm === undefined && <p className={text.look}>{t('cut.drift.noLimit')}</p>}
      {report && last && (
        <div role="status" className={css.list} data-testid="drift">
          {report.sentences.map((sentence, i) => (
            <p key={sentence.english} className={i === 0 ? text[VERDICT[report.verdict]] : text.note}>
              {wordingText(sentence, unit)}
            </p>
          ))}
          <p className={text.note}>
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

/** Undefined until all is typed; widths that cannot go together say nothing either. */
function offsetFrom(typed: Typed | undefined, by: By, noiseMm: number): Point | undefined {
  if (by === 'ring') {
    const widths = typed?.widths ?? {};
    return isWhole(widths) && widthsAgree(widths, noiseMm) ? offsetOfWidths(widths) : undefined;
  }
  const { x, y } = typed?.offset ?? {};
  return x === undefined || y === undefined ? undefined : { x, y };
}

/** As drawn; the larger circle's kerf lies inside it, so that much of the metal is gone. */
function ringMm({ innerMm, outerMm }: WitnessMark): number {
  return (outerMm - innerMm) / 2;
}

function without<T extends object>(record: T, key: keyof T): T {
  const { [key]: _gone, ...rest } = record;
  return rest as T;
}

function isWhole(widths: Partial<RingWidths>): widths is RingWidths {
  return SIDES.every((side) => widths[side] !== undefined);
}
