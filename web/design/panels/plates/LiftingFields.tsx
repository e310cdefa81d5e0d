import { placeLifting } from '../../../../geometry/checks/place-lifting.ts';
import type { Design, Lifting } from '../../../../geometry/design/schema.ts';
import type { Change } from '../../../state/change.ts';
import { setLifting, USUAL_LIFTING } from '../../../state/actions/plates/set-lifting.ts';
import { useAct, useCurrentPlate, useDesign, useStep } from '../../../page/page-context.ts';
import { Choice } from '../../../ui/fields/Choice.tsx';
import { DegreesField } from '../../../ui/fields/DegreesField.tsx';
import { NumberField } from '../../../ui/fields/NumberField.tsx';
import { PercentField } from '../../../ui/fields/PercentField.tsx';
import { t } from '../../../words/t.ts';
import css from '../../../ui/fields.module.css';

/** Openings to take plates out of the head by: which, how many, and where. */
export function LiftingFields() {
  const { lifting } = useDesign();
  const act = useAct();
  const step = useStep();
  const { plate } = useCurrentPlate();
  // Where the lettering leaves room for them.
  const free = !lifting && plate ? placeLifting(plate) : undefined;
  const withPart = (d: Design, part: Partial<Lifting>): Change =>
    setLifting(d, { ...(d.lifting ?? USUAL_LIFTING), ...part });
  const set = (part: Partial<Lifting>): void => act((d) => withPart(d, part));

  function choose(shape: 'none' | Lifting['shape']): void {
    if (shape === 'none') step((d) => setLifting(d, undefined));
    else step((d) => withPart(d, shape === 'holes' && !lifting ? { ...free, shape } : { shape }));
  }

  return (
    <div className={css.stack}>
      <Choice
        legend={t('barrel.lifting.legend')}
        value={lifting?.shape ?? 'none'}
        options={{ none: t('barrel.lifting.none'), holes: t('barrel.lifting.holes'), slots: t('barrel.lifting.slots') }}
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
              onChange={(count) => set({ count })}
            />
            <PercentField
              label={t('barrel.lifting.at')}
              share={lifting.at}
              least={0}
              most={100}
              onChange={(at) => set({ at })}
            />
          </div>
          <DegreesField
            label={t('barrel.lifting.turn')}
            hint={t('barrel.lifting.turnHint')}
            deg={lifting.firstDeg}
            step={5}
            onChange={(firstDeg) => set({ firstDeg })}
          />
          <p className={css.note}>{t('barrel.lifting.hint')}</p>
        </>
      )}
    </div>
  );
}
