import type { Design } from '../../../geometry/design/schema.ts';
import { BarrelDrawing } from '../../barrel/BarrelDrawing.tsx';
import { lengthWords } from '../../words/say/format-number.ts';
import { useUi } from '../../page/page-context.ts';
import { PlatePicture } from '../../ui/PlatePicture.tsx';
import { t } from '../../words/t.ts';
import css from './OptionPicture.module.css';
import { useProof } from '../state/proof-context.ts';
import type { PlannedDesign } from '../state/planned-design.ts';

interface OptionPictureProps {
  readonly design: Design;
  readonly planned: PlannedDesign;
  readonly name: string;
}

/** The first plate of an option: its mark on the barrel's end, or the plate itself. */
export function OptionPicture({ design, planned, name }: OptionPictureProps) {
  const view = useProof((s) => s.view);
  const unit = useUi((s) => s.unit);
  if (planned.state !== 'ready') {
    return <div className={css.empty} data-working={planned.state === 'working' || undefined} />;
  }
  const [first] = planned.plates.filter((p) => design.plates.some((s) => s.id === p.plate.plateId && !s.masks));
  if (first === undefined) return <div className={css.empty} />;
  const { plate, barrel } = first;
  const across = lengthWords(plate.diameterMm, unit);
  if (view === 'plate') {
    return (
      <div className={css.picture} role="img" aria-label={t('proof.view.plateLabel', { name, across })}>
        <PlatePicture plate={plate} />
      </div>
    );
  }
  return (
    <BarrelDrawing picture={barrel} className={css.picture} label={t('proof.view.barrelLabel', { name, across })} />
  );
}
