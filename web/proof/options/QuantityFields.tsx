import { Minus, Plus } from 'lucide-react';
import type { PlateSpec } from '../../../geometry/design/schema.ts';
import { MOST_QUANTITY } from '../../../geometry/design/limits.ts';
import { setQuantity } from '../../state/actions/plates/set-quantity.ts';
import { useAct, useDesign, usePage } from '../../page/page-context.ts';
import { formatNumber } from '../../words/say/format-number.ts';
import { NumberField } from '../../ui/fields/NumberField.tsx';
import { t } from '../../words/t.ts';
import text from '../../ui/text.module.css';
import css from './QuantityFields.module.css';

/** How many of each plate, for all options at once, and from how many on it costs less. */
export function QuantityFields() {
  const design = useDesign();
  const { shop } = usePage();
  const steps = [...(shop?.prices?.quantitySteps ?? [])].sort((a, b) => a.from - b.from);
  return (
    <div className={css.quantity}>
      <div className={css.fields} role="group" aria-label={t('proof.quantity.title')}>
        {design.plates.map((spec) => (
          <Quantity key={spec.id} spec={spec} />
        ))}
      </div>
      {steps.length > 0 && (
        <p className={text.note}>
          {steps
            .map(({ from, percentOff }) => t('proof.price.step', { from, percent: formatNumber(percentOff, 1) }))
            .join(', ')}
        </p>
      )}
    </div>
  );
}

function Quantity({ spec }: { readonly spec: PlateSpec }) {
  const act = useAct();
  const { id, name, quantity } = spec;
  const set = (to: number): void => act((d) => setQuantity(d, id, to));
  return (
    <div className={css.one}>
      <button
        type="button"
        className={css.step}
        aria-label={t('proof.quantity.less', { plate: name })}
        disabled={quantity <= 1}
        onClick={() => set(quantity - 1)}
      >
        <Minus size={16} aria-hidden />
      </button>
      <NumberField
        label={t('proof.quantity.of', { plate: name })}
        value={quantity}
        whole
        least={1}
        most={MOST_QUANTITY}
        onChange={set}
      />
      <button
        type="button"
        className={css.step}
        aria-label={t('proof.quantity.more', { plate: name })}
        disabled={quantity >= MOST_QUANTITY}
        onClick={() => set(quantity + 1)}
      >
        <Plus size={16} aria-hidden />
      </button>
    </div>
  );
}
