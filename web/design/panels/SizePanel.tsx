import { useDesign } from '../../page/page-context.ts';
import { Fold } from '../../ui/Fold.tsx';
import { t } from '../../words/t.ts';
import { HeadFields } from './head/HeadFields.tsx';
import css from '../../ui/fields.module.css';
import { PlateList } from './plates/PlateList.tsx';
import { LiftingFields } from './plates/LiftingFields.tsx';
import { PlaceChoice, SideFields } from './head/SideFields.tsx';
import { StockFields } from './stock/StockFields.tsx';

/** Third question: how big is your head, how many plates, and of what. */
export function SizePanel() {
  const { surface } = useDesign();
  return (
    <>
      <div className={css.stack}>
        <PlaceChoice />
        {surface === 'head' ? <HeadFields /> : <SideFields />}
      </div>
      <section className={css.section} aria-labelledby="plates-title">
        <h3 id="plates-title" className={css.title}>
          {t('size.plates')}
        </h3>
        <PlateList />
        {surface === 'head' && (
          <Fold title={t('barrel.lifting.legend')}>
            <LiftingFields />
          </Fold>
        )}
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
