import { useEffect, useRef, useState } from 'react';
import type { DesignElement } from '../../../geometry/design/schema.ts';
import { isText } from '../../../geometry/design/kinds.ts';
import type { PlateResult } from '../../../geometry/plate/plate.ts';
import type { SizePx } from '../../ui/size.ts';
import { carried, type Carry } from './carry/carry.ts';
import type { DragStore } from './carry/drag-store.ts';
import { holdAt } from './element-hold.ts';
import { elementAt } from './carry/hit.ts';
import { placingCommand, walkTo, type Key, type PlacingCommand } from './carry/placing-keys.ts';
import type { Grip } from './use-gestures.ts';
import { toPlate, type ScreenPoint, type View } from './canvas/view.ts';

/** What the stage is told about elements being placed, and what it tells. */
export interface StagePlacing {
  /** From rim to centre, as Tab walks them. */
  readonly elements: readonly DesignElement[];
  /** The first is the one worked on; the others go with it. */
  readonly chosenIds: readonly string[];
  /** A tap adds to the chosen or takes from them. */
  readonly several: boolean;
  readonly snapping: boolean;
  /** The text being typed over the plate. */
  readonly typingId: string | undefined;
  readonly onChoose: (ids: readonly string[]) => void;
  readonly onPlace: (elements: readonly DesignElement[]) => void;
  /** The hand let go: the moves since it took hold are one step. */
  readonly onPlaced: () => void;
  readonly onLocked: () => void;
  readonly onCommand: (command: PlacingCommand) => void;
  readonly onWalk: (id: string) => void;
  readonly onText: (id: string, text: string) => void;
  /** keep: as typed; otherwise as it was before. */
  readonly onTyped: (keep: boolean) => void;
}

/** A hand that rests so long has the true plate made under it. */
const REST_MS = 250;
const SNAP_PX = 7;
const SNAP_FINGER_PX = 10;
/** A ring text stays on its ring until it is pulled so far across. */
const ACROSS_PX = 14;

/** Choosing and dragging elements on the stage. */
export function useStagePlacing(
  plate: PlateResult | undefined,
  view: View | undefined,
  zoomed: boolean,
  size: SizePx | undefined,
  work: StagePlacing,
  store: DragStore,
) {
  const [hoverId, setHoverId] = useState<string>();
  const newest = useRef(plate);
  const stop = useRef<(() => void) | undefined>(undefined);

  useEffect(() => {
    newest.current = plate;
  }, [plate]);

  const under = (at: ScreenPoint, finger: boolean): string | undefined =>
    plate && view
      ? elementAt(plate.layout.extents, plate.openings, toPlate(view, at), (finger ? 8 : 3) / view.scale)
      : undefined;

  const toggled = (id: string): string[] =>
    work.chosenIds.includes(id) ? work.chosenIds.filter((c) => c !== id) : [...work.chosenIds, id];

  const grab = (at: ScreenPoint, finger: boolean): Grip | undefined => {
    if (!plate || !view || !size || work.typingId !== undefined) return undefined;
    const held = holdAt(plate.layout.extents, plate.openings, work.chosenIds, view, size, at, finger);
    // A mouse need not choose first; on a part of the plate that is shown large it moves the picture, except by a letter.
    const other = held || finger || work.several ? undefined : zoomed ? letterAt(plate, view, at) : under(at, false);
    const id = held?.id ?? other;
    if (id === undefined) return undefined;
    const ids = other === undefined ? [id, ...work.chosenIds.filter((c) => c !== id)] : [id];
    const chosen = ids.flatMap((i) => work.elements.filter((e) => e.id === i)).filter((e) => e.locked !== true);
    const carry: Carry = {
      hold: held?.hold ?? 'body',
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
          if (other !== undefined) work.onChoose([other]);
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
          drag: { ...drag, now: { ...drag.now, guides: [] }, pointer: undefined, droppedOn: newest.current ?? plate },
        });
      },
      cancel,
    };
  };

  const tap = (at: ScreenPoint, finger: boolean, shift: boolean): void => {
    const id = under(at, finger);
    if (work.typingId !== undefined) work.onTyped(true);
    if (shift || work.several) {
      if (id !== undefined) work.onChoose(toggled(id));
    } else work.onChoose(id === undefined ? [] : [id]);
  };

  const tapAgain = (at: ScreenPoint): boolean => {
    const id = under(at, true);
    const text = work.elements.find((e) => e.id === id);
    if (!text || !isText(text)) return id !== undefined;
    work.onChoose([text.id]);
    work.onCommand({ kind: 'type' });
    return true;
  };

  const key = (pressed: Key): boolean => {
    if (pressed.key === 'Escape' && stop.current) {
      stop.current();
      return true;
    }
    if (pressed.key === 'Tab' && !pressed.ctrlKey && !pressed.altKey && !pressed.metaKey) {
      const from = work.several ? (hoverId ?? work.chosenIds[0]) : work.chosenIds[0];
      const to = walkTo(
        work.elements.map((e) => e.id),
        from,
        pressed.shiftKey,
      );
      if (to === undefined) return false;
      if (work.several) {
        setHoverId(to);
        work.onWalk(to);
      } else work.onChoose([to]);
      return true;
    }
    if (work.several && pressed.key === ' ' && hoverId !== undefined) {
      work.onChoose(toggled(hoverId));
      return true;
    }
    const command = placingCommand(pressed);
    if (!command || (work.chosenIds.length === 0 && command.kind !== 'all')) return false;
    work.onCommand(command);
    return true;
  };

  return {
    hoverId,
    grab,
    tap,
    tapAgain,
    key,
    hover: (at: ScreenPoint | undefined, choosing: boolean): void => {
      store.setState({ pointer: at && view ? toPlate(view, at) : undefined });
      setHoverId(at && choosing ? under(at, false) : undefined);
    },
  };
}

export type PlacingHand = ReturnType<typeof useStagePlacing>;

/** Only what is cut counts here: a mouse that presses on bare metal moves the picture. */
function letterAt(plate: PlateResult, view: View, at: ScreenPoint): string | undefined {
  return elementAt([], plate.openings, toPlate(view, at), 2 / view.scale);
}
