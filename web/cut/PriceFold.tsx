import { useEffect, useState } from 'react';
import type { PriceLine } from '../../geometry/cutplan/price.ts';
import { useUi } from '../app/page-context.ts';
import { formatNumber, lengthWords } from '../ui/format-number.ts';
import { spoken, t } from '../words/t.ts';
import type { OrderCost } from '../worker/cut-api.ts';
import { clock } from './clock.ts';
import { useCut, useCutParts } from './cut-context.ts';
import type { Planned } from './cut-store.ts';
import css from './folds.module.css';
import { moneyWords } from './money.ts';

/** What the order takes, line by line: times of the machine, then costs by the rates of the shop. */
export function PriceFold() {
  const { work } = useCutParts();
  const planned = useCut((s) => s.planned);
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
  return (
    <>
      <table className={css.table}>
        <caption className="sr-only">{t('cut.price.time')}</caption>
        <tbody>
          {(['cutS', 'pierceS', 'rapidS', 'raiseS'] as const).map((part) => (
            <tr key={part}>
              <td>
                {t(`cut.price.${part}`)}
                {part === 'cutS' && <span className={css.sub}>{lengthWords(cost.cuttingMm, unit, 0)}</span>}
                {part === 'rapidS' && <span className={css.sub}>{lengthWords(cost.rapidMm, unit, 0)}</span>}
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
            {price.lines.map((line, i) => (
              <tr key={`${line.code} ${line.kind ?? ''} ${i}`}>
                <td>
                  {t(`cut.price.line.${line.code}`)}
                  <span className={css.sub}>{howMuch(line, price.currency)}</span>
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
      <p className={css.note}>{t('cut.price.inner')}</p>
    </>
  );
}

function howMuch({ count, unit, each, kind }: PriceLine, currency: string): string {
  const money = new Intl.NumberFormat(spoken(), { maximumFractionDigits: 2 }).format(Math.abs(each));
  const amount = formatNumber(count, unit === 'sheets' ? 3 : 1);
  if (unit === 'per-cent') return t('cut.price.perCent', { amount });
  return t(`cut.price.count.${unit}`, { amount, each: `${money} ${currency}`, kind: kind ?? '' });
}
