import type { PlateSpec } from '../../../../geometry/design/schema.ts';
import { setPlate } from '../../../state/actions/plates/set-plate.ts';
import { useAct, usePage, useUi } from '../../../page/page-context.ts';
import { Field } from '../../../ui/Field.tsx';
import fieldCss from '../../../ui/Field.module.css';
import { formatNumber, lengthWords } from '../../../words/say/format-number.ts';
import { LengthField } from '../../../ui/LengthField.tsx';
import { NumberField } from '../../../ui/NumberField.tsx';
import { t } from '../../../words/t.ts';
import css from './PlateList.module.css';
import { PlateNameField } from './PlateNameField.tsx';

type SizeKind = 'fit' | 'share' | 'mm';

interface PlateListSizeProps {
  readonly plate: PlateSpec;
  /** What its size comes to now. */
  readonly diameterMm: number;
}

/** Name and exact size of one plate. */
export function PlateSize({ plate, diameterMm }: PlateListSizeProps) {
  const unit = useUi((s) => s.unit);
  const { design } = usePage();
  const act = useAct();
  const done = (): void => design.getState().closeMerge();
  const { diameter } = plate;
  const kind: SizeKind = diameter === 'fit' ? 'fit' : 'share' in diameter ? 'share' : 'mm';
  const set = (part: Parameters<typeof setPlate>[2]): void => act((d) => setPlate(d, plate.id, part));

  function setKind(to: SizeKind): void {
    set({ diameter: to === 'fit' ? 'fit' : to === 'share' ? { share: 0.5 } : { mm: diameterMm } });
    done();
  }

  return (
    <>
      <PlateNameField plate={plate} />
      <div className={css.exact}>
        <Field
          label={t('size.plateSize')}
          hint={kind === 'mm' ? undefined : t('size.comesTo', { size: lengthWords(diameterMm, unit) })}
        >
          {({ id, describedBy }) => (
            <select
              id={id}
              aria-describedby={describedBy}
              className={fieldCss.control}
              value={kind}
              onChange={(e) => setKind(e.target.value as SizeKind)}
            >
              <option value="fit">{t('size.fit')}</option>
              <option value="share">{t('size.share')}</option>
              <option value="mm">{t('size.mm')}</option>
            </select>
          )}
        </Field>
        {diameter !== 'fit' && 'share' in diameter && (
          <NumberField
            label={t('size.shareNumber')}
            value={diameter.share * 100}
            least={1}
            most={100}
            step={5}
            unitLabel={t('details.percent')}
            show={(value) => formatNumber(value, 1)}
            onDone={done}
            onChange={(value) => set({ diameter: { share: value / 100 } })}
          />
        )}
        {diameter !== 'fit' && 'mm' in diameter && (
          <LengthField
            label={t('size.diameter')}
            mm={diameter.mm}
            unit={unit}
            leastMm={-100_000}
            mostMm={100_000}
            onDone={done}
            onChange={(mm) => set({ diameter: { mm } })}
          />
        )}
      </div>
    </>
  );
}
