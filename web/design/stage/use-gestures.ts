import { useEffect, useRef, type PointerEvent, type RefObject } from 'react';
import { panBy, WHOLE, zoomAbout, type Frame, type Look, type ScreenPoint } from './canvas/view.ts';

/** Farther than this from where it went down, a pointer drags and no longer taps. */
const TAP_PX = 6;
const TAP_AGAIN_MS = 320;

/** Something taken hold of that is dragged in the picture's place. */
export interface Grip {
  /** free: the person wants no snapping now. */
  move(at: ScreenPoint, free: boolean): void;
  end(): void;
  cancel(): void;
}

export interface GestureWish {
  readonly box: RefObject<HTMLElement | null>;
  readonly frame: Frame | undefined;
  readonly look: Look;
  readonly setLook: (change: (old: Look) => Look) => void;
  readonly onTap: (at: ScreenPoint, finger: boolean, shift: boolean) => void;
  readonly onHover: (at: ScreenPoint | undefined) => void;
  /** What lies under a pointer that goes down, if it can be dragged. */
  readonly onGrab?: ((at: ScreenPoint, finger: boolean) => Grip | undefined) | undefined;
  /** A second tap; false leaves it to show the whole picture. */
  readonly onTapAgain?: ((at: ScreenPoint) => boolean) | undefined;
}

interface Held {
  at: ScreenPoint;
  readonly from: ScreenPoint;
}

/** Wheel, drag, pinch, tap, double tap. One finger on the whole plate still scrolls the page. */
export function useGestures(wish: GestureWish) {
  const { box, frame, setLook } = wish;
  const held = useRef(new Map<number, Held>());
  const moved = useRef(false);
  const grip = useRef<Grip | undefined>(undefined);
  const lastTap = useRef<{ ms: number; at: ScreenPoint } | undefined>(undefined);

  useEffect(() => {
    const element = box.current;
    if (!element || !frame) return;
    const onWheel = (event: WheelEvent) => {
      if (event.target instanceof Element && event.target.closest('button, input')) return;
      event.preventDefault();
      const lines = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? 16 : 1;
      const factor = Math.exp(-Math.max(-120, Math.min(120, event.deltaY * lines)) * 0.0022);
      const at = within(element, event);
      setLook((old) => zoomAbout(old, frame, at, factor));
    };
    // Listened to by hand: React's own wheel listener is passive and could not keep the page from scrolling.
    element.addEventListener('wheel', onWheel, { passive: false });
    return () => element.removeEventListener('wheel', onWheel);
  }, [box, frame, setLook]);

  const onPointerDown = (event: PointerEvent<HTMLElement>) => {
    if (event.button !== 0 || (event.target instanceof Element && event.target.closest('button, input'))) return;
    const at = within(event.currentTarget, event);
    if (held.current.size === 0) moved.current = false;
    held.current.set(event.pointerId, { at, from: at });
    if (held.current.size > 1) {
      moved.current = true;
      grip.current?.cancel();
      grip.current = undefined;
    } else grip.current = wish.onGrab?.(at, event.pointerType !== 'mouse');
    event.currentTarget.setPointerCapture(event.pointerId);
  };

  const onPointerMove = (event: PointerEvent<HTMLElement>) => {
    const at = within(event.currentTarget, event);
    const mine = held.current.get(event.pointerId);
    if (!mine || !frame) {
      if (event.pointerType === 'mouse') wish.onHover(at);
      return;
    }
    const before = mine.at;
    const other = [...held.current].find(([id]) => id !== event.pointerId)?.[1];
    mine.at = at;
    if (other) {
      const factor = gap(at, other.at) / Math.max(1, gap(before, other.at));
      const middle = { leftPx: (at.leftPx + other.at.leftPx) / 2, topPx: (at.topPx + other.at.topPx) / 2 };
      const right = (at.leftPx - before.leftPx) / 2;
      const down = (at.topPx - before.topPx) / 2;
      setLook((old) => panBy(zoomAbout(old, frame, middle, factor), frame, right, down));
      return;
    }
    if (!moved.current && gap(at, mine.from) < TAP_PX) return;
    moved.current = true;
    if (grip.current) grip.current.move(at, event.altKey);
    else setLook((old) => (old.zoom > 1 ? panBy(old, frame, at.leftPx - before.leftPx, at.topPx - before.topPx) : old));
  };

  const onPointerUp = (event: PointerEvent<HTMLElement>) => {
    const mine = held.current.get(event.pointerId);
    held.current.delete(event.pointerId);
    const gripped = grip.current;
    grip.current = undefined;
    if (mine && moved.current) gripped?.end();
    if (!mine || moved.current || held.current.size > 0) return;
    const at = mine.at;
    const last = lastTap.current;
    lastTap.current = { ms: event.timeStamp, at };
    if (last && event.timeStamp - last.ms < TAP_AGAIN_MS && gap(last.at, at) < 4 * TAP_PX) {
      lastTap.current = undefined;
      if (!wish.onTapAgain?.(at)) setLook(() => WHOLE);
      return;
    }
    wish.onTap(at, event.pointerType !== 'mouse', event.shiftKey || event.ctrlKey || event.metaKey);
  };

  const onPointerCancel = (event: PointerEvent<HTMLElement>) => {
    held.current.delete(event.pointerId);
    grip.current?.cancel();
    grip.current = undefined;
  };

  const onPointerLeave = () => wish.onHover(undefined);

  return { onPointerDown, onPointerMove, onPointerUp, onPointerCancel, onPointerLeave };
}

function within(element: Element, event: { clientX: number; clientY: number }): ScreenPoint {
  const box = element.getBoundingClientRect();
  return { leftPx: event.clientX - box.left, topPx: event.clientY - box.top };
}

function gap(a: ScreenPoint, b: ScreenPoint): number {
  return Math.hypot(a.leftPx - b.leftPx, a.topPx - b.topPx);
}
