import type { DesignElement, Manner } from '../../../../geometry/design/schema.ts';
import { setManner } from '../../../state/actions/bridges/set-manner.ts';
import { useAct } from '../../../page/page-context.ts';
import { SelectField } from '../../../ui/fields/SelectField.tsx';
import { t } from '../../../words/t.ts';

/** How one element is bridged, where it shall differ from the whole design. */
export function MannerField({ element }: { readonly element: DesignElement }) {
  const act = useAct();
  return (
    <SelectField<Manner | 'all'>
      label={t('look.mannerOwn')}
      value={element.manner ?? 'all'}
      options={{
        all: t('look.mannerAll'),
        hidden: t('look.hidden'),
        upright: t('look.upright'),
        band: t('look.band'),
      }}
      onChange={(manner) => act((d) => setManner(d, element.id, manner === 'all' ? undefined : manner))}
    />
  );
}
