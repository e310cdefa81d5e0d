import type { DesignElement, Manner } from '../../../../geometry/design/schema.ts';
import { setManner } from '../../../state/actions/bridges/set-manner.ts';
import { useAct } from '../../../page/page-context.ts';
import { Field } from '../../../ui/Field.tsx';
import fieldCss from '../../../ui/Field.module.css';
import { t } from '../../../words/t.ts';

const MANNERS: readonly Manner[] = ['hidden', 'upright', 'band'];
const AS_ALL = '';

/** How one element is bridged, where it shall differ from the whole design. */
export function MannerField({ element }: { readonly element: DesignElement }) {
  const act = useAct();
  return (
    <Field label={t('look.mannerOwn')}>
      {({ id }) => (
        <select
          id={id}
          className={fieldCss.control}
          value={element.manner ?? AS_ALL}
          onChange={(e) => {
            const manner = MANNERS.find((m) => m === e.target.value);
            act((d) => setManner(d, element.id, manner));
          }}
        >
          <option value={AS_ALL}>{t('look.mannerAll')}</option>
          {MANNERS.map((manner) => (
            <option key={manner} value={manner}>
              {t(`look.${manner}`)}
            </option>
          ))}
        </select>
      )}
    </Field>
  );
}
