import { useEffect, type KeyboardEvent, type PointerEvent, type RefObject } from 'react';
import { turnEye, zoomEye } from './eye.ts';
import type { EyeHolder } from './eye-holder.ts';

const TURN_PER_PX = 0.32;
const TURN_BY_KEY = 8;
const ZOOM_BY_KEY = 1.15;

interface Hand {
  onPointerDown(event: PointerEvent): void;
  onPointerMove(event: PointerEvent): void;
  onPointerUp(event: PointerEvent): void;
  onPointerCancel(event: PointerEvent): void;
  onKeyDown(event: KeyboardEvent): void;
}

/** Turns by a drag or one finger, zooms by two fingers or the wheel; keys do both. */
export function useHand(frame: RefObject<HTMLElement | null>, eye: EyeHolder, wholeMm: number): Hand {
  useEffect(() => {
    const element = frame.current;
    if (!element) return;
    const roll = (event: WheelEvent) => {
      event.preventDefault();
      eye.jump(zoomEye(eye.get(), Math.exp(event.deltaY * 0.0012), wholeMm));
    };
    // React's own listener could not keep the page from rolling.
    element.addEventListener('wheel', roll, { passive: false });
    return () => element.removeEventListener('wheel', roll);
  }, [frame, eye, wholeMm]);

  const at = pointers;
  const lift = (event: PointerEvent) => void at.delete(event.pointerId);
  return {
    onPointerDown(event) {
      if (event.button !== 0) return;
      event.currentTarget.setPointerCapture(event.pointerId);
      at.set(event.pointerId, { x: event.clientX, y: event.clientY });
    },
    onPointerMove(event) {
      const before = at.get(event.pointerId);
      if (!before) return;
      const now = { x: event.clientX, y: event.clientY };
      const other = [...at].find(([id]) => id !== event.pointerId)?.[1];
      at.set(event.pointerId, now);
      if (other) {
        const was = Math.hypot(before.x - other.x, before.y - other.y);
        const is = Math.hypot(now.x - other.x, now.y - other.y);
        if (was > 0 && is > 0) eye.jump(zoomEye(eye.get(), was / is, wholeMm));
        return;
      }
      eye.jump(turnEye(eye.get(), (before.x - now.x) * TURN_PER_PX, (now.y - before.y) * TURN_PER_PX));
    },
    onPointerUp: lift,
    onPointerCancel: lift,
    onKeyDown(event) {
      if (event.ctrlKey || event.metaKey || event.altKey) return;
      const next = byKey(event.key, eye, wholeMm);
      if (!next) return;
      event.preventDefault();
      eye.jump(next);
    },
  };
}

/** Fingers on the barrel; there is one barrel on a page. */
const pointers = new Map<number, { readonly x: number; readonly y: number }>();

function byKey(key: string, holder: EyeHolder, wholeMm: number) {
  const eye = holder.get();
  switch (key) {
    case 'ArrowLeft':
      return turnEye(eye, -TURN_BY_KEY, 0);
    case 'ArrowRight':
      return turnEye(eye, TURN_BY_KEY, 0);
    case 'ArrowUp':
      return turnEye(eye, 0, TURN_BY_KEY);
    case 'ArrowDown':
      return turnEye(eye, 0, -TURN_BY_KEY);
    case '+':
    case '=':
      return zoomEye(eye, 1 / ZOOM_BY_KEY, wholeMm);
    case '-':
      return zoomEye(eye, ZOOM_BY_KEY, wholeMm);
    default:
      return undefined;
  }
}
