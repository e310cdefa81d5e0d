import { useEffect, useRef, useState, type PointerEvent, type RefObject } from 'react';
import { moveOnSheets } from '../../../geometry/sheet/move-on-sheet.ts';
import type { NestedSheet, PlacedPlate } from '../../../geometry/sheet/sheets.ts';
import type { Point } from '../../../geometry/shapes.ts';
import { usePage, useUi } from '../../page/page-context.ts';
import { findingWords } from '../../words/say/finding-words.ts';
import { useCut, useCutParts, usePlay } from '../state/cut-context.ts';
import { gapsOf, wishesOf } from '../state/plates-wanted.ts';
import { toSheet, type SheetView } from './sheet-view.ts';

/** A plate in the hand: where it would come to rest, and where the hand is. */
export interface Ghost {
  readonly plates: readonly PlacedPlate[];
  readonly faulty: ReadonlySet<string>;
  readonly sentence: string | undefined;
  readonly hand: Point;
  readonly radiusMm: number;
}

interface Held {
  readonly id: string;
  /** From the middle of the plate to where it was taken hold of. */
  readonly off: Point;
  readonly startX: number;
  readonly startY: number;
  moved: boolean;
}

const NONE: ReadonlySet<string> = new Set();
/** A finger that trembles does not move a plate. */
const STILL_PX = 4;

/** Drags plates; on the empty sheet moves the view; a wheel or two fingers come nearer. */
export function useSheetHand(
  frame: RefObject<HTMLDivElement | null>,
  sheet: NestedSheet,
  view: SheetView,
  zoom: (factor: number, x?: number, y?: number) => void,
  pan: (dx: number, dy: number) => void,
) {
  const { store, work } = useCutParts();
  const { book } = usePage();
  const unit = useUi((s) => s.unit);
  const sheetAt = useCut((s) => s.sheetAt);
  const playing = usePlay((s) => s.on);
  const [ghost, setGhost] = useState<Ghost | undefined>();
  const [lifted, setLifted] = useState<ReadonlySet<string>>(NONE);
  const held = useRef<Held | undefined>(undefined);
  const fingers = useRef(new Map<number, Point>());

  useEffect(() => {
    const element = frame.current;
    if (!element) return;
    const wheel = (e: WheelEvent): void => {
      e.preventDefault();
      const box = element.getBoundingClientRect();
      zoom(Math.exp(-e.deltaY / 400), e.clientX - box.left, e.clientY - box.top);
    };
    // React's own would be passive, and the page would scroll
    element.addEventListener('wheel', wheel, { passive: false });
    return () => element.removeEventListener('wheel', wheel);
  });

  const place = (e: PointerEvent): Point => {
    const box = frame.current!.getBoundingClientRect();
    return { x: e.clientX - box.left, y: e.clientY - box.top };
  };

  function down(e: PointerEvent<HTMLDivElement>): void {
    if (e.button !== 0 || (e.target as Element).closest('[data-tool]')) return;
    const at = place(e);
    fingers.current.set(e.pointerId, at);
    e.currentTarget.setPointerCapture(e.pointerId);
    if (fingers.current.size > 1) {
      drop();
      return;
    }
    const on = toSheet(view, at.x, at.y);
    const plate = plateAt(sheet, on);
    store.getState().set({ selected: plate?.id });
    // locked keeps the tool off a plate, not the hand
    if (!plate || playing) return;
    held.current = {
      id: plate.id,
      off: { x: on.x - plate.x, y: on.y - plate.y },
      startX: at.x,
      startY: at.y,
      moved: false,
    };
  }

  function move(e: PointerEvent<HTMLDivElement>): void {
    const before = fingers.current.get(e.pointerId);
    if (!before) return;
    const at = place(e);
    fingers.current.set(e.pointerId, at);
    if (fingers.current.size === 2) {
      const [other] = [...fingers.current].flatMap(([id, p]) => (id === e.pointerId ? [] : [p]));
      if (other) zoom(apart(at, other) / Math.max(1, apart(before, other)), (at.x + other.x) / 2, (at.y + other.y) / 2);
      return;
    }
    const own = held.current;
    if (!own) {
      pan(at.x - before.x, at.y - before.y);
      return;
    }
    if (!own.moved && Math.hypot(at.x - own.startX, at.y - own.startY) < STILL_PX) return;
    own.moved = true;
    show(own, at);
  }

  function show(own: Held, at: Point): void {
    const state = store.getState();
    const hand = handOf(own, at);
    const moved = moveOnSheets(state.history.present, own.id, sheetAt, hand, {
      wishes: wishesOf(state),
      gaps: gapsOf(state, book),
    });
    const now = moved.sheets[sheetAt]?.plates ?? [];
    const plates = now.filter((p) => sheet.plates.find(({ id }) => id === p.id) !== p);
    const [fault] = moved.faults;
    setLifted(new Set(plates.map(({ id }) => id)));
    setGhost({
      plates,
      faulty: new Set(moved.faults.flatMap((f) => f.plates)),
      sentence: fault && findingWords(fault, unit),
      hand,
      radiusMm: (sheet.plates.find(({ id }) => id === own.id)?.diameterMm ?? 0) / 2,
    });
  }

  function handOf(own: Held, at: Point): Point {
    const on = toSheet(view, at.x, at.y);
    return { x: on.x - own.off.x, y: on.y - own.off.y };
  }

  function drop(): void {
    held.current = undefined;
    setGhost(undefined);
    setLifted(NONE);
  }

  function up(e: PointerEvent<HTMLDivElement>): void {
    fingers.current.delete(e.pointerId);
    const own = held.current;
    const at = place(e);
    drop();
    if (own?.moved && e.type === 'pointerup') work.move(own.id, sheetAt, handOf(own, at));
  }

  return {
    ghost,
    lifted,
    handlers: { onPointerDown: down, onPointerMove: move, onPointerUp: up, onPointerCancel: up },
  };
}

/** The smallest plate under a point: it may lie in the waste of another. */
function plateAt({ plates }: NestedSheet, { x, y }: Point): PlacedPlate | undefined {
  return plates
    .filter((p) => Math.hypot(p.x - x, p.y - y) <= p.diameterMm / 2)
    .sort((a, b) => a.diameterMm - b.diameterMm)[0];
}

function apart(a: Point, b: Point): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}
