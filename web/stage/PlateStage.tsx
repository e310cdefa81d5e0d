import { useCallback, useId, useMemo, useRef, useState, type KeyboardEvent } from 'react';
import { Layer, Stage } from 'react-konva';
import type { Finding } from '../../geometry/findings.ts';
import type { PlateResult } from '../../geometry/plate.ts';
import type { Theme } from '../barrel-view/oak.ts';
import { traceRegions, traceRing } from '../barrel-view/trace.ts';
import { useSize } from '../barrel-view/use-size.ts';
import { bareMetal, type IsBare } from './bare-metal.ts';
import { BusySign } from './BusySign.tsx';
import { Controls } from './Controls.tsx';
import { elementAt } from './hit.ts';
import { BridgeTint, ElementOutline, LitPlace } from './Marks.tsx';
import { PALETTES } from './palette.ts';
import { Picture } from './Picture.tsx';
import { pinAt, PIN_RADIUS_PX, placePins } from './pins.ts';
import { Pins } from './Pins.tsx';
import type { Units } from './ruler.ts';
import { Rulers } from './Rulers.tsx';
import { worldRadiusMm } from './scene.ts';
import styles from './stage.module.css';
import { useFontsArrived } from './use-fonts-arrived.ts';
import { useGestures } from './use-gestures.ts';
import { useStageBridges, type StageBridges } from './use-stage-bridges.tsx';
import { usePulse } from './use-pulse.ts';
import { useScene } from './use-scene.ts';
import {
  GREATEST_ZOOM,
  lookAt,
  panBy,
  toPlate,
  viewOf,
  WHOLE,
  zoomAbout,
  type Frame,
  type ScreenPoint,
} from './view.ts';
import { stageWords, type StageWords } from './words.ts';

export interface PlateStageProps {
  readonly plate: PlateResult | undefined;
  /** A newer plate is being worked out; the old one stays in sight. */
  readonly busy: boolean;
  readonly selectedId: string | undefined;
  readonly onSelect: (elementId: string | undefined) => void;
  readonly findings: readonly Finding[];
  readonly litFinding: Finding | undefined;
  readonly onPickFinding: (index: number) => void;
  readonly units: Units;
  readonly theme: Theme;
  /** Tints every bridge; otherwise only those of the element pointed at or chosen. */
  readonly showBridges?: boolean;
  /** Bridges are worked on by hand: pointing is about them and not about elements. */
  readonly work?: StageBridges | undefined;
  readonly words?: StageWords;
}

/** Below this the barrel needs the room that rulers would take. */
const NARROW_PX = 480;

/** How near a bridge comes that is chosen in the list. */
const NEAR_ZOOM = 3.5;

/** Bare head shown while there is no plate; any size does. */
const BARE_MM = 250;

/** The plate lying on the head of its barrel: to look at, to choose on, to see the findings on. Fills its parent. */
export function PlateStage(props: PlateStageProps) {
  const { plate, theme, findings, selectedId, onSelect, onPickFinding, showBridges = false } = props;
  const words = props.words ?? stageWords();
  const palette = PALETTES[theme];
  const box = useRef<HTMLDivElement>(null);
  const helpId = useId();
  const size = useSize(box);
  const [look, setLook] = useState(WHOLE);
  const [hoverId, setHoverId] = useState<string>();
  const [overPin, setOverPin] = useState(false);
  const [shownWish, setShownWish] = useState(props.work?.show);

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
  const paths = useMemo(() => (plate ? pathsOf(plate) : undefined), [plate]);
  const scene = useScene(frame, look, paths?.scene, radiusMm, theme);
  const view = useMemo(() => frame && viewOf(look, frame), [frame, look]);
  const isBare = useMemo<IsBare>(() => (plate ? bareMetal(plate.openings, plate.diameterMm / 2) : () => true), [plate]);
  // Notes stand aside while bridges are worked on: their pins would lie on what one drags.
  const quiet = props.work !== undefined;
  const pins = useMemo(
    () =>
      (plate && view ? placePins(findings, radiusMm, view, isBare) : []).filter((p) => !quiet || p.severity !== 'note'),
    [plate, findings, radiusMm, view, isBare, quiet],
  );
  useFontsArrived();
  const strength = usePulse(props.litFinding);
  const lit = props.litFinding ? findings.indexOf(props.litFinding) : -1;

  const under = (at: ScreenPoint, finger: boolean) => {
    if (!plate || !view) return undefined;
    return elementAt(plate.layout.extents, plate.openings, toPlate(view, at), (finger ? 8 : 3) / view.scale);
  };
  const hand = useStageBridges(plate, view, props.work);
  const onTap = (at: ScreenPoint, finger: boolean) => {
    const pin = pinAt(pins, at, finger ? 22 : PIN_RADIUS_PX + 3);
    if (pin) onPickFinding(pin.index);
    else if (hand) hand.tap(at, finger);
    else onSelect(under(at, finger));
  };
  const onHover = (at: ScreenPoint | undefined) => {
    const pin = at && pinAt(pins, at, PIN_RADIUS_PX + 3);
    setOverPin(pin !== undefined);
    setHoverId(at && !pin && !hand ? under(at, false) : undefined);
    hand?.hover(pin ? undefined : at);
  };
  const gestures = useGestures({
    box,
    frame,
    look,
    setLook,
    onTap,
    onHover,
    onGrab: hand?.grab,
    onTapAgain: hand?.tapAgain,
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
    if (event.ctrlKey || event.metaKey || event.altKey || !frame) return;
    if (event.target === event.currentTarget && hand?.key(event.key, event.shiftKey)) {
      event.preventDefault();
      return;
    }
    const step = ARROWS[event.key];
    if (step && look.zoom > 1) setLook((old) => panBy(old, frame, step[0] * 48, step[1] * 48));
    else if (event.key === '+' || event.key === '=') zoomBy(1.5);
    else if (event.key === '-') zoomBy(1 / 1.5);
    else if (event.key === '0') setLook(WHOLE);
    else if (event.key === 'Escape' && selectedId !== undefined) onSelect(undefined);
    else return;
    event.preventDefault();
  };

  const extentsOf = (id: string | undefined) =>
    id === undefined || !plate ? [] : plate.layout.extents.filter((e) => e.elementId === id);
  const shownBars = useMemo(() => {
    if (!plate) return undefined;
    const bars = plate.bridges.filter(
      (b) => showBridges || b.elementIds.some((id) => id === selectedId || id === hoverId),
    );
    if (bars.length === 0) return undefined;
    const path = new Path2D();
    for (const bar of bars) traceRing(path, bar.outline);
    return path;
  }, [plate, showBridges, selectedId, hoverId]);

  return (
    <div
      ref={box}
      className={styles.stage}
      data-theme={theme}
      data-zoomed={look.zoom > 1}
      data-over={overPin || hoverId !== undefined || hand?.over === true}
      data-hand={hand && (hand.adding ? 'adding' : 'working')}
      data-plate-stage
      tabIndex={0}
      role="group"
      aria-label={words.stage}
      aria-describedby={helpId}
      onKeyDown={onKeyDown}
      {...gestures}
    >
      {size && view && (
        <div className={styles.canvas} aria-hidden>
          <Stage width={size.width} height={size.height} listening={false}>
            <Layer listening={false}>
              <Picture scene={scene} size={size} view={view} />
            </Layer>
            <Layer listening={false}>
              {plate && paths && (
                <>
                  <Rulers
                    view={view}
                    widthPx={size.width}
                    radiusMm={radiusMm}
                    worldMm={worldMm}
                    tight={size.width < NARROW_PX || size.height < NARROW_PX}
                    openings={plate.openings}
                    metal={paths.metal}
                    units={props.units}
                    unitWord={words[props.units]}
                    palette={palette}
                  />
                  {shownBars && (
                    <BridgeTint
                      bars={shownBars}
                      unbridged={paths.unbridged}
                      worked={hand !== undefined}
                      view={view}
                      palette={palette}
                    />
                  )}
                  {hand?.marks(view, palette)}
                  {hoverId !== selectedId && (
                    <ElementOutline extents={extentsOf(hoverId)} faint view={view} palette={palette} />
                  )}
                  <ElementOutline extents={extentsOf(selectedId)} faint={false} view={view} palette={palette} />
                  {props.litFinding && (
                    <LitPlace
                      finding={props.litFinding}
                      radiusMm={radiusMm}
                      strength={strength}
                      view={view}
                      palette={palette}
                    />
                  )}
                  <Pins pins={pins} lit={lit} palette={palette} />
                </>
              )}
            </Layer>
          </Stage>
        </div>
      )}
      {!plate && <p className={styles.empty}>{words.empty}</p>}
      <p id={helpId} className={styles.unseen}>
        {hand ? words.bridgeKeys : words.keys}
      </p>
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

function pathsOf(plate: PlateResult) {
  const openings = new Path2D();
  traceRegions(
    openings,
    plate.openings.map((o) => o.region),
  );
  const unbridged = new Path2D();
  traceRegions(unbridged, plate.unbridged);
  const metal = new Path2D(openings);
  metal.rect(-plate.diameterMm, -plate.diameterMm, 2 * plate.diameterMm, 2 * plate.diameterMm);
  return {
    unbridged,
    metal,
    scene: { openings, radiusMm: plate.diameterMm / 2, thicknessMm: plate.rules.thicknessMm },
  };
}
