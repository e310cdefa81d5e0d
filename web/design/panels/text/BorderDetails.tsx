import type { Border } from '../../../../geometry/design/schema.ts';
import { type BorderPart, setBorder } from '../../../state/actions/set-fields.ts';
import { useAct } from '../../../page/page-context.ts';
import { Choice } from '../../../ui/fields/Choice.tsx';
import { NumberField } from '../../../ui/fields/NumberField.tsx';
import { t } from '../../../words/t.ts';
import { BandFields } from './BandFields.tsx';
import { MannerField } from './MannerField.tsx';

const STYLES = ['ring', 'dashes', 'beads', 'rope'] as const;
const FIRST_COUNT = 48;

/** Style, place and count of a border. */
export function BorderDetails({ element }: { readonly element: Border }) {
  const act = useAct();
  const set = (part: BorderPart): void => act((d) => setBorder(d, element.id, part));
  return (
    <>
      <Choice
        legend={t('details.style')}
        showLegend
        value={element.style}
        options={STYLES.map((value) => ({ value, label: t(`details.styles.${value}`) }))}
        onChange={(style) => set({ style })}
      />
      <BandFields id={element.id} inner={element.inner} outer={element.outer} />
      {element.style !== 'ring' && (
        <Choice
          legend={t('details.count')}
          showLegend
          value={element.count === 'auto' ? 'auto' : 'own'}
          options={{ auto: t('details.auto'), own: t('details.own') }}
          onChange={(how) => set({ count: how === 'auto' ? 'auto' : FIRST_COUNT })}
        />
      )}
      {element.style !== 'ring' && element.count !== 'auto' && (
        <NumberField
          label={t('details.countNumber')}
          value={element.count}
          least={2}
          most={720}
          whole
          onChange={(count) => set({ count })}
        />
      )}
      <MannerField element={element} />
    </>
  );
}
