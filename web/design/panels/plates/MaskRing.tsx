import { Plus } from 'lucide-react';
import { oversprayOf } from '../../../../geometry/barrel/overspray.ts';
import type { PlateSpec } from '../../../../geometry/design/schema.ts';
import { addMaskRing } from '../../../state/actions/plates/add-mask-ring.ts';
import { MOST_PLATES } from '../../../state/actions/plates/add-plate.ts';
import { useAct, useDesign } from '../../../page/page-context.ts';
import { Button } from '../../../ui/Button.tsx';
import { formatNumber } from '../../../words/say/format-number.ts';
import { t } from '../../../words/t.ts';
import css from '../../../ui/fields.module.css';

/** A narrower ring is not worth its metal: common practice, no source. */
const LEAST_RING_MM = 15;

interface PlateListRingProps {
  readonly plate: PlateSpec;
  readonly diameterMm: number;
}

/** What a plate leaves of the head for stray paint, and a ring that keeps it clean. */
export function MaskRing({ plate, diameterMm }: PlateListRingProps) {
  const design = useDesign();
  const act = useAct();
  const free = oversprayOf(design, diameterMm);
  if (!free || plate.masks !== undefined || free.ringMm < LEAST_RING_MM) return null;
  const offered = design.plates.length < MOST_PLATES && !design.plates.some((p) => p.masks === plate.id);
  return (
    <>
      <p className={css.note}>{t('barrel.mask.open', { percent: formatNumber(free.share * 100, 0) })}</p>
      {offered && (
        <div>
          <Button kind="plain" onClick={() => act((d) => addMaskRing(d, plate.id))}>
            <Plus size={16} aria-hidden /> {t('barrel.mask.add')}
          </Button>
        </div>
      )}
    </>
  );
}
