import { useState } from 'react';
import type { PlateResult } from '../../../geometry/plate/plate.ts';
import type { Point } from '../../../geometry/shapes.ts';
import { AddingCross, BridgeHandles } from './BridgeHandles.tsx';
import { bridgeCommand, type BridgeCommand } from './bridge-keys.ts';
import { bridgeAt, bridgeKey, dragged, holdAt, middleOf, type Line } from './bridge-line.ts';
import type { Grip } from './use-gestures.ts';
import { toPlate, type ScreenPoint, type View } from './canvas/view.ts';

/** What the stage is told about bridges being worked on, and what it tells; mm, plate frame. */
export interface StageBridges {
  readonly chosen: (Line & { readonly key: string; readonly widthMm: number; readonly index: number }) | undefined;
  /** The next place pointed at gets a bridge. */
  readonly adding: boolean;
  /** A place to bring near; a new one each time it is asked for. */
  readonly show: Point | undefined;
  readonly onChoose: (key: string | undefined) => void;
  readonly onMove: (key: string, line: Line) => void;
  readonly onAdd: (at: Point) => void;
  readonly onCommand: (command: BridgeCommand) => void;
}

export type StageBridgesHand = NonNullable<ReturnType<typeof useStageBridges>>;

/** How far an arrow key moves the cross that says where a bridge goes, CSS pixels. */
const CROSS_STEP_PX = 6;

/** Choosing, dragging and setting bridges on the stage; undefined while bridges are not worked on. */
export function useStageBridges(
  plate: PlateResult | undefined,
  view: View | undefined,
  work: StageBridges | undefined,
) {
  const [draft, setDraft] = useState<Line>();
  const [hoverKey, setHoverKey] = useState<string>();
  const [cross, setCross] = useState<Point>();
  const chosen = work?.chosen;
  const adding = work?.adding === true;

  if (!plate || !view || !work) return undefined;

  const grab = (at: ScreenPoint, finger: boolean): Grip | undefined => {
    if (adding) return undefined;
    const hold = chosen && holdAt(chosen, chosen.widthMm, view, at, finger);
    const other = hold || finger ? undefined : bridgeAt(plate.bridges, view, at, false);
    const line = hold ? chosen : other;
    if (!line) return undefined;
    const key = other ? bridgeKey(other) : chosen!.key;
    const start = toPlate(view, at);
    let now: Line = line;
    return {
      move(to) {
        if (other) work.onChoose(key);
        now = dragged(line, hold ?? 'body', start, toPlate(view, to));
        setDraft(now);
      },
      end() {
        work.onMove(key, now);
        setDraft(undefined);
      },
      cancel: () => setDraft(undefined),
    };
  };

  const tap = (at: ScreenPoint, finger: boolean): void => {
    if (adding) work.onAdd(toPlate(view, at));
    else {
      const bridge = bridgeAt(plate.bridges, view, at, finger);
      work.onChoose(bridge && bridgeKey(bridge));
    }
  };

  const key = (name: string, shift: boolean): boolean => {
    const command = bridgeCommand(name, shift);
    if (command?.kind === 'leave') work.onCommand(command);
    else if (adding) {
      const first = plate.bridges[0];
      const at = cross ?? work.show ?? (first ? middleOf(first) : { x: 0, y: 0 });
      if (name === 'Enter') work.onAdd(at);
      else if (command?.kind === 'nudge') {
        const mm = (CROSS_STEP_PX * (shift ? 5 : 1)) / view.scale;
        setCross(cross ? { x: at.x + Math.sign(command.right) * mm, y: at.y + Math.sign(command.up) * mm } : at);
      } else return false;
    } else if (chosen && command) work.onCommand(command);
    else return false;
    return true;
  };

  const hovered = plate.bridges.find((b) => bridgeKey(b) === hoverKey);
  const marks = (
    <>
      {hovered && hoverKey !== chosen?.key && !draft && (
        <BridgeHandles line={hovered} widthMm={hovered.widthMm} solid={false} faint />
      )}
      {chosen && <BridgeHandles line={draft ?? chosen} widthMm={chosen.widthMm} solid={draft !== undefined} />}
      {adding && cross && <AddingCross at={cross} />}
    </>
  );

  return {
    adding,
    over: hovered !== undefined && !adding,
    grab,
    tap,
    tapAgain: (at: ScreenPoint): boolean => {
      if (!bridgeAt(plate.bridges, view, at, false)) work.onAdd(toPlate(view, at));
      return true;
    },
    hover: (at: ScreenPoint | undefined): void => {
      const bridge = at && !adding ? bridgeAt(plate.bridges, view, at, false) : undefined;
      setHoverKey(bridge && bridgeKey(bridge));
    },
    key,
    marks,
  };
}
