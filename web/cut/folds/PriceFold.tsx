import type { PriceLine } from '../../../geometry/cutplan/cost/price.ts';
import { usePage, useUi } from '../../page/page-context.ts';
import { useAnswer } from '../../ui/use-answer.ts';
import { SumTable } from '../../ui/SumTable.tsx';
import { moneyWords, rateWords } from '../../words/say/money-words.ts';
import { formatNumber } from '../../words/say/format-number.ts';
import { t } from '../../words/t.ts';
import type { OrderCost } from '../../worker/cut-api.ts';
import type { Unit } from '../../words/preferences.ts';
import { clock } from '../state/clock.ts';
import { useCut, useCutParts } from '../state/cut-context.ts';
import text from '../../ui/text.module.css';
import { kindWords, longWords } from '../state/sheet-words.ts';

/** What the order takes, line by line: times of the machine, then costs by the rates of the shop. */
export function PriceFold() {
  const { work } = useCutParts();
  const { book } = usePage();
  const planned = useCut((s) => s.planned);
  const remnants = useCut((s) => s.remnants);
  const unit = useUi((s) => s.unit);
  const job = planned?.job;
  const found = useAnswer(job, work.cost);
  if (!job) return <p className={text.note}>{t('cut.order.notYet')}</p>;
  if (!found) return <p className={text.note}>{t('cut.price.working')}</p>;
  const { answer: cost } = found;
  if (!cost) return <p className={text.bad}>{t('trouble.worker')}</p>;
  const { price } = cost;
  const kinds = [...book.sheets, ...remnants];
  return (
    <>
      <SumTable
        caption={t('cut.price.time')}
        rows={(['cutS', 'pierceS', 'rapidS', 'raiseS'] as const).map((part) => ({
          what: t(`cut.price.${part}`),
          of: timeOf(part, cost, unit),
          amount: clock(cost.times[part]),
        }))}
        sums={[{ what: t('cut.price.machineTime'), amount: clock(cost.totalS), isTotal: true }]}
      />
      {price && (
        <SumTable
          caption={t('cut.price.cost')}
          rows={gatherLines(price.lines).map((line) => ({
            what: t(`cut.price.line.${line.code}`),
            of: howMuch(line, price.currency, kindWords(kinds, line.kind ?? '', unit)),
            amount: moneyWords(line.minor, price.currency),
          }))}
          sums={[{ what: t('cut.price.total'), amount: moneyWords(price.totalMinor, price.currency), isTotal: true }]}
        />
      )}
      <p className={text.note}>{price ? t('cut.price.inner') : t('cut.price.noCosts')}</p>
    </>
  );
}

/** What the machine does in a part of its time: lengths, or pierces. */
function timeOf(part: keyof OrderCost['times'], cost: OrderCost, unit: Unit): string | undefined {
  if (part === 'cutS') return longWords(cost.cuttingMm, unit);
  if (part === 'rapidS') return longWords(cost.rapidMm, unit);
  return part === 'pierceS' ? t('cut.price.pierces', { count: cost.pierces }) : undefined;
}

/** Sheets of a kind at one price on one line, however many there are. */
function gatherLines(lines: readonly PriceLine[]): readonly PriceLine[] {
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
