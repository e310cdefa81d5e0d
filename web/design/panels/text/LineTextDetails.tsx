import type { LineText } from '../../../../geometry/design/schema.ts';
import { setLineText } from '../../../state/actions/elements/set-line-text.ts';
import { useAct, usePage, useUi } from '../../../page/page-context.ts';
import { Choice } from '../../../ui/Choice.tsx';
import { LengthField } from '../../../ui/LengthField.tsx';
import { NumberField } from '../../../ui/NumberField.tsx';
import { t } from '../../../words/t.ts';
import { FaceLink } from './FaceLink.tsx';
import css from '../../../ui/fields.module.css';
import { MannerField } from './MannerField.tsx';
import { TrackingField } from './TrackingField.tsx';
import { useRadiusMm } from '../../../page/use-radius.ts';

const FIRST_WIDTH = 1;

/** Where a line of text stands, how tall it is and how it is spaced. */
export function LineTextDetails({ element }: { readonly element: LineText }) {
  const act = useAct();
  const unit = useUi((s) => s.unit);
  const { design } = usePage();
  const radius = useRadiusMm();
  const done = (): void => design.getState().closeMerge();
  const set = (part: Parameters<typeof setLineText>[2]): void => act((d) => setLineText(d, element.id, part));
  return (
    <>
      <FaceLink id={element.id} face={element.face} />
      <div className={css.pair}>
        <LengthField
          label={t('details.height')}
          mm={element.capHeight * radius}
          unit={unit}
          leastMm={0.005 * radius}
          mostMm={2 * radius}
          onDone={done}
          onChange={(mm) => set({ capHeight: mm / radius })}
        />
        <LengthField
          label={t('details.y')}
          mm={element.y * radius}
          unit={unit}
          leastMm={-radius}
          mostMm={radius}
          onDone={done}
          onChange={(mm) => set({ y: mm / radius })}
        />
        <LengthField
          label={t('details.x')}
          mm={element.x * radius}
          unit={unit}
          leastMm={-radius}
          mostMm={radius}
          onDone={done}
          onChange={(mm) => set({ x: mm / radius })}
        />
        <NumberField
          label={t('details.turn')}
          value={element.turnDeg}
          least={-360}
          most={360}
          unitLabel={t('details.degrees')}
          onDone={done}
          onChange={(turnDeg) => set({ turnDeg })}
        />
      </div>
      <TrackingField id={element.id} tracking={element.tracking} />
      <Choice
        legend={t('details.fit')}
        showLegend
        value={element.fit === 'natural' ? 'natural' : 'width'}
        options={[
          { value: 'natural', label: t('details.natural') },
          { value: 'width', label: t('details.width') },
        ]}
        onChange={(fit) => set({ fit: fit === 'natural' ? 'natural' : { width: FIRST_WIDTH } })}
      />
      {element.fit !== 'natural' && (
        <LengthField
          label={t('details.widthMm')}
          mm={element.fit.width * radius}
          unit={unit}
          leastMm={0.01 * radius}
          mostMm={2 * radius}
          onDone={done}
          onChange={(mm) => set({ fit: { width: mm / radius } })}
        />
      )}
      <MannerField element={element} />
    </>
  );
}
