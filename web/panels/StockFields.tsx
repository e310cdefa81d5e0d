import type { Stock } from '../../geometry/design/schema.ts';
import { setStock } from '../actions/set-stock.ts';
import { useAct, useDesign } from '../app/page-context.ts';
import { Choice } from '../ui/Choice.tsx';
import { t } from '../words/t.ts';
import css from './fields.module.css';
import { StockFieldsAdvice } from './StockFieldsAdvice.tsx';
import { StockFieldsMaterial } from './StockFieldsMaterial.tsx';
import { StockFieldsShop } from './StockFieldsShop.tsx';
import { StockFieldsSources } from './StockFieldsSources.tsx';

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
        options={[
          { value: 'paint', label: t('advice.use.paint') },
          { value: 'torch', label: t('advice.use.torch') },
        ]}
        onChange={(use) => act((d) => setStock(d, { use }))}
      />
      <StockFieldsAdvice />
      <StockFieldsMaterial />
      <div>
        <StockFieldsShop />
        <StockFieldsSources />
      </div>
    </div>
  );
}
