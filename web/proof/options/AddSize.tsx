import { useState } from 'react';
import type { OptionPart } from '../../../geometry/approval/options.ts';
import { plateDiameterMm } from '../../../geometry/barrel/blank.ts';
import type { PlateSpec } from '../../../geometry/design/schema.ts';
import { useDesign, useUi } from '../../page/page-context.ts';
import { Button } from '../../ui/Button.tsx';
import { Check } from '../../ui/Check.tsx';
import { lengthWords } from '../../words/say/format-number.ts';
import { LengthField } from '../../ui/fields/LengthField.tsx';
import { t } from '../../words/t.ts';
import text from '../../ui/text.module.css';
import css from './AddOption.module.css';

interface AddSizeProps {
  readonly onAdd: (part: OptionPart & { readonly name: string }) => void;
}

/** Which plates, and how large. */
export function AddSize({ onAdd }: AddSizeProps) {
  const design = useDesign();
  const unit = useUi((s) => s.unit);
  const [left, setLeft] = useState<ReadonlySet<string>>(new Set());
  const [sizes, setSizes] = useState<Readonly<Record<string, number>>>({});
  const now = (spec: PlateSpec): number => plateDiameterMm(design, spec).diameterMm;
  const kept = design.plates.filter(({ id, masks }) => !left.has(id) && (masks === undefined || !left.has(masks)));
  const plates = kept.map((spec): PlateSpec => {
    const mm = sizes[spec.id];
    return mm === undefined || mm === now(spec) ? spec : { ...spec, diameter: { mm } };
  });
  const same = plates.length === design.plates.length && plates.every((p) => design.plates.includes(p));
  const name = plates
    .filter(({ masks }) => masks === undefined)
    .map((p) => lengthWords(sizes[p.id] ?? now(p), unit))
    .join(' + ');

  function keep(id: string, on: boolean): void {
    const next = new Set(left);
    if (on) next.delete(id);
    else next.add(id);
    setLeft(next);
  }

  return (
    <div className={css.sizes}>
      {design.plates.map((spec) => (
        <div key={spec.id} className={css.size}>
          <Check label={spec.name} checked={kept.includes(spec)} onChange={(on) => keep(spec.id, on)} />
          {spec.masks === undefined && kept.includes(spec) && (
            <LengthField
              label={t('proof.add.across', { plate: spec.name })}
              mm={sizes[spec.id] ?? now(spec)}
              leastMm={20}
              mostMm={3000}
              onChange={(mm) => setSizes({ ...sizes, [spec.id]: mm })}
            />
          )}
        </div>
      ))}
      <Button kind="plain" disabled={same || plates.length === 0} onClick={() => onAdd({ name, plates })}>
        {t('proof.add.addSize')}
      </Button>
      {plates.length === 0 && <p className={text.soft}>{t('proof.add.noPlate')}</p>}
    </div>
  );
}
