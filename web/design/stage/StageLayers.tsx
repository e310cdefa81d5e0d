import { useMemo } from 'react';
import { Layer, Stage } from 'react-konva';
import type { Surface } from '../../../geometry/barrel/surface.ts';
import type { Finding } from '../../../geometry/findings.ts';
import type { Extent } from '../../../geometry/layout/placed.ts';
import type { PlateResult } from '../../../geometry/plate/plate.ts';
import { traceRing } from '../../barrel/painting/trace.ts';
import type { SizePx } from '../../ui/size.ts';
import { DragLayer } from './DragLayer.tsx';
import type { DragStore } from './carry/drag-store.ts';
import { ElementHandles } from './ElementHandles.tsx';
import { GapTint } from './GapTint.tsx';
import { BridgeTint, ElementOutline, LitPlace } from './Marks.tsx';
import type { StagePalette } from './palette.ts';
import { Picture } from './Picture.tsx';
import type { Pin } from './pins.ts';
import { Pins } from './Pins.tsx';
import { unbridgedOf, type PlatePaths } from './plate-paths.ts';
import type { Units } from './ruler.ts';
import { RulerMarks } from './RulerMarks.tsx';
import { Rulers } from './Rulers.tsx';
import { TroubleTint, troublePath } from './TroubleTint.tsx';
import { usePulse } from './use-pulse.ts';
import type { Scene } from './use-scene.ts';
import type { StageBridgesHand } from './use-stage-bridges.tsx';
import type { View } from './view.ts';

export interface StageLayersProps {
  readonly size: SizePx;
  readonly view: View;
  readonly worldMm: number;
  readonly scene: Scene;
  readonly plate: PlateResult | undefined;
  readonly paths: PlatePaths | undefined;
  readonly chosenIds: readonly string[];
  readonly lockedIds: readonly string[];
  readonly hoverId: string | undefined;
  /** What is chosen is shown by the drag's own layer. */
  readonly dragging: boolean;
  /** The chosen text is being typed: nothing else is to be taken hold of. */
  readonly typing: boolean;
  readonly drags: DragStore;
  readonly hand: StageBridgesHand | undefined;
  readonly showBridges: boolean;
  readonly findings: readonly Finding[];
  readonly litFinding: Finding | undefined;
  readonly pins: readonly Pin[];
  readonly units: Units;
  readonly unitWord: string;
  readonly palette: StagePalette;
  /** What the plate lies on, where the gap to it is shown. */
  readonly gapOn: Surface | undefined;
}

/** Little room: the barrel needs what rulers would take. */
const NARROW_PX = 480;

/** The canvas: the picture, what is dragged over it, and marks on top. Draws, and decides nothing. */
export function StageLayers(props: StageLayersProps) {
  const { size, view, worldMm, scene, plate, paths, chosenIds, hoverId, hand, palette, litFinding } = props;
  const { showBridges, findings, pins, dragging } = props;
  const strength = usePulse(litFinding);
  const lit = litFinding ? findings.indexOf(litFinding) : -1;
  const radiusMm = plate ? plate.diameterMm / 2 : 0;
  const chosen = useMemo(() => extentsOf(plate, chosenIds), [plate, chosenIds]);
  const [first] = chosen;

  const shownBars = useMemo(() => {
    const bars = plate?.bridges.filter(
      (b) => showBridges || b.elementIds.some((id) => chosenIds.includes(id) || id === hoverId),
    );
    if (!plate || !bars || bars.length === 0) return undefined;
    const path = new Path2D();
    for (const bar of bars) traceRing(path, bar.outline);
    return { bars: path, unbridged: unbridgedOf(plate) };
  }, [plate, showBridges, chosenIds, hoverId]);
  const trouble = useMemo(
    () => (plate && !dragging ? troublePath(plate, findings, chosenIds) : undefined),
    [plate, findings, chosenIds, dragging],
  );

  return (
    <Stage width={size.width} height={size.height} listening={false}>
      <Layer listening={false}>
        <Picture scene={scene} view={view} />
        {plate && paths && (
          <Rulers
            view={view}
            widthPx={size.width}
            radiusMm={radiusMm}
            worldMm={worldMm}
            tight={size.width < NARROW_PX || size.height < NARROW_PX}
            openings={plate.openings}
            metal={paths.metal}
            units={props.units}
            unitWord={props.unitWord}
            palette={palette}
          />
        )}
      </Layer>
      <DragLayer store={props.drags} ground={scene.ground} size={size} view={view} palette={palette} />
      <Layer listening={false}>
        {plate && (
          <>
            {props.gapOn && !dragging && (
              <GapTint surface={props.gapOn} radiusMm={radiusMm} view={view} palette={palette} />
            )}
            {shownBars && !dragging && (
              <BridgeTint
                bars={shownBars.bars}
                unbridged={shownBars.unbridged}
                worked={hand !== undefined}
                view={view}
                palette={palette}
              />
            )}
            {trouble && <TroubleTint path={trouble} view={view} palette={palette} />}
            {hand?.marks(view, palette)}
            {hoverId !== undefined && !chosenIds.includes(hoverId) && !dragging && (
              <ElementOutline extents={extentsOf(plate, [hoverId])} faint view={view} palette={palette} />
            )}
            {!dragging && (
              <>
                {first && chosenIds.length === 1 && !hand && (
                  <RulerMarks extent={first} worldMm={worldMm} view={view} palette={palette} />
                )}
                <ElementOutline extents={chosen} faint={false} view={view} palette={palette} />
                {first && chosenIds.length === 1 && !hand && !props.typing && (
                  <ElementHandles
                    extent={first}
                    locked={props.lockedIds.includes(first.elementId)}
                    view={view}
                    stage={size}
                    palette={palette}
                  />
                )}
              </>
            )}
            {litFinding && (
              <LitPlace finding={litFinding} radiusMm={radiusMm} strength={strength} view={view} palette={palette} />
            )}
            <Pins pins={pins} lit={lit} palette={palette} />
          </>
        )}
      </Layer>
    </Stage>
  );
}

function extentsOf(plate: PlateResult | undefined, ids: readonly string[]): readonly Extent[] {
  return plate ? ids.flatMap((id) => plate.layout.extents.filter((e) => e.elementId === id)) : [];
}
