import { useStore } from 'zustand';
import type { BarrelState, View } from '../../state/ui-store.ts';
import { Choice } from '../../ui/fields/Choice.tsx';
import { VerdictMark } from '../../ui/VerdictMark.tsx';
import { t } from '../../words/t.ts';
import { useCurrentPlate, useDesign, usePage, usePlates, useUi } from '../../page/page-context.ts';
import css from './StageBar.module.css';

/** Which plate, and whether it lies flat or on its barrel. */
export function StageBar() {
  const { ui } = usePage();
  const design = useDesign();
  const { spec } = useCurrentPlate();
  const plates = usePlates((s) => s.plates);
  const view = useUi((s) => s.view);
  const barrelState = useStore(ui, (s) => s.barrelState);
  return (
    <div className={css.bar}>
      {design.plates.length > 1 && (
        <Choice
          legend={t('page.plates.legend')}
          quiet
          value={spec.id}
          options={design.plates.map((p) => {
            const verdict = plates[p.id]?.verdict;
            return {
              value: p.id,
              label: (
                <>
                  <bdi>{p.name}</bdi>
                  {verdict !== undefined && <VerdictMark verdict={verdict} size={16} />}
                </>
              ),
            };
          })}
          onChange={(plateId) => ui.getState().set({ plateId, litFinding: undefined })}
        />
      )}
      <Choice<View>
        legend={t('page.views.legend')}
        quiet
        value={view}
        options={{ plate: t('page.views.plate'), barrel: t('page.views.barrel') }}
        onChange={(to) => ui.getState().set({ view: to })}
      />
      {view === 'barrel' && (
        <div className={css.states}>
          <Choice<BarrelState>
            legend={t('page.barrelStates.legend')}
            value={barrelState}
            options={{
              plate: t('page.barrelStates.plate'),
              paint: t('page.barrelStates.paint'),
              char: t('page.barrelStates.char'),
            }}
            onChange={(to) => ui.getState().set({ barrelState: to })}
          />
        </div>
      )}
    </div>
  );
}
