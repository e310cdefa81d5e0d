import type { PlateSpec } from '../../../../geometry/design/schema.ts';
import { setPlate } from '../../../state/actions/plates/set-plate.ts';
import { useAct, useStep, useUi } from '../../../page/page-context.ts';
import { lengthWords } from '../../../words/say/format-number.ts';
import { LengthField } from '../../../ui/fields/LengthField.tsx';
import { PercentField } from '../../../ui/fields/PercentField.tsx';
import { SelectField } from '../../../ui/fields/SelectField.tsx';
import { t } from '../../../words/t.ts';
import css from './PlateList.module.css';
import { PlateNameField } from './PlateNameField.tsx';

type SizeKind = 'fit' | 'share' | 'mm';

interface PlateListSizeProps {
  readonly plate: PlateSpec;
  /** What its size comes to now. */
  readonly diameterMm: number;
}

export function PlateSize({ plate, diameterMm }: PlateListSizeProps) {
  const unit = useUi((s) => s.unit);
  const act = useAct();
  const step = useStep();
  const { diameter } = plate;
  const kind: SizeKind = diameter === 'fit' ? 'fit' : 'share' in diameter ? 'share' : 'mm';
  const set = (part: Parameters<typeof setPlate>[2]): void => act((d) => setPlate(d, plate.id, part));

  function setKind(to: SizeKind): void {
    const next = to === 'fit' ? 'fit' : to === 'share' ? { share: 0.5 } : { mm: diameterMm };
    step((d) => setPlate(d, plate.id, { diameter: next }));
  }

  return (
    <>
      <PlateNameField plate={plate} />
      <div className={css.exact}>
        <SelectField
          label={t('size.plateSize')}
          hint={kind === 'mm' ? undefined : t('size.comesTo', { size: lengthWords(diameterMm, unit) })}
          value={kind}
          options={{ fit: t('size.fit'), share: t('size.share'), mm: t('size.mm') }}
          onChange={setKind}
        />
        {diameter !== 'fit' && 'share' in diameter && (
          <PercentField
            label={t('size.shareNumber')}
            share={diameter.share}
            least={1}
            most={100}
            step={5}
            onChange={(share) => set({ diameter: { share } })}
          />
        )}
        {diameter !== 'fit' && 'mm' in diameter && (
          <LengthField
            label={t('size.diameter')}
            mm={diameter.mm}
            leastMm={-100_000}
            mostMm={100_000}
            onChange={(mm) => set({ diameter: { mm } })}
          />
        )}
      </div>
    </>
  );
}
