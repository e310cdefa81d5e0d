import { barrelById } from '../../../../geometry/barrel/barrels.ts';
import { useUi } from '../../../page/page-context.ts';
import { Fold } from '../../../ui/Fold.tsx';
import { lengthWords } from '../../../words/say/format-number.ts';
import { t } from '../../../words/t.ts';
import css from '../../../ui/fields.module.css';

/** Where the size of a barrel from the table comes from. */
export function BarrelSource({ id }: { readonly id: string }) {
  const unit = useUi((s) => s.unit);
  const barrel = barrelById(id);
  if (barrel === undefined) return null;
  const { least, most, source } = barrel.headMm;
  const values = { least: lengthWords(least, unit), most: lengthWords(most, unit), source };
  return (
    <Fold title={t('advice.head.sources')}>
      <p className={css.note}>
        {t(least === most ? 'advice.head.sourceOne' : 'advice.head.sourceLine', values)} {t('advice.head.noTable')}
      </p>
    </Fold>
  );
}
