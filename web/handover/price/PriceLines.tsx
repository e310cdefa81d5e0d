import type { Quote, QuoteLine } from '../../../geometry/shop/quote.ts';
import { SumTable } from '../../ui/SumTable.tsx';
import { moneyWords } from '../../words/say/money-words.ts';
import { formatNumber } from '../../words/say/format-number.ts';
import { spoken, t } from '../../words/t.ts';
import text from '../../ui/text.module.css';

/** How a price adds up; never what anything costs the shop. */
export function PriceLines({ quote }: { readonly quote: Quote }) {
  const { currency, lines, netMinor, tax, totalMinor, steps, validDays } = quote;
  const money = (minor: number): string => moneyWords(minor, currency);
  const taxed = tax && { name: tax.name, percent: formatNumber(tax.percent, 2) };
  return (
    <>
      <SumTable
        caption={t('proof.price.lines')}
        rows={lines.map((line) => {
          const what = t(`proof.price.line.${line.code}`);
          return {
            what: line.plate === undefined ? what : t('proof.price.ofPlate', { what, plate: line.plate }),
            of: howMany(line, currency),
            amount: money(line.minor),
          };
        })}
        sums={[
          ...(tax && taxed && !tax.included
            ? [
                { what: t('proof.price.net'), amount: money(netMinor) },
                { what: t('proof.price.tax', taxed), amount: money(tax.minor) },
              ]
            : []),
          { what: t('proof.price.total'), amount: money(totalMinor), isTotal: true },
          ...(tax?.included && taxed ? [{ what: t('proof.price.taxIn', taxed), amount: money(tax.minor) }] : []),
        ]}
      />
      {steps.length > 0 && (
        <p className={text.note}>
          {t('proof.price.steps')}{' '}
          {steps
            .map(({ from, percentOff }) => t('proof.price.step', { from, percent: formatNumber(percentOff, 1) }))
            .join(', ')}
        </p>
      )}
      {validDays !== undefined && <p className={text.note}>{t('proof.price.valid', { count: validDays })}</p>}
    </>
  );
}

function howMany({ code, count, unit, each }: QuoteLine, currency: string): string | undefined {
  if (code === 'least-order') return undefined;
  const amount = formatNumber(count, 2);
  if (unit === 'per-cent') return t('proof.price.count.percent', { amount });
  // a rate of less than a coin is shown whole
  const rate = new Intl.NumberFormat(spoken(), { style: 'currency', currency, maximumFractionDigits: 4 }).format(each);
  return t(`proof.price.count.${unit}`, { amount, each: rate });
}
