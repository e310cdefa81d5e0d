import { formatMoney } from '../../../geometry/shop/format-money.ts';
import type { Quote, QuoteLine } from '../../../geometry/shop/quote.ts';
import { formatNumber } from '../../words/say/format-number.ts';
import { spoken, t } from '../../words/t.ts';
import text from '../../ui/text.module.css';
import css from './PriceOf.module.css';

/** How a price adds up; never what anything costs the shop. */
export function PriceLines({ quote }: { readonly quote: Quote }) {
  const { currency, lines, netMinor, tax, totalMinor, steps, validDays } = quote;
  const money = (minor: number): string => formatMoney(minor, currency, spoken());
  return (
    <>
      <table className={css.lines}>
        <caption className="sr-only">{t('proof.price.lines')}</caption>
        <tbody>
          {lines.map((line, i) => (
            <tr key={`${line.code} ${line.plate ?? ''} ${i}`}>
              <th scope="row">
                {line.plate === undefined
                  ? t(`proof.price.line.${line.code}`)
                  : t('proof.price.ofPlate', { what: t(`proof.price.line.${line.code}`), plate: line.plate })}
                <span className={css.count}>{howMany(line, currency)}</span>
              </th>
              <td>{money(line.minor)}</td>
            </tr>
          ))}
        </tbody>
        <tfoot>
          {tax && !tax.included && (
            <>
              <tr>
                <th scope="row">{t('proof.price.net')}</th>
                <td>{money(netMinor)}</td>
              </tr>
              <tr>
                <th scope="row">{t('proof.price.tax', { name: tax.name, percent: formatNumber(tax.percent, 2) })}</th>
                <td>{money(tax.minor)}</td>
              </tr>
            </>
          )}
          <tr className={css.sum}>
            <th scope="row">{t('proof.price.total')}</th>
            <td>{money(totalMinor)}</td>
          </tr>
          {tax?.included && (
            <tr>
              <th scope="row">{t('proof.price.taxIn', { name: tax.name, percent: formatNumber(tax.percent, 2) })}</th>
              <td>{money(tax.minor)}</td>
            </tr>
          )}
        </tfoot>
      </table>
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

function howMany({ code, count, unit, each }: QuoteLine, currency: string): string {
  if (code === 'least-order') return '';
  const amount = formatNumber(count, unit === 'metres' ? 2 : 1);
  if (unit === 'per-cent') return t('proof.price.count.percent', { amount });
  // a rate of less than a coin is shown whole
  const rate = new Intl.NumberFormat(spoken(), { style: 'currency', currency, maximumFractionDigits: 4 }).format(each);
  return t(`proof.price.count.${unit}`, { amount, each: rate });
}
