import { useDesign, usePlates } from '../../../page/page-context.ts';
import { t } from '../../../words/t.ts';
import { Cautions } from '../../../page/Cautions.tsx';
import { Downloads } from './Downloads.tsx';
import css from '../../../ui/fields.module.css';
import { OrderFields } from './OrderFields.tsx';
import { LinkField } from './LinkField.tsx';
import { PlateFigures } from './PlateFigures.tsx';

/** Fourth question, hardly one: what was made, and the files to take home. */
export function FilesPanel() {
  const design = useDesign();
  const plates = usePlates((s) => s.plates);
  return (
    <>
      <Downloads />
      <LinkField />
      <section className={css.section} aria-labelledby="figures-title">
        <h3 id="figures-title" className={css.title}>
          {t('take.figures')}
        </h3>
        {design.plates.map((spec) => (
          <PlateFigures key={spec.id} spec={spec} plate={plates[spec.id]} />
        ))}
      </section>
      <section className={css.section} aria-labelledby="order-title">
        <h3 id="order-title" className={css.title}>
          {t('take.order')}
        </h3>
        <OrderFields />
      </section>
      <section className={css.section} aria-labelledby="cautions-title">
        <h3 id="cautions-title" className={css.title}>
          {t('take.cautions')}
        </h3>
        <Cautions />
      </section>
    </>
  );
}
