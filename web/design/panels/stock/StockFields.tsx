import type { Stock } from '../../../../geometry/design/schema.ts';
import { setStock } from '../../../state/actions/set-fields.ts';
import { useAct, useDesign } from '../../../page/page-context.ts';
import { Choice } from '../../../ui/fields/Choice.tsx';
import { t } from '../../../words/t.ts';
import css from '../../../ui/fields.module.css';
import { Advice } from './Advice.tsx';
import { MaterialFields } from './MaterialFields.tsx';
import { ShopFields } from './ShopFields.tsx';
import { Sources } from './Sources.tsx';

/** What it is for comes first, then what we would take for that, then the rest. */
export function StockFields() {
  const { stock } = useDesign();
  const act = useAct();
  return (
    <div className={css.stack}>
      <Choice<Stock['use']>
        legend={t('advice.use.legend')}
        showLegend
        value={stock.use}
        options={{ paint: t('advice.use.paint'), torch: t('advice.use.torch') }}
        onChange={(use) => act((d) => setStock(d, { use }))}
      />
      <Advice />
      <MaterialFields />
      <div>
        <ShopFields />
        <Sources />
      </div>
    </div>
  );
}
