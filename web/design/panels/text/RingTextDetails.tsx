import type { RingText } from '../../../../geometry/design/schema.ts';
import { type RingTextPart, setRingText } from '../../../state/actions/set-fields.ts';
import { useAct } from '../../../page/page-context.ts';
import { Choice } from '../../../ui/fields/Choice.tsx';
import { DegreesField } from '../../../ui/fields/DegreesField.tsx';
import { t } from '../../../words/t.ts';
import { BandFields } from './BandFields.tsx';
import { FaceLink } from './FaceLink.tsx';
import css from '../../../ui/fields.module.css';
import { MannerField } from './MannerField.tsx';
import { TrackingField } from './TrackingField.tsx';

const FIRST_SPAN_DEG = 120;

/** Where a ring text stands, which way it reads, how it is spaced. */
export function RingTextDetails({ element }: { readonly element: RingText }) {
  const act = useAct();
  const set = (part: RingTextPart): void => act((d) => setRingText(d, element.id, part));
  const place =
    element.middleDeg === 0 && element.reads === 'outward'
      ? 'top'
      : Math.abs(element.middleDeg) === 180 && element.reads === 'inward'
        ? 'bottom'
        : 'other';
  return (
    <>
      <FaceLink id={element.id} face={element.face} />
      <Choice
        legend={t('details.where')}
        showLegend
        value={place === 'other' ? undefined : place}
        options={{ top: t('details.places.top'), bottom: t('details.places.bottom') }}
        onChange={(to) => set(to === 'top' ? { middleDeg: 0, reads: 'outward' } : { middleDeg: 180, reads: 'inward' })}
      />
      <BandFields id={element.id} inner={element.inner} outer={element.outer} />
      <div className={css.pair}>
        <DegreesField
          label={t('details.middle')}
          deg={element.middleDeg}
          onChange={(middleDeg) => set({ middleDeg })}
        />
        <TrackingField id={element.id} tracking={element.tracking} />
      </div>
      <Choice
        legend={t('details.reads')}
        showLegend
        value={element.reads}
        options={{ outward: t('details.outward'), inward: t('details.inward') }}
        onChange={(reads) => set({ reads })}
      />
      <Choice
        legend={t('details.fit')}
        showLegend
        value={element.fit === 'natural' ? 'natural' : 'span'}
        options={{ natural: t('details.natural'), span: t('details.span') }}
        onChange={(fit) => set({ fit: fit === 'natural' ? 'natural' : { spanDeg: FIRST_SPAN_DEG } })}
      />
      {element.fit !== 'natural' && (
        <DegreesField
          label={t('details.spanDeg')}
          deg={element.fit.spanDeg}
          least={1}
          onChange={(spanDeg) => set({ fit: { spanDeg } })}
        />
      )}
      <MannerField element={element} />
    </>
  );
}
