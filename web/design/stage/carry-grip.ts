import type { RefObject } from 'react';
import type { PlateResult } from '../../../geometry/plate/plate.ts';
import { toPlate, type ScreenPoint, type View } from './canvas/view.ts';
import { carried, type Carry } from './carry/carry.ts';
import type { DragStore } from './carry/drag-store.ts';
import type { StagePlacing } from './stage-placing.ts';
import type { Grip } from './use-gestures.ts';

/** A hand that rests so long has the true plate made under it. */
const REST_MS = 250;
const SNAP_PX = 7;
const SNAP_FINGER_PX = 10;
/** A ring text stays on its ring until it is pulled so far across. */
const ACROSS_PX = 14;

/** What the hand took hold of, and where. */
export interface Taken {
  readonly id: string;
  readonly hold: Carry['hold'];
  /** It was not among the chosen: it becomes the one chosen as soon as it moves. */
  readonly choose: boolean;
  readonly at: ScreenPoint;
  readonly finger: boolean;
}

interface Ground {
  readonly plate: PlateResult;
  readonly newest: () => PlateResult;
  readonly view: View;
  readonly work: StagePlacing;
  readonly store: DragStore;
  /** Holds what ends the drag while there is one. */
  readonly stop: RefObject<(() => void) | undefined>;
}

/** Carries what was taken, and the others chosen with it, until the hand lets go; locked ones stay. */
export function carryGrip(taken: Taken, { plate, newest, view, work, store, stop }: Ground): Grip {
  const { id, hold, choose, at, finger } = taken;
  const ids = choose ? [id] : [id, ...work.chosenIds.filter((c) => c !== id)];
  const chosen = ids.flatMap((i) => work.elements.filter((e) => e.id === i)).filter((e) => e.locked !== true);
  const carry: Carry = {
    hold,
    chosen,
    extents: plate.layout.extents,
    radiusMm: plate.diameterMm / 2,
    start: toPlate(view, at),
    acrossMm: ACROSS_PX / view.scale,
  };
  const locked = chosen[0]?.id !== id;
  const snapMm = (finger ? SNAP_FINGER_PX : SNAP_PX) / view.scale;
  const moving = new Set(chosen.map((e) => e.id));
  let begun = false;
  let ended = false;
  let frame = 0;
  let rest: ReturnType<typeof setTimeout> | undefined;
  let last: { at: ScreenPoint; free: boolean } | undefined;

  const show = () => {
    frame = 0;
    if (!last || ended) return;
    const pointer = toPlate(view, last.at);
    const now = carried(carry, pointer, work.snapping && !last.free ? snapMm : 0);
    store.setState({
      drag: { plate, ids: moving, before: chosen, now, pointer, droppedOn: undefined },
      pointer,
    });
  };
  const quiet = () => {
    cancelAnimationFrame(frame);
    clearTimeout(rest);
    ended = true;
    stop.current = undefined;
  };
  const cancel = () => {
    if (ended) return;
    quiet();
    if (!begun || locked) return;
    work.onPlace(chosen);
    work.onPlaced();
    store.setState({ drag: undefined });
  };
  return {
    move(to, free) {
      if (ended) return;
      if (!begun) {
        begun = true;
        stop.current = cancel;
        if (choose) work.onChoose([id]);
        if (locked) work.onLocked();
      }
      if (locked) return;
      last = { at: to, free };
      if (frame === 0) frame = requestAnimationFrame(show);
      clearTimeout(rest);
      rest = setTimeout(() => {
        const { drag } = store.getState();
        if (drag) work.onPlace(drag.now.elements);
      }, REST_MS);
    },
    end() {
      if (ended) return;
      if (frame !== 0) {
        cancelAnimationFrame(frame);
        show();
      }
      quiet();
      const { drag } = store.getState();
      if (!drag || locked) return;
      work.onPlace(drag.now.elements);
      work.onPlaced();
      store.setState({
        drag: { ...drag, now: { ...drag.now, guides: [] }, pointer: undefined, droppedOn: newest() },
      });
    },
    cancel,
  };
}
