import { useEffect, useState } from 'react';
import type { Comparison, ProcessRow } from '../../../geometry/cutplan/cost/compare.ts';
import { processIn } from '../../../geometry/stock/stock-book.ts';
import { capitalised } from '../../../geometry/sentences/make-say.ts';
import { usePage, useUi } from '../../page/page-context.ts';
import { Field } from '../../ui/Field.tsx';
import { refusalWords } from '../../words/say/finding-words.ts';
import { lengthWords } from '../../words/say/format-number.ts';
import { processName, reasonWords } from '../../words/say/record-words.ts';
import { t } from '../../words/t.ts';
import { clock } from '../state/clock.ts';
import { useCut, useCutParts } from '../state/cut-context.ts';
import css from './folds.module.css';
import { moneyWords } from './money.ts';
import { stockOf } from '../state/plates-wanted.ts';

/** Every process of the shop for one plate: can it, how fine, how long, at what cost. */
export function ProcessFold() {
  const { work } = useCutParts();
  const { book } = usePage();
  const plates = useCut((s) => s.plates);
  const stock = useCut(stockOf);
  const unit = useUi((s) => s.unit);
  const [chosen, setChosen] = useState<string | undefined>();
  const [found, setFound] = useState<{ readonly for: string; readonly comparison: Comparison | undefined }>();
  const plate = plates.find(({ wish }) => wish === chosen) ?? plates[0];
  const wish = plate?.wish;
  const about = plate && `${plate.wish} ${plate.job.fingerprint}`;
  useEffect(() => {
    if (wish === undefined || about === undefined) return;
    let wanted = true;
    void work.compare(wish).then((comparison) => {
      if (wanted) setFound({ for: about, comparison });
    });
    return () => {
      wanted = false;
    };
  }, [work, wish, about]);
  if (!plate) return <p className={css.note}>{t('cut.work.taking')}</p>;
  const comparison = found?.for === about ? found?.comparison : undefined;
  return (
    <>
      <Field label={t('cut.process.plate')}>
        {({ id }) => (
          <select id={id} className={css.select} value={plate.wish} onChange={(e) => setChosen(e.target.value)}>
            {plates.map((p) => (
              <option key={p.wish} value={p.wish}>
                {p.wish} · {p.job.title}, {p.job.plateName}
              </option>
            ))}
          </select>
        )}
      </Field>
      {!comparison ? (
        <p className={css.note}>{t('cut.process.working')}</p>
      ) : (
        <>
          {comparison.plate.openingMm !== undefined && (
            <p className={css.note}>
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
          <p className={css.note}>{t('cut.process.guess')}</p>
          {!book.work && <p className={css.note}>{t('cut.price.noCosts')}</p>}
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
        <span className={css.sub}>
          {isOwn && `${t('cut.process.own')} `}
          {t('cut.process.least', {
            opening: lengthWords(row.least.openingMm, unit, 2),
            bridge: lengthWords(row.least.bridgeMm, unit, 2),
          })}
        </span>
        {!can && (
          <span className={`${css.sub} ${css.bad}`}>
            {row.fit.grade === 'never' ? capitalised(reasonWords(row.fit)) : t('cut.process.cannot')}
          </span>
        )}
        {can && row.fit.grade === 'poor' && (
          <span className={`${css.sub} ${css.look}`}>{capitalised(reasonWords(row.fit))}</span>
        )}
        {can && row.lostLetters > 0 && (
          <span className={`${css.sub} ${css.look}`}>{t('cut.process.lost', { count: row.lostLetters })}</span>
        )}
        {can && 'problem' in row.time && <span className={css.sub}>{refusalWords(row.time)}</span>}
      </td>
      <td className={css.number}>{can && 'seconds' in row.time ? clock(row.time.seconds) : '–'}</td>
      <td className={css.number}>{can && row.price ? moneyWords(row.price.totalMinor, row.price.currency) : '–'}</td>
    </tr>
  );
}
