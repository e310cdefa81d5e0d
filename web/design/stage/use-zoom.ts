import { useState } from 'react';
import type { Point } from '../../../geometry/shapes.ts';
import { lookAt, panBy, WHOLE, zoomAbout, type Frame } from './canvas/view.ts';

/** How near something comes that was chosen elsewhere. */
const NEAR_ZOOM = 3.5;
const STEP = 1.5;
const PAN_PX = 48;

/** Which part of the plate is looked at, and how near; by buttons and keys here, by hand elsewhere. */
export function useZoom(frame: Frame | undefined, near: Point | undefined) {
  const [look, setLook] = useState(WHOLE);
  const [shown, setShown] = useState(near);
  // A bridge chosen in the list comes near, so that there is something to see and to hold.
  if (frame && near !== shown) {
    setShown(near);
    if (near) setLook(lookAt(look, frame, near, NEAR_ZOOM));
  }

  function zoomBy(factor: number): void {
    if (!frame) return;
    const middle = { leftPx: frame.size.width / 2, topPx: frame.size.height / 2 };
    setLook((old) => zoomAbout(old, frame, middle, factor));
  }

  /** False when the key means nothing here. */
  function pressKey(key: string): boolean {
    const arrow = ARROWS[key];
    if (frame && arrow && look.zoom > 1) setLook((old) => panBy(old, frame, arrow[0] * PAN_PX, arrow[1] * PAN_PX));
    else if (key === '+' || key === '=') zoomBy(STEP);
    else if (key === '-') zoomBy(1 / STEP);
    else if (key === '0') setLook(WHOLE);
    else return false;
    return true;
  }

  return { look, setLook, zoomBy, pressKey };
}

/** How the picture moves for each key: the eye goes where the arrow points, so the plate goes the other way. */
const ARROWS: Record<string, readonly [number, number] | undefined> = {
  ArrowLeft: [1, 0],
  ArrowRight: [-1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};
