import { setBand } from '../../../state/actions/elements/set-band.ts';
import { useAct, useCurrentPlate, usePage, useUi } from '../../../page/page-context.ts';
import { LengthField } from '../../../ui/LengthField.tsx';
import { t } from '../../../words/t.ts';
import css from '../../../ui/fields.module.css';
import { useRadiusMm } from '../../../page/use-radius.ts';

interface BandFieldsProps {
  readonly id: string;
  readonly inner: number;
  readonly outer: number;
}

/** Least width of a band, share of the radius. */
const LEAST_BAND = 0.005;

/** The two radii between which a ring text or border stands, in the person's unit on the plate looked at. */
export function BandFields({ id, inner, outer }: BandFieldsProps) {
  const act = useAct();
  const unit = useUi((s) => s.unit);
  const { design } = usePage();
  const { spec } = useCurrentPlate();
  const radius = useRadiusMm();
  const done = (): void => design.getState().closeMerge();
  return (
    <div className={css.stack}>
      <div className={css.pair}>
        <LengthField
          label={t('details.bandOuter')}
          mm={outer * radius}
          unit={unit}
          leastMm={Math.min(radius, (inner + LEAST_BAND) * radius)}
          mostMm={radius}
          onDone={done}
          onChange={(mm) => act((d) => setBand(d, id, inner, mm / radius))}
        />
        <LengthField
          label={t('details.bandInner')}
          mm={inner * radius}
          unit={unit}
          leastMm={0}
          mostMm={Math.max(0, (outer - LEAST_BAND) * radius)}
          onDone={done}
          onChange={(mm) => act((d) => setBand(d, id, mm / radius, outer))}
        />
      </div>
      <p className={css.note}>{t('details.bandHint', { plate: spec.name })}</p>
    </div>
  );
}
