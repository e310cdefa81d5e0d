import { Plus, Trash2 } from 'lucide-react';
import { plateDiameterMm } from '../../geometry/barrel/blank.ts';
import type { PlateSpec } from '../../geometry/design/schema.ts';
import { addPlate, MOST_PLATES } from '../actions/add-plate.ts';
import { removePlate } from '../actions/remove-plate.ts';
import { setPlate } from '../actions/set-plate.ts';
import { useAct, useDesign, usePage, useUi } from '../app/page-context.ts';
import { Button } from '../ui/Button.tsx';
import { Field } from '../ui/Field.tsx';
import fieldCss from '../ui/Field.module.css';
import { formatNumber, lengthWords } from '../ui/format-number.ts';
import { LengthField } from '../ui/LengthField.tsx';
import { NumberField } from '../ui/NumberField.tsx';
import { t } from '../words/t.ts';
import css from './PlateList.module.css';
import { PlateNameField } from './PlateNameField.tsx';

/** The plates of the order: how large, how many. */
export function PlateList() {
  const design = useDesign();
  const act = useAct();
  return (
    <>
      <ol className={css.list}>
        {design.plates.map((plate) => (
          <PlateRow key={plate.id} plate={plate} only={design.plates.length === 1} />
        ))}
      </ol>
      {design.plates.length < MOST_PLATES && (
        <div>
          <Button
            kind="plain"
            onClick={() => act((d) => addPlate(d, t('size.newPlate', { n: d.plates.length + 1 }), { share: 0.5 }))}
          >
            <Plus size={16} aria-hidden /> {t('size.addPlate')}
          </Button>
        </div>
      )}
    </>
  );
}

type SizeKind = 'fit' | 'share' | 'mm';

function PlateRow({ plate, only }: { readonly plate: PlateSpec; readonly only: boolean }) {
  const current = useDesign();
  const unit = useUi((s) => s.unit);
  const { design } = usePage();
  const act = useAct();
  const done = (): void => design.getState().closeMerge();
  const { diameterMm } = plateDiameterMm(current, plate);
  const kind: SizeKind = plate.diameter === 'fit' ? 'fit' : 'share' in plate.diameter ? 'share' : 'mm';
  const set = (part: Parameters<typeof setPlate>[2]): void => act((d) => setPlate(d, plate.id, part));

  function setKind(to: SizeKind): void {
    set({ diameter: to === 'fit' ? 'fit' : to === 'share' ? { share: 0.5 } : { mm: diameterMm } });
    done();
  }

  return (
    <li className={css.row}>
      <div className={css.head}>
        <PlateNameField plate={plate} />
        <NumberField
          label={t('size.quantity')}
          value={plate.quantity}
          least={1}
          most={100_000}
          whole
          onDone={done}
          onChange={(quantity) => set({ quantity })}
        />
        {!only && (
          <Button
            kind="icon"
            className={css.remove}
            aria-label={t('size.removePlate', { name: plate.name })}
            title={t('size.removePlate', { name: plate.name })}
            onClick={() => act((d) => removePlate(d, plate.id))}
          >
            <Trash2 size={18} aria-hidden />
          </Button>
        )}
      </div>
      <div className={css.size}>
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
        {plate.diameter !== 'fit' && 'share' in plate.diameter && (
          <NumberField
            label={t('size.shareNumber')}
            value={plate.diameter.share * 100}
            least={1}
            most={100}
            step={5}
            unitLabel={t('details.percent')}
            show={(value) => formatNumber(value, 1)}
            onDone={done}
            onChange={(value) => set({ diameter: { share: value / 100 } })}
          />
        )}
        {plate.diameter !== 'fit' && 'mm' in plate.diameter && (
          <LengthField
            label={t('size.diameter')}
            mm={plate.diameter.mm}
            unit={unit}
            leastMm={-100_000}
            mostMm={100_000}
            onDone={done}
            onChange={(mm) => set({ diameter: { mm } })}
          />
        )}
      </div>
    </li>
  );
}
