import { stockSources } from '../../../../geometry/stock/stock-sources.ts';
import { useDesign, usePage } from '../../../page/page-context.ts';
import { Fold } from '../../../ui/Fold.tsx';
import { formatNumber } from '../../../words/say/format-number.ts';
import { t } from '../../../words/t.ts';
import css from './StockFields.module.css';

/** Every number behind the advice on this stock, with its source or the plain words that there is none. */
export function Sources() {
  const { stock } = useDesign();
  const { book } = usePage();
  return (
    <Fold title={t('advice.sources.title')}>
      <p className={css.small}>{t('advice.sources.intro')}</p>
      <ul className={css.small}>
        {stockSources(stock, book).map(({ what, value, unit, source }) => (
          <li key={what}>
            {t('advice.sources.line', {
              what: t(`advice.sources.what.${what}`),
              value: t(`advice.sources.units.${unit}`, { value: formatNumber(value, 2) }),
              source,
            })}
          </li>
        ))}
      </ul>
    </Fold>
  );
}
