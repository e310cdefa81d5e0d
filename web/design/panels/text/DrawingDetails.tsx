import type { Artwork, Motif } from '../../../../geometry/design/schema.ts';
import { motifById } from '../../../../geometry/motifs/catalogue.ts';
import { type DrawingPart, setDrawing, setMotifOption } from '../../../state/actions/set-fields.ts';
import { useAct, useStep } from '../../../page/page-context.ts';
import { optionName } from '../../../page/motif-words.ts';
import { Slider } from '../../../ui/fields/Slider.tsx';
import { Choice } from '../../../ui/fields/Choice.tsx';
import { NumberField } from '../../../ui/fields/NumberField.tsx';
import { t } from '../../../words/t.ts';
import { AddDrawing } from './AddDrawing.tsx';
import layout from '../../../ui/layout.module.css';
import css from './DrawingDetails.module.css';
import { MannerField } from './MannerField.tsx';
import { PositionFields } from './PositionFields.tsx';

const FIRST_COUNT = 6;
/** Nearer to the middle than this share of the radius, copies around it would lie on each other. */
const IN_THE_MIDDLE = 0.05;

/** Where a motif or drawing stands, how large and how often, and what can be set about it. */
export function DrawingDetails({ element }: { readonly element: Motif | Artwork }) {
  const act = useAct();
  const step = useStep();
  const set = (part: DrawingPart): void => act((d) => setDrawing(d, element.id, part));
  const motif = element.kind === 'motif' ? motifById(element.motif) : undefined;
  return (
    <>
      <PositionFields
        heightLabel={t('artwork.height')}
        height={element.size}
        at={element}
        onHeight={(size) => set({ size })}
        onPlace={set}
      />
      {element.kind === 'motif' &&
        motif?.options.map((option) => (
          <Slider
            key={option.id}
            label={optionName(motif, option)}
            value={element.options?.[option.id] ?? option.usual}
            least={option.least}
            most={option.most}
            step={option.step}
            onChange={(value) => act((d) => setMotifOption(d, element.id, option.id, value))}
          />
        ))}
      <label className={css.tick}>
        <input
          type="checkbox"
          checked={element.mirrored === true}
          onChange={(e) => step((d) => setDrawing(d, element.id, { mirrored: e.target.checked }))}
        />
        {t('artwork.mirrored')}
      </label>
      <Choice
        legend={t('artwork.around')}
        showLegend
        value={element.around === 'once' ? 'once' : 'round'}
        options={{ once: t('artwork.once'), round: t('artwork.round') }}
        onChange={(how) => {
          // In the middle all would lie on each other: out to where they go round.
          const off = Math.hypot(element.x, element.y) < IN_THE_MIDDLE ? { x: 0, y: 0.6 } : {};
          const part: DrawingPart = how === 'once' ? { around: 'once' } : { around: { count: FIRST_COUNT }, ...off };
          step((d) => setDrawing(d, element.id, part));
        }}
      />
      {element.around !== 'once' && (
        <NumberField
          label={t('details.countNumber')}
          value={element.around.count}
          least={2}
          most={72}
          whole
          onChange={(count) => set({ around: { count } })}
        />
      )}
      <MannerField element={element} />
      <div className={layout.buttons} role="group" aria-label={t('artwork.replace')}>
        <AddDrawing inPlaceOf={element.id} />
      </div>
    </>
  );
}
