import { usePage, usePlates, useCurrentPlate, useDesign, useUi } from '../../page/page-context.ts';
import { PlateStage } from '../stage/PlateStage.tsx';
import { stageWords } from '../stage/words.ts';
import { later } from '../../ui/later.tsx';
import { t } from '../../words/t.ts';
import { BridgeTools } from './BridgeTools.tsx';
import { GapNote, hasGap, lyingOn } from './GapNote.tsx';
import { PlacingTools } from './PlacingTools.tsx';
import { PlateSummary } from './PlateSummary.tsx';
import '../../page/semibold.css';
import css from './StageArea.module.css';
import { useBridgeWork } from './use-bridge-work.ts';
import { usePlacing } from './use-placing.ts';
import { useTheme } from '../../page/use-theme.ts';

const BarrelPlace = later(async () => (await import('../../barrel/BarrelPlace.tsx')).BarrelPlace);

/** The plate, large and round, or the barrel end it lies on. */
export function StageArea() {
  const { ui } = usePage();
  const design = useDesign();
  const { spec, plate } = useCurrentPlate();
  const plates = usePlates((s) => s.plates);
  const busy = usePlates((s) => s.busy);
  const failed = usePlates((s) => s.trouble ?? s.halt) !== undefined;
  const view = useUi((s) => s.view);
  const state = useUi((s) => s.barrelState);
  const lit = useUi((s) => s.litFinding);
  const unit = useUi((s) => s.unit);
  const theme = useTheme();
  const bridging = useUi((s) => s.bridging) && view === 'plate';
  const work = useBridgeWork();
  const placing = usePlacing();
  const byHand = useUi((s) => s.placing || s.several) && view === 'plate' && !bridging && plate !== undefined;
  const gaps = useUi((s) => s.gaps) && hasGap(design);
  const surface = lyingOn(design, plate);
  const closeUp = useUi((s) => s.closeUp);
  const findings = plate?.findings ?? NONE;
  return (
    <div
      id="stage"
      className={css.stage}
      data-bridging={bridging || undefined}
      data-placing={byHand || undefined}
      tabIndex={-1}
    >
      {view === 'plate' ? (
        <>
          <div className={css.plate}>
            <PlateStage
              plate={plate}
              busy={busy}
              placing={placing}
              findings={findings}
              litFinding={lit === undefined ? undefined : findings[lit]}
              onPickFinding={(index) => ui.getState().set({ litFinding: index, findingsOpen: true })}
              units={unit}
              theme={theme}
              words={plate === undefined ? { ...stageWords(), empty: failed ? '' : t('stage.loading') } : stageWords()}
              showBridges={bridging}
              gapOn={gaps ? surface : undefined}
              work={
                bridging
                  ? {
                      chosen: work.chosen,
                      adding: work.adding,
                      show: closeUp,
                      onChoose: work.choose,
                      onMove: work.move,
                      onAdd: work.addAt,
                      onCommand: work.obey,
                    }
                  : undefined
              }
            />
            <button
              type="button"
              className={css.toggle}
              aria-pressed={bridging}
              onClick={() => ui.getState().set({ bridging: !bridging, bridgeKey: undefined, addingBridge: false })}
            >
              <BridgeSign />
              {t('bridges.toggle')}
            </button>
            {hasGap(design) && plate !== undefined && (
              <div className={css.gap}>
                <button
                  type="button"
                  className={css.toggle}
                  aria-pressed={gaps}
                  onClick={() => ui.getState().set({ gaps: !gaps })}
                >
                  {t('barrel.gap.toggle')}
                </button>
                {gaps && (
                  <p className={css.gapNote} role="status">
                    <GapNote plate={plate} surface={surface} />
                  </p>
                )}
              </div>
            )}
          </div>
          {bridging && <BridgeTools work={work} />}
          {byHand && <PlacingTools placing={placing} />}
          <p className="sr-only" role="status" data-testid="placing-status">
            {bridging ? '' : placing.said}
          </p>
        </>
      ) : (
        <BarrelPlace
          waiting={<p className={css.wait}>{t('stage.loading')}</p>}
          design={design}
          plate={plate}
          plates={design.plates.flatMap((p) => plates[p.id] ?? [])}
          state={state}
          name={spec.name}
        />
      )}
      <PlateSummary />
    </div>
  );
}

/** A ring held by two bars. */
function BridgeSign() {
  return (
    <svg width="18" height="18" viewBox="0 0 18 18" fill="none" stroke="currentColor" aria-hidden>
      <path d="M7.2 2.3a7 7 0 0 0 0 13.4M10.8 2.3a7 7 0 0 1 0 13.4" strokeWidth="2.2" />
    </svg>
  );
}

const NONE: readonly never[] = [];
