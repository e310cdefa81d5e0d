import { setOrder } from '../../../state/actions/set-fields.ts';
import { useAct, useDesign } from '../../../page/page-context.ts';
import { TextField } from '../../../ui/fields/TextField.tsx';
import { t } from '../../../words/t.ts';
import css from '../../../ui/fields.module.css';

/** Who, reference, needed by, notes: printed on the spec sheet, never cut. */
export function OrderFields() {
  const { order } = useDesign();
  const act = useAct();
  return (
    <div className={css.stack}>
      <TextField
        label={t('take.who')}
        value={order.who}
        maxLength={200}
        onChange={(who) => act((d) => setOrder(d, { who }))}
      />
      <div className={css.pair}>
        <TextField
          label={t('take.reference')}
          value={order.reference}
          maxLength={200}
          onChange={(reference) => act((d) => setOrder(d, { reference }))}
        />
        <TextField
          label={t('take.neededBy')}
          value={order.neededBy}
          maxLength={40}
          onChange={(neededBy) => act((d) => setOrder(d, { neededBy }))}
        />
      </div>
      <TextField
        label={t('take.notes')}
        value={order.notes}
        maxLength={4000}
        rows={3}
        onChange={(notes) => act((d) => setOrder(d, { notes }))}
      />
    </div>
  );
}
