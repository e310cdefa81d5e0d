import type { Artwork, Motif } from '../../../../geometry/design/schema.ts';
import { motifById } from '../../../../geometry/motifs/catalogue.ts';
import { type DrawingPart, setDrawing, setMotifOption } from '../../../state/actions/elements/set-drawing.ts';
import { useAct, usePage, useUi } from '../../../page/page-context.ts';
import { optionName } from '../../../page/motif-words.ts';
import { Slider } from '../../../ui/Slider.tsx';
import { Choice } from '../../../ui/Choice.tsx';
import { LengthField } from '../../../ui/LengthField.tsx';
import { NumberField } from '../../../ui/NumberField.tsx';
import { t } from '../../../words/t.ts';
import { AddDrawing } from './AddDrawing.tsx';
import css from './DrawingDetails.module.css';
import fields from '../../../ui/fields.module.css';
import { MannerField } from './MannerField.tsx';
import { useRadiusMm } from '../../../page/use-radius.ts';

const FIRST_COUNT = 6;
/** Nearer to the middle than this share of the radius, copies around it would lie on each other. */
const IN_THE_MIDDLE = 0.05;

/** Where a motif or drawing stands, how large and how often, and what can be set about it. */
export function DrawingDetails({ element }: { readonly element: Motif | Artwork }) {
  const act = useAct();
  const unit = useUi((s) => s.unit);
  const { design } = usePage();
  const radius = useRadiusMm();
  const done = (): void => design.getState().closeMerge();
  const set = (part: DrawingPart): void => act((d) => setDrawing(d, element.id, part));
  const motif = element.kind === 'motif' ? motifById(element.motif) : undefined;
  return (
    <>
      <div className={fields.pair}>
        <LengthField
          label={t('artwork.height')}
          mm={element.size * radius}
          unit={unit}
          leastMm={0.005 * radius}
          mostMm={2 * radius}
          onDone={done}
          onChange={(mm) => set({ size: mm / radius })}
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
        <LengthField
          label={t('details.x')}
          mm={element.x * radius}
          unit={unit}
          leastMm={-radius}
          mostMm={radius}
          onDone={done}
          onChange={(mm) => set({ x: mm / radius })}
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
      </div>
      {element.kind === 'motif' &&
        motif?.options.map((option) => (
          <Slider
            key={option.id}
            label={optionName(motif, option)}
            value={element.options?.[option.id] ?? option.usual}
            least={option.least}
            most={option.most}
            step={option.step}
            onDone={done}
            onChange={(value) => act((d) => setMotifOption(d, element.id, option.id, value))}
          />
        ))}
      <label className={css.tick}>
        <input
          type="checkbox"
          checked={element.mirrored === true}
          onChange={(e) => {
            done();
            set({ mirrored: e.target.checked });
            done();
          }}
        />
        {t('artwork.mirrored')}
      </label>
      <Choice
        legend={t('artwork.around')}
        showLegend
        value={element.around === 'once' ? 'once' : 'round'}
        options={[
          { value: 'once', label: t('artwork.once') },
          { value: 'round', label: t('artwork.round') },
        ]}
        onChange={(how) => {
          done();
          // In the middle all would lie on each other: out to where they go round.
          const off = Math.hypot(element.x, element.y) < IN_THE_MIDDLE ? { x: 0, y: 0.6 } : {};
          set(how === 'once' ? { around: 'once' } : { around: { count: FIRST_COUNT }, ...off });
          done();
        }}
      />
      {element.around !== 'once' && (
        <NumberField
          label={t('details.countNumber')}
          value={element.around.count}
          least={2}
          most={72}
          whole
          onDone={done}
          onChange={(count) => set({ around: { count } })}
        />
      )}
      <MannerField element={element} />
      <div className={css.replace} role="group" aria-label={t('artwork.replace')}>
        <AddDrawing inPlaceOf={element.id} />
      </div>
    </>
  );
}
