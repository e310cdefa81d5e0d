/**
 * The stage: plate, handles and guides, drawn by Konva only here; it is handed plain data.
 *
 * - use-stage-placing.tsx takes hold. carry/ says what the elements become (pure), where they come to rest (snap) and where
 *   their openings lie meanwhile (ghost).
 * - A hand that moves redraws one layer (DragLayer.tsx), fed apart from React's state. The picture below keeps the plate
 *   that was taken hold of, with the lifted openings healed.
 * - The design changes when the hand rests or lets go, so one drag is one step. The dragged picture goes when the true
 *   plate is painted, which use-scene.ts does step by step between other work.
 */

import { useDeferredValue, useId, useMemo, useRef, useState, type KeyboardEvent } from 'react';
import type { Surface } from '../../../geometry/barrel/surface.ts';
import { isText } from '../../../geometry/design/kinds.ts';
import type { Finding } from '../../../geometry/findings.ts';
import type { PlateResult } from '../../../geometry/plate/plate.ts';
import type { Theme } from '../../barrel/painting/oak.ts';
import { useSize } from '../../ui/use-size.ts';
import { bareMetal, type IsBare } from './bare-metal.ts';
import { BusySign } from './BusySign.tsx';
import type { Canvas } from './canvas/canvas-context.ts';
import { Controls } from './Controls.tsx';
import { createDragStore } from './carry/drag-store.ts';
import { PALETTES } from './canvas/palette.ts';
import { pinAt, PIN_RADIUS_PX, placePins } from './pins.ts';
import { Readout } from './Readout.tsx';
import type { Units } from './canvas/ruler.ts';
import { worldRadiusMm } from './scene.ts';
import styles from './stage.module.css';
import { StageLayers } from './StageLayers.tsx';
import { TypeHere } from './TypeHere.tsx';
import { useFontsArrived } from './use-fonts-arrived.ts';
import { useGestures } from './use-gestures.ts';
import { useFirstWood, useScene } from './use-scene.ts';
import { useDragEnd, useShownPlate } from './use-shown-plate.ts';
import { useStageBridges, type StageBridges } from './use-stage-bridges.tsx';
import type { StagePlacing } from './stage-placing.ts';
import { useStagePlacing } from './use-stage-placing.tsx';
import { useZoom } from './use-zoom.ts';
import { GREATEST_ZOOM, viewOf, WHOLE, type Frame, type ScreenPoint } from './canvas/view.ts';
import { stageWords, type StageWords } from './words.ts';

export interface PlateStageProps {
  readonly plate: PlateResult | undefined;
  /** A newer plate is being worked out; the old one stays in sight. */
  readonly busy: boolean;
  readonly findings: readonly Finding[];
  readonly litFinding: Finding | undefined;
  readonly onPickFinding: (index: number) => void;
  readonly units: Units;
  readonly theme: Theme;
  /** Elements chosen and placed by hand. */
  readonly placing: StagePlacing;
  /** Tints every bridge; otherwise only those of the element pointed at or chosen. */
  readonly showBridges?: boolean;
  /** Bridges are worked on by hand: pointing is about them and not about elements. */
  readonly work?: StageBridges | undefined;
  readonly words?: StageWords;
  /** What the plate lies on, where the gap to it is to be shown. */
  readonly gapOn?: Surface | undefined;
}

/** Below this the barrel needs the room that rulers would take. */
const NARROW_PX = 480;

/** Bare head shown while there is no plate; any size does. */
const BARE_MM = 250;

/** The plate lying on the head of its barrel: to look at, to work on, to see the findings on. Fills its parent. */
export function PlateStage(props: PlateStageProps) {
  const { theme, placing, onPickFinding, showBridges = false } = props;
  // A plate that arrives is taken in by a task of its own, so that a hand on the page never waits for both.
  const newest = useDeferredValue(props.plate);
  const findings = useDeferredValue(props.findings);
  // Busy from the first moment, and until the plate that was made has been taken in as well.
  const busyBefore = useDeferredValue(props.busy);
  const busy = props.busy || busyBefore;
  const words = props.words ?? stageWords();
  const box = useRef<HTMLDivElement>(null);
  const helpId = useId();
  const size = useSize(box);
  const [overPin, setOverPin] = useState(false);
  const [drags] = useState(createDragStore);
  const { plate, paths, lifted, settled, dragging } = useShownPlate(newest, busy, drags);

  const radiusMm = plate ? plate.diameterMm / 2 : BARE_MM;
  useFirstWood(radiusMm, theme);
  const worldMm = worldRadiusMm(radiusMm);
  const frame = useMemo<Frame | undefined>(
    () => size && { size, worldMm, marginPx: Math.min(size.width, size.height) < NARROW_PX ? 23 : 34 },
    [size, worldMm],
  );
  const { look, setLook, zoomBy, pressKey } = useZoom(frame, props.work?.show);
  const scene = useScene(frame, look, paths?.scene, radiusMm, theme, lifted);
  const view = useMemo(() => frame && viewOf(look, frame), [frame, look]);
  const isBare = useMemo<IsBare>(() => (plate ? bareMetal(plate.openings, plate.diameterMm / 2) : () => true), [plate]);
  const unitWord = words[props.units];
  const canvas = useMemo<Canvas | undefined>(
    () => size && view && { size, view, worldMm, palette: PALETTES[theme], units: props.units, unitWord },
    [size, view, worldMm, theme, props.units, unitWord],
  );
  // Notes stand aside while bridges are worked on: their pins would lie on what one drags. One about the whole plate has
  // no place to point at.
  const quiet = props.work !== undefined;
  const pins = useMemo(
    () =>
      (plate && view ? placePins(findings, radiusMm, view, isBare) : []).filter(
        ({ severity, index }) => severity !== 'note' || (!quiet && findings[index]?.place.kind !== 'plate'),
      ),
    [plate, findings, radiusMm, view, isBare, quiet],
  );
  useFontsArrived();

  const hand = useStageBridges(plate, view, props.work);
  const places = useStagePlacing(newest, view, look.zoom > 1, size, placing, drags);
  useDragEnd(settled && scene.plate === paths?.scene, drags);
  const onTap = (at: ScreenPoint, finger: boolean, shift: boolean) => {
    const pin = pinAt(pins, at, finger ? 22 : PIN_RADIUS_PX + 3);
    if (pin && !shift) onPickFinding(pin.index);
    else if (hand) hand.tap(at, finger);
    else places.tap(at, finger, shift);
  };
  const onHover = (at: ScreenPoint | undefined) => {
    const pin = at && pinAt(pins, at, PIN_RADIUS_PX + 3);
    setOverPin(pin !== undefined);
    places.hover(at, pin === undefined && !hand);
    hand?.hover(pin ? undefined : at);
  };
  const gestures = useGestures({
    box,
    frame,
    look,
    setLook,
    onTap,
    onHover,
    onGrab: hand ? hand.grab : places.grab,
    onTapAgain: hand ? hand.tapAgain : places.tapAgain,
  });

  const onKeyDown = (event: KeyboardEvent<HTMLElement>) => {
    if (!frame || event.target !== event.currentTarget) return;
    const plain = !event.ctrlKey && !event.metaKey && !event.altKey;
    const taken = hand ? plain && hand.key(event.key, event.shiftKey) : places.key(event);
    if (taken || (plain && pressKey(event.key))) event.preventDefault();
  };

  const hoverId = hand ? undefined : places.hoverId;
  const typed = placing.elements.find((e) => e.id === placing.typingId);
  return (
    <div
      ref={box}
      className={styles.stage}
      data-theme={theme}
      data-zoomed={look.zoom > 1}
      data-over={overPin || hoverId !== undefined || hand?.over === true}
      data-hand={hand ? (hand.adding ? 'adding' : 'working') : placing.chosenIds.length > 0 ? 'placing' : undefined}
      data-dragging={dragging || undefined}
      data-plate-stage
      tabIndex={0}
      role="group"
      aria-label={words.stage}
      aria-describedby={helpId}
      onKeyDown={onKeyDown}
      {...gestures}
    >
      {canvas && (
        <div className={styles.canvas} aria-hidden>
          <StageLayers
            canvas={canvas}
            scene={scene}
            plate={plate}
            paths={paths}
            placing={placing}
            hoverId={hoverId}
            drags={drags}
            hand={hand}
            showBridges={showBridges}
            findings={findings}
            litFinding={props.litFinding}
            pins={pins}
            gapOn={props.gapOn}
          />
        </div>
      )}
      {!plate && words.empty !== '' && <p className={styles.empty}>{words.empty}</p>}
      <p id={helpId} className={styles.unseen}>
        {hand ? words.bridgeKeys : `${words.keys} ${words.placingKeys}`}
      </p>
      {plate && view && size && typed && isText(typed) && (
        <TypeHere
          key={typed.id}
          text={typed}
          extent={plate.layout.extents.find((e) => e.elementId === typed.id)}
          view={view}
          stage={size}
          label={words.typeHere}
          onText={(text) => placing.onText(typed.id, text)}
          onTyped={placing.onTyped}
        />
      )}
      {plate && <Readout store={drags} radiusMm={radiusMm} units={props.units} unitWord={unitWord} />}
      <BusySign busy={props.busy} words={words.busy} />
      <Controls
        words={words}
        zoomed={look.zoom > 1}
        atLimit={look.zoom >= GREATEST_ZOOM}
        onZoom={zoomBy}
        onWhole={() => setLook(WHOLE)}
      />
    </div>
  );
}
