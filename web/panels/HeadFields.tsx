import { BARRELS } from '../../geometry/barrel/barrels.ts';
import { headDiameter } from '../../geometry/barrel/blank.ts';
import { measureHead } from '../actions/measure-head.ts';
import { pickBarrel } from '../actions/pick-barrel.ts';
import { setHead } from '../actions/set-head.ts';
import { useAct, useDesign, usePage, useUi } from '../app/page-context.ts';
import { Choice } from '../ui/Choice.tsx';
import { Field } from '../ui/Field.tsx';
import fieldCss from '../ui/Field.module.css';
import { Fold } from '../ui/Fold.tsx';
import { LengthField } from '../ui/LengthField.tsx';
import { words } from '../words/en.ts';
import css from './fields.module.css';
import { HeadPicture } from './HeadPicture.tsx';

const FIRST_BARREL = 'american-53';
const FARTHEST_MM = 100_000;

/** The head, measured two ways, or taken from the table of barrels with the plain warning to measure first. */
export function HeadFields() {
  const { head } = useDesign();
  const unit = useUi((s) => s.unit);
  const { design } = usePage();
  const act = useAct();
  const done = (): void => design.getState().closeMerge();
  const { source } = head;

  function change(how: 'measured' | 'barrel'): void {
    if (how === source.kind) return;
    const { smallerMm, largerMm } = headDiameter(head);
    act((d) => (how === 'measured' ? measureHead(d, largerMm, smallerMm) : pickBarrel(d, FIRST_BARREL)));
  }

  return (
    <div className={css.stack}>
      <Choice
        legend={words.size.how}
        showLegend
        value={source.kind}
        options={[
          { value: 'measured', label: words.size.measured },
          { value: 'barrel', label: words.size.barrel },
        ]}
        onChange={change}
      />
      {source.kind === 'measured' ? (
        <>
          <HeadPicture />
          <div className={css.pair}>
            <LengthField
              label={words.size.along}
              mm={source.alongMm}
              unit={unit}
              leastMm={-FARTHEST_MM}
              mostMm={FARTHEST_MM}
              onDone={done}
              onChange={(mm) => act((d) => measureHead(d, mm, source.acrossMm))}
            />
            <LengthField
              label={words.size.across}
              mm={source.acrossMm}
              unit={unit}
              leastMm={-FARTHEST_MM}
              mostMm={FARTHEST_MM}
              onDone={done}
              onChange={(mm) => act((d) => measureHead(d, source.alongMm, mm))}
            />
          </div>
          <p className={css.note}>{words.size.measureHint}</p>
        </>
      ) : (
        <>
          <Field label={words.size.barrelLabel}>
            {({ id }) => (
              <select
                id={id}
                className={fieldCss.control}
                value={source.barrel}
                onChange={(e) => {
                  const { value } = e.target;
                  act((d) => pickBarrel(d, value));
                }}
              >
                {!BARRELS.some((b) => b.id === source.barrel) && <option value={source.barrel}>{source.barrel}</option>}
                {BARRELS.map((b) => (
                  <option key={b.id} value={b.id}>
                    {b.name}
                  </option>
                ))}
              </select>
            )}
          </Field>
          <p className={css.warning}>{words.size.barrelWarning}</p>
        </>
      )}
      <Fold title={words.size.moreHead}>
        <div className={css.pair}>
          <LengthField
            label={words.size.clearance}
            hint={words.size.clearanceHint}
            mm={head.clearanceMm}
            unit={unit}
            leastMm={0}
            mostMm={200}
            onDone={done}
            onChange={(clearanceMm) => act((d) => setHead(d, { clearanceMm }))}
          />
          <LengthField
            label={words.size.crown}
            hint={words.size.crownHint}
            mm={head.crownMm}
            unit={unit}
            leastMm={-100}
            mostMm={200}
            onDone={done}
            onChange={(crownMm) => act((d) => setHead(d, { crownMm }))}
          />
        </div>
      </Fold>
    </div>
  );
}
