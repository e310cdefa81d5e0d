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

import { useCallback, useDeferredValue, useEffect, useId, useMemo, useRef, useState, type KeyboardEvent } from 'react';
import { useStore } from 'zustand';
import type { Surface } from '../../../geometry/barrel/surface.ts';
import { isText } from '../../../geometry/design/kinds.ts';
import type { Finding } from '../../../geometry/findings.ts';
import type { PlateResult } from '../../../geometry/plate/plate.ts';
import type { Theme } from '../../barrel/painting/oak.ts';
import { useSize } from '../../ui/use-size.ts';
import { bareMetal, type IsBare } from './bare-metal.ts';
import { BusySign } from './BusySign.tsx';
import type { Canvas } from './canvas-context.ts';
import { Controls } from './Controls.tsx';
import { createDragStore } from './carry/drag-store.ts';
import { PALETTES } from './palette.ts';
import { pinAt, PIN_RADIUS_PX, placePins } from './pins.ts';
import { openingsOf, pathsKept } from './plate-paths.ts';
import { Readout } from './Readout.tsx';
import type { Units } from './ruler.ts';
import { worldRadiusMm } from './scene.ts';
import styles from './stage.module.css';
import { StageLayers } from './StageLayers.tsx';
import { TypeHere } from './TypeHere.tsx';
import { useFontsArrived } from './use-fonts-arrived.ts';
import { useGestures } from './use-gestures.ts';
import { useScene } from './use-scene.ts';
import { useStageBridges, type StageBridges } from './use-stage-bridges.tsx';
import { useStagePlacing, type StagePlacing } from './use-stage-placing.tsx';
import { GREATEST_ZOOM, lookAt, panBy, viewOf, WHOLE, zoomAbout, type Frame, type ScreenPoint } from './view.ts';
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

/** How near a bridge comes that is chosen in the list. */
const NEAR_ZOOM = 3.5;

/** Bare head shown while there is no plate; any size does. */
const BARE_MM = 250;

/** The plate lying on the head of its barrel: to look at, to work on, to see the findings on. Fills its parent. */
export function PlateStage(props: PlateStageProps) {
  const { theme, placing, onPickFinding, showBridges = false } = props;
  // A plate that arrives is taken in by a task of its own, so that a hand on the page never waits for both.
  const newest = useDeferredValue(props.plate);
  const findings = useDeferredValue(props.findings);
  const busy = useDeferredValue(props.busy);
  const words = props.words ?? stageWords();
  const box = useRef<HTMLDivElement>(null);
  const helpId = useId();
  const size = useSize(box);
  const [look, setLook] = useState(WHOLE);
  const [overPin, setOverPin] = useState(false);
  const [shownWish, setShownWish] = useState(props.work?.show);
  const [drags] = useState(createDragStore);
  // While something is dragged the plate that the hand took hold of stays, less what moves, until a newer one came.
  const draggedIds = useStore(drags, (s) => s.drag?.ids);
  const draggedPlate = useStore(drags, (s) => s.drag?.plate);
  const droppedOn = useStore(drags, (s) => s.drag?.droppedOn);
  const settled = droppedOn !== undefined && (newest !== droppedOn || !busy);
  const plate = settled ? newest : (draggedPlate ?? newest);

  const radiusMm = plate ? plate.diameterMm / 2 : BARE_MM;
  const worldMm = worldRadiusMm(radiusMm);
  const frame = useMemo<Frame | undefined>(
    () => size && { size, worldMm, marginPx: Math.min(size.width, size.height) < NARROW_PX ? 23 : 34 },
    [size, worldMm],
  );
  // A bridge chosen in the list comes near, so that there is something to see and to hold.
  if (frame && props.work?.show !== shownWish) {
    setShownWish(props.work?.show);
    if (props.work?.show) setLook(lookAt(look, frame, props.work.show, NEAR_ZOOM));
  }
  const paths = useMemo(() => (plate ? pathsKept(plate) : undefined), [plate]);
  const lifted = useMemo(
    () =>
      draggedPlate && draggedIds
        ? { of: pathsKept(draggedPlate).scene, openings: openingsOf(draggedPlate, draggedIds) }
        : undefined,
    [draggedPlate, draggedIds],
  );
  const scene = useScene(frame, look, paths?.scene, radiusMm, theme, lifted);
  const view = useMemo(() => frame && viewOf(look, frame), [frame, look]);
  const isBare = useMemo<IsBare>(() => (plate ? bareMetal(plate.openings, plate.diameterMm / 2) : () => true), [plate]);
  const unitWord = words[props.units];
  const canvas = useMemo<Canvas | undefined>(
    () => size && view && { size, view, worldMm, palette: PALETTES[theme], units: props.units, unitWord },
    [size, view, worldMm, theme, props.units, unitWord],
  );
  // Notes stand aside while bridges are worked on: their pins would lie on what one drags.
  const quiet = props.work !== undefined;
  const pins = useMemo(
    () =>
      (plate && view ? placePins(findings, radiusMm, view, isBare) : []).filter((p) => !quiet || p.severity !== 'note'),
    [plate, findings, radiusMm, view, isBare, quiet],
  );
  useFontsArrived();

  const hand = useStageBridges(plate, view, props.work);
  const places = useStagePlacing(newest, view, look.zoom > 1, size, placing, drags);
  // The dragged picture goes as soon as the true one is painted.
  const shownTrue = settled && scene.plate === paths?.scene;
  useEffect(() => {
    if (shownTrue) drags.setState({ drag: undefined });
  }, [shownTrue, drags]);
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

  const zoomBy = useCallback(
    (factor: number) => {
      if (!frame) return;
      const middle = { leftPx: frame.size.width / 2, topPx: frame.size.height / 2 };
      setLook((old) => zoomAbout(old, frame, middle, factor));
    },
    [frame],
  );
  const onKeyDown = (event: KeyboardEvent<HTMLElement>) => {
    if (!frame || event.target !== event.currentTarget) return;
    const plain = !event.ctrlKey && !event.metaKey && !event.altKey;
    if (hand ? plain && hand.key(event.key, event.shiftKey) : places.key(event)) {
      event.preventDefault();
      return;
    }
    if (!plain) return;
    const step = ARROWS[event.key];
    if (step && look.zoom > 1) setLook((old) => panBy(old, frame, step[0] * 48, step[1] * 48));
    else if (event.key === '+' || event.key === '=') zoomBy(1.5);
    else if (event.key === '-') zoomBy(1 / 1.5);
    else if (event.key === '0') setLook(WHOLE);
    else return;
    event.preventDefault();
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
      data-dragging={draggedIds !== undefined || undefined}
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
      {!plate && <p className={styles.empty}>{words.empty}</p>}
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

/** How the picture moves for each key: the eye goes where the arrow points, so the plate goes the other way. */
const ARROWS: Record<string, readonly [number, number] | undefined> = {
  ArrowLeft: [1, 0],
  ArrowRight: [-1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};
