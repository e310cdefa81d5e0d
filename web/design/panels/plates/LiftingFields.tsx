import { placeLifting } from '../../../../geometry/checks/place-lifting.ts';
import type { Lifting } from '../../../../geometry/design/schema.ts';
import { setLifting, USUAL_LIFTING } from '../../../state/actions/plates/set-lifting.ts';
import { useAct, useCurrentPlate, useDesign, usePage } from '../../../page/page-context.ts';
import { Choice } from '../../../ui/Choice.tsx';
import { formatNumber } from '../../../words/say/format-number.ts';
import { NumberField } from '../../../ui/NumberField.tsx';
import { t } from '../../../words/t.ts';
import css from '../../../ui/fields.module.css';

/** Openings to take plates out of the head by: which, how many, and where. */
export function LiftingFields() {
  const { lifting } = useDesign();
  const { design } = usePage();
  const act = useAct();
  const done = (): void => design.getState().closeMerge();
  const { plate } = useCurrentPlate();
  // Where the lettering leaves room for them.
  const free = !lifting && plate ? placeLifting(plate) : undefined;
  const set = (part: Partial<Lifting>): void => act((d) => setLifting(d, { ...(d.lifting ?? USUAL_LIFTING), ...part }));

  function choose(shape: 'none' | Lifting['shape']): void {
    if (shape === 'none') act((d) => setLifting(d, undefined));
    else set(shape === 'holes' && !lifting ? { ...free, shape } : { shape });
    done();
  }

  return (
    <div className={css.stack}>
      <Choice
        legend={t('barrel.lifting.legend')}
        value={lifting?.shape ?? 'none'}
        options={[
          { value: 'none', label: t('barrel.lifting.none') },
          { value: 'holes', label: t('barrel.lifting.holes') },
          { value: 'slots', label: t('barrel.lifting.slots') },
        ]}
        onChange={choose}
      />
      {lifting && (
        <>
          <div className={css.pair}>
            <NumberField
              label={t('barrel.lifting.count')}
              value={lifting.count}
              least={1}
              most={6}
              whole
              onDone={done}
              onChange={(count) => set({ count })}
            />
            <NumberField
              label={t('barrel.lifting.at')}
              value={lifting.at * 100}
              least={0}
              most={100}
              unitLabel={t('details.percent')}
              show={(value) => formatNumber(value, 1)}
              onDone={done}
              onChange={(percent) => set({ at: percent / 100 })}
            />
          </div>
          <NumberField
            label={t('barrel.lifting.turn')}
            hint={t('barrel.lifting.turnHint')}
            value={lifting.firstDeg}
            least={-360}
            most={360}
            step={5}
            unitLabel="°"
            onDone={done}
            onChange={(firstDeg) => set({ firstDeg })}
          />
          <p className={css.note}>{t('barrel.lifting.hint')}</p>
        </>
      )}
    </div>
  );
}
