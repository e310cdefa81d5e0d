import { useEffect, useState } from 'react';
import type { PriceLine } from '../../../geometry/cutplan/cost/price.ts';
import { usePage, useUi } from '../../page/page-context.ts';
import { formatNumber } from '../../words/say/format-number.ts';
import { t } from '../../words/t.ts';
import type { OrderCost } from '../../worker/cut-api.ts';
import { clock } from '../state/clock.ts';
import { useCut, useCutParts } from '../state/cut-context.ts';
import type { Planned } from '../state/cut-store.ts';
import css from './folds.module.css';
import { moneyWords, rateWords } from './money.ts';
import { kindWords, longWords } from '../state/sheet-words.ts';

/** What the order takes, line by line: times of the machine, then costs by the rates of the shop. */
export function PriceFold() {
  const { work } = useCutParts();
  const { book } = usePage();
  const planned = useCut((s) => s.planned);
  const remnants = useCut((s) => s.remnants);
  const unit = useUi((s) => s.unit);
  const [found, setFound] = useState<{ readonly for: Planned['job']; readonly cost: OrderCost | undefined }>();
  const job = planned?.job;
  useEffect(() => {
    if (!job) return;
    let wanted = true;
    void work.cost().then((cost) => {
      if (wanted) setFound({ for: job, cost });
    });
    return () => {
      wanted = false;
    };
  }, [work, job]);
  if (!job) return <p className={css.note}>{t('cut.order.notYet')}</p>;
  if (found?.for !== job) return <p className={css.note}>{t('cut.price.working')}</p>;
  const { cost } = found;
  if (!cost) return <p className={css.bad}>{t('trouble.worker')}</p>;
  const { price } = cost;
  const kinds = [...book.sheets, ...remnants];
  return (
    <>
      <table className={css.table}>
        <caption className="sr-only">{t('cut.price.time')}</caption>
        <tbody>
          {(['cutS', 'pierceS', 'rapidS', 'raiseS'] as const).map((part) => (
            <tr key={part}>
              <td>
                {t(`cut.price.${part}`)}
                {part === 'cutS' && <span className={css.sub}>{longWords(cost.cuttingMm, unit)}</span>}
                {part === 'rapidS' && <span className={css.sub}>{longWords(cost.rapidMm, unit)}</span>}
                {part === 'pierceS' && (
                  <span className={css.sub}>{t('cut.price.pierces', { count: cost.pierces })}</span>
                )}
              </td>
              <td className={css.number}>{clock(cost.times[part])}</td>
            </tr>
          ))}
        </tbody>
        <tfoot>
          <tr>
            <td>{t('cut.price.machineTime')}</td>
            <td className={css.number}>{clock(cost.totalS)}</td>
          </tr>
        </tfoot>
      </table>
      {price && (
        <table className={css.table}>
          <caption className="sr-only">{t('cut.price.cost')}</caption>
          <tbody>
            {gathered(price.lines).map((line) => (
              <tr key={`${line.code} ${line.kind ?? ''} ${line.each}`}>
                <td>
                  {t(`cut.price.line.${line.code}`)}
                  <span className={css.sub}>
                    {howMuch(line, price.currency, kindWords(kinds, line.kind ?? '', unit))}
                  </span>
                </td>
                <td className={css.number}>{moneyWords(line.minor, price.currency)}</td>
              </tr>
            ))}
          </tbody>
          <tfoot>
            <tr>
              <td>{t('cut.price.total')}</td>
              <td className={css.number}>{moneyWords(price.totalMinor, price.currency)}</td>
            </tr>
          </tfoot>
        </table>
      )}
      <p className={css.note}>{price ? t('cut.price.inner') : t('cut.price.noCosts')}</p>
    </>
  );
}

/** Sheets of a kind at one price on one line, however many there are. */
function gathered(lines: readonly PriceLine[]): readonly PriceLine[] {
  const known = new Map<string, PriceLine>();
  lines.forEach((line, i) => {
    const key = line.code === 'sheet' ? `${line.kind ?? ''} ${line.each}` : `${i}`;
    const before = known.get(key);
    known.set(key, before ? { ...line, count: before.count + line.count, minor: before.minor + line.minor } : line);
  });
  return [...known.values()];
}

function howMuch({ count, unit, each }: PriceLine, currency: string, kind = t('cut.price.line.sheet')): string {
  const amount = formatNumber(count, unit === 'sheets' ? 2 : 1);
  if (unit === 'per-cent') return t('cut.price.perCent', { amount });
  return t(`cut.price.count.${unit}`, { amount, each: rateWords(each, currency), kind });
}
