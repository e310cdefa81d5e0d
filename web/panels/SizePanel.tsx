import { t } from '../words/t.ts';
import { HeadFields } from './HeadFields.tsx';
import css from './fields.module.css';
import { PlateList } from './PlateList.tsx';
import { StockFields } from './StockFields.tsx';

/** Third question: how big is your head, how many plates, and of what. */
export function SizePanel() {
  return (
    <>
      <HeadFields />
      <section className={css.section} aria-labelledby="plates-title">
        <h3 id="plates-title" className={css.title}>
          {t('size.plates')}
        </h3>
        <PlateList />
      </section>
      <section className={css.section} aria-labelledby="stock-title">
        <h3 id="stock-title" className={css.title}>
          {t('size.stock')}
        </h3>
        <StockFields />
      </section>
    </>
  );
}
