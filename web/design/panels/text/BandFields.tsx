import { setBand } from '../../../state/actions/elements/set-band.ts';
import { useAct, useCurrentPlate } from '../../../page/page-context.ts';
import { t } from '../../../words/t.ts';
import css from '../../../ui/fields.module.css';
import { ShareField } from './ShareField.tsx';

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
  const { spec } = useCurrentPlate();
  return (
    <div className={css.stack}>
      <div className={css.pair}>
        <ShareField
          label={t('details.bandOuter')}
          share={outer}
          least={Math.min(1, inner + LEAST_BAND)}
          most={1}
          onChange={(to) => act((d) => setBand(d, id, inner, to))}
        />
        <ShareField
          label={t('details.bandInner')}
          share={inner}
          least={0}
          most={Math.max(0, outer - LEAST_BAND)}
          onChange={(to) => act((d) => setBand(d, id, to, outer))}
        />
      </div>
      <p className={css.note}>{t('details.bandHint', { plate: spec.name })}</p>
    </div>
  );
}
