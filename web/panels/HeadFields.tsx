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
import { t } from '../words/t.ts';
import css from './fields.module.css';
import { HeadPicture } from './HeadPicture.tsx';
import { barrelName } from '../ui/record-words.ts';

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
        legend={t('size.how')}
        showLegend
        value={source.kind}
        options={[
          { value: 'measured', label: t('size.measured') },
          { value: 'barrel', label: t('size.barrel') },
        ]}
        onChange={change}
      />
      {source.kind === 'measured' ? (
        <>
          <HeadPicture />
          <div className={css.pair}>
            <LengthField
              label={t('size.along')}
              mm={source.alongMm}
              unit={unit}
              leastMm={-FARTHEST_MM}
              mostMm={FARTHEST_MM}
              onDone={done}
              onChange={(mm) => act((d) => measureHead(d, mm, source.acrossMm))}
            />
            <LengthField
              label={t('size.across')}
              mm={source.acrossMm}
              unit={unit}
              leastMm={-FARTHEST_MM}
              mostMm={FARTHEST_MM}
              onDone={done}
              onChange={(mm) => act((d) => measureHead(d, source.alongMm, mm))}
            />
          </div>
          <p className={css.note}>{t('size.measureHint')}</p>
        </>
      ) : (
        <>
          <Field label={t('size.barrelLabel')}>
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
                    {barrelName(b)}
                  </option>
                ))}
              </select>
            )}
          </Field>
          <p className={css.warning}>{t('size.barrelWarning')}</p>
        </>
      )}
      <Fold title={t('size.moreHead')}>
        <div className={css.pair}>
          <LengthField
            label={t('size.clearance')}
            hint={t('size.clearanceHint')}
            mm={head.clearanceMm}
            unit={unit}
            leastMm={0}
            mostMm={200}
            onDone={done}
            onChange={(clearanceMm) => act((d) => setHead(d, { clearanceMm }))}
          />
          <LengthField
            label={t('size.crown')}
            hint={t('size.crownHint')}
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
