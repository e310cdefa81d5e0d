import { useMemo } from 'react';
import { Layer, Stage } from 'react-konva';
import { useStore } from 'zustand';
import type { Surface } from '../../../geometry/barrel/surface.ts';
import type { Finding } from '../../../geometry/findings.ts';
import type { Extent } from '../../../geometry/layout/placed.ts';
import type { PlateResult } from '../../../geometry/plate/plate.ts';
import { traceRing } from '../../barrel/painting/trace.ts';
import { CanvasContext, type Canvas } from './canvas/canvas-context.ts';
import { DragLayer } from './DragLayer.tsx';
import type { DragStore } from './carry/drag-store.ts';
import { ElementHandles } from './ElementHandles.tsx';
import { GapTint } from './GapTint.tsx';
import { BridgeTint, ElementOutline, LitPlace } from './Marks.tsx';
import { Picture } from './Picture.tsx';
import type { Pin } from './pins.ts';
import { Pins } from './Pins.tsx';
import { unbridgedOf, type PlatePaths } from './plate-paths.ts';
import { RulerMarks } from './RulerMarks.tsx';
import { Rulers } from './Rulers.tsx';
import { TroubleTint, troublePath } from './TroubleTint.tsx';
import { usePulse } from './use-pulse.ts';
import type { Scene } from './use-scene.ts';
import type { StagePlacing } from './stage-placing.ts';
import type { StageBridgesHand } from './use-stage-bridges.tsx';

export interface StageLayersProps {
  readonly canvas: Canvas;
  readonly scene: Scene;
  readonly plate: PlateResult | undefined;
  readonly paths: PlatePaths | undefined;
  readonly placing: StagePlacing;
  readonly hoverId: string | undefined;
  readonly drags: DragStore;
  readonly hand: StageBridgesHand | undefined;
  readonly showBridges: boolean;
  readonly findings: readonly Finding[];
  readonly litFinding: Finding | undefined;
  readonly pins: readonly Pin[];
  /** What the plate lies on, where the gap to it is shown. */
  readonly gapOn: Surface | undefined;
}

/** Below this the barrel needs the space that rulers would take. */
const NARROW_PX = 480;

/** The canvas: the picture, what is dragged over it, and marks on top. Paints, and decides nothing. */
export function StageLayers(props: StageLayersProps) {
  const { canvas, scene, plate, paths, placing, hoverId, hand, showBridges, findings, litFinding } = props;
  const { size } = canvas;
  const { chosenIds } = placing;
  // What is chosen is shown by the drag's own layer.
  const dragging = useStore(props.drags, (s) => s.drag !== undefined);
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

  // The one element that has rulers and handles.
  const held = first && chosenIds.length === 1 && !hand ? first : undefined;
  return (
    <Stage width={size.width} height={size.height} listening={false}>
      <CanvasContext value={canvas}>
        <Layer listening={false}>
          <Picture scene={scene} />
          {plate && paths && (
            <Rulers
              radiusMm={radiusMm}
              tight={size.width < NARROW_PX || size.height < NARROW_PX}
              openings={plate.openings}
              metal={paths.metal}
            />
          )}
        </Layer>
        <DragLayer store={props.drags} ground={scene.ground} />
        <Layer listening={false}>
          {plate && (
            <>
              {props.gapOn && !dragging && <GapTint surface={props.gapOn} radiusMm={radiusMm} />}
              {shownBars && !dragging && <BridgeTint {...shownBars} worked={hand !== undefined} />}
              {trouble && <TroubleTint path={trouble} />}
              {hand?.marks}
              {hoverId !== undefined && !chosenIds.includes(hoverId) && !dragging && (
                <ElementOutline extents={extentsOf(plate, [hoverId])} faint />
              )}
              {!dragging && (
                <>
                  {held && <RulerMarks extent={held} />}
                  <ElementOutline extents={chosen} faint={false} />
                  {held && placing.typingId === undefined && (
                    <ElementHandles extent={held} locked={isLocked(placing, held.elementId)} />
                  )}
                </>
              )}
              {litFinding && <LitPlace finding={litFinding} radiusMm={radiusMm} strength={strength} />}
              <Pins pins={props.pins} lit={lit} />
            </>
          )}
        </Layer>
      </CanvasContext>
    </Stage>
  );
}

function isLocked({ elements }: StagePlacing, id: string): boolean {
  return elements.some((e) => e.id === id && e.locked === true);
}

function extentsOf(plate: PlateResult | undefined, ids: readonly string[]): readonly Extent[] {
  return plate ? ids.flatMap((id) => plate.layout.extents.filter((e) => e.elementId === id)) : [];
}
