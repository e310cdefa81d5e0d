import { setTracking } from '../../../state/actions/elements/set-tracking.ts';
import { useAct } from '../../../page/page-context.ts';
import { PercentField } from '../../../ui/fields/PercentField.tsx';
import { t } from '../../../words/t.ts';

/** Space between letters, in per cent of the height of the capitals. */
export function TrackingField({ id, tracking }: { readonly id: string; readonly tracking: number }) {
  const act = useAct();
  return (
    <PercentField
      label={t('details.tracking')}
      share={tracking}
      least={-20}
      most={200}
      onChange={(share) => act((d) => setTracking(d, id, share))}
    />
  );
}
