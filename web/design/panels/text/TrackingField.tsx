import { setTracking } from '../../../state/actions/elements/set-tracking.ts';
import { useAct, usePage } from '../../../page/page-context.ts';
import { formatNumber } from '../../../words/say/format-number.ts';
import { NumberField } from '../../../ui/NumberField.tsx';
import { t } from '../../../words/t.ts';

/** Space between letters, in per cent of the height of the capitals. */
export function TrackingField({ id, tracking }: { readonly id: string; readonly tracking: number }) {
  const act = useAct();
  const { design } = usePage();
  return (
    <NumberField
      label={t('details.tracking')}
      value={tracking * 100}
      least={-20}
      most={200}
      step={1}
      unitLabel={t('details.percent')}
      show={(value) => formatNumber(value, 1)}
      onDone={() => design.getState().closeMerge()}
      onChange={(value) => act((d) => setTracking(d, id, value / 100))}
    />
  );
}
