import { useEffect, useRef, useState } from 'react';
import { isText } from '../../../geometry/design/kinds.ts';
import type { PlateResult } from '../../../geometry/plate/plate.ts';
import type { SizePx } from '../../ui/size.ts';
import { carryGrip } from './carry-grip.ts';
import type { DragStore } from './carry/drag-store.ts';
import { holdAt } from './element-hold.ts';
import { elementAt } from './carry/hit.ts';
import { placingCommand, walkTo, type Key } from './carry/placing-keys.ts';
import type { StagePlacing } from './stage-placing.ts';
import type { Grip } from './use-gestures.ts';
import { toPlate, type ScreenPoint, type View } from './canvas/view.ts';

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
    const taken = { id, hold: held?.hold ?? 'body', choose: other !== undefined, at, finger };
    return carryGrip(taken, { plate, newest: () => newest.current ?? plate, view, work, store, stop });
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

/** Only what is cut counts here: a mouse that presses on bare metal moves the picture. */
function letterAt(plate: PlateResult, view: View, at: ScreenPoint): string | undefined {
  return elementAt([], plate.openings, toPlate(view, at), 2 / view.scale);
}
