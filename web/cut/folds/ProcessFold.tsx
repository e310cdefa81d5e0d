import { useState } from 'react';
import type { ProcessRow } from '../../../geometry/cutplan/cost/compare.ts';
import { processIn } from '../../../geometry/stock/stock-book.ts';
import { capitalised } from '../../../geometry/sentences/make-say.ts';
import { usePage, useUi } from '../../page/page-context.ts';
import { SelectField } from '../../ui/fields/SelectField.tsx';
import { useAnswer } from '../../ui/use-answer.ts';
import { refusalWords } from '../../words/say/finding-words.ts';
import { lengthWords } from '../../words/say/format-number.ts';
import { moneyWords } from '../../words/say/money-words.ts';
import { processName, reasonWords } from '../../words/say/record-words.ts';
import { t } from '../../words/t.ts';
import { clock } from '../state/clock.ts';
import { useCut, useCutParts } from '../state/cut-context.ts';
import text from '../../ui/text.module.css';
import css from './folds.module.css';
import { stockOf } from '../state/plates-wanted.ts';

/** Every process of the shop for one plate: can it, how fine, how long, at what cost. */
export function ProcessFold() {
  const { work } = useCutParts();
  const { book } = usePage();
  const plates = useCut((s) => s.plates);
  const stock = useCut(stockOf);
  const unit = useUi((s) => s.unit);
  const [chosen, setChosen] = useState<string | undefined>();
  const plate = plates.find(({ wish }) => wish === chosen) ?? plates[0];
  const about = plate && `${plate.wish} ${plate.job.fingerprint}`;
  const comparison = useAnswer(about, () => work.compare(plate?.wish ?? ''))?.answer;
  if (!plate) return <p className={text.note}>{t('cut.work.taking')}</p>;
  return (
    <>
      <SelectField
        label={t('cut.process.plate')}
        value={plate.wish}
        options={plates.map((p) => ({ value: p.wish, label: `${p.wish} · ${p.job.title}, ${p.job.plateName}` }))}
        onChange={setChosen}
      />
      {!comparison ? (
        <p className={text.note}>{t('cut.process.working')}</p>
      ) : (
        <>
          {comparison.plate.openingMm !== undefined && (
            <p className={text.note}>
              {t('cut.process.plateHas', { opening: lengthWords(comparison.plate.openingMm, unit, 2) })}
            </p>
          )}
          <table className={css.table}>
            <thead>
              <tr>
                <th scope="col">{t('cut.process.title')}</th>
                <th scope="col" className={css.number}>
                  {t('cut.process.time')}
                </th>
                <th scope="col" className={css.number}>
                  {t('cut.process.cost')}
                </th>
              </tr>
            </thead>
            <tbody>
              {comparison.rows.map((row) => (
                <Row key={row.process} row={row} isOwn={row.process === stock?.process} />
              ))}
            </tbody>
          </table>
          <p className={text.note}>{t('cut.process.guess')}</p>
          {!book.work && <p className={text.note}>{t('cut.price.noCosts')}</p>}
        </>
      )}
    </>
  );
}

function Row({ row, isOwn }: { readonly row: ProcessRow; readonly isOwn: boolean }) {
  const { book } = usePage();
  const unit = useUi((s) => s.unit);
  const process = processIn(book, row.process);
  const can = row.isAllowed && row.fit.grade !== 'never';
  return (
    <tr>
      <td>
        {isOwn ? <strong>{process && processName(process)}</strong> : process && processName(process)}
        <span className={text.sub}>
          {isOwn && `${t('cut.process.own')} `}
          {t('cut.process.least', {
            opening: lengthWords(row.least.openingMm, unit, 2),
            bridge: lengthWords(row.least.bridgeMm, unit, 2),
          })}
        </span>
        {!can && (
          <span className={`${text.sub} ${text.bad}`}>
            {row.fit.grade === 'never' ? capitalised(reasonWords(row.fit)) : t('cut.process.cannot')}
          </span>
        )}
        {can && row.fit.grade === 'poor' && (
          <span className={`${text.sub} ${text.look}`}>{capitalised(reasonWords(row.fit))}</span>
        )}
        {can && row.lostLetters > 0 && (
          <span className={`${text.sub} ${text.look}`}>{t('cut.process.lost', { count: row.lostLetters })}</span>
        )}
        {can && 'problem' in row.time && <span className={text.sub}>{refusalWords(row.time)}</span>}
      </td>
      <td className={css.number}>{can && 'seconds' in row.time ? clock(row.time.seconds) : '–'}</td>
      <td className={css.number}>{can && row.price ? moneyWords(row.price.totalMinor, row.price.currency) : '–'}</td>
    </tr>
  );
}
