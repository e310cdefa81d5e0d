import { isBand } from '../../../../geometry/design/kinds.ts';
import type { Artwork, DesignElement, LineText, Motif } from '../../../../geometry/design/schema.ts';
import { turnPoint } from '../../../../geometry/measure/clock.ts';

/**
 * One element moved, turned or made larger by hand. Pure; lengths are shares of the plate's radius, angles clock
 * degrees. What an element can't do (a border has no angle) leaves it the very same.
 */
export type FreeElement = LineText | Motif | Artwork;

/** What lies anywhere, not in a band about the centre. */
export function isFree(element: DesignElement): element is FreeElement {
  return !isBand(element);
}

/** Moved right and up, no farther than the plate's square; bands stay. */
export function shiftElement(e: DesignElement, right: number, up: number): DesignElement {
  if (!isFree(e) || (right === 0 && up === 0)) return e;
  return { ...e, x: clamp(e.x + right, -1, 1), y: clamp(e.y + up, -1, 1) };
}

/** Carried clockwise about the plate's centre: ring text along its ring, the others with their own turn. */
export function swingElement(e: DesignElement, deg: number): DesignElement {
  if (e.kind === 'border' || deg === 0) return e;
  if (e.kind === 'ringText') return { ...e, middleDeg: plainDeg(e.middleDeg + deg) };
  const to = turnPoint(e, deg);
  return { ...e, x: clamp(to.x, -1, 1), y: clamp(to.y, -1, 1), turnDeg: plainDeg(e.turnDeg + deg) };
}

/** A band carried outward (or inward), as wide as it was, no farther than centre and rim; the others stay. */
export function pullElement(e: DesignElement, outward: number): DesignElement {
  if (!isBand(e)) return e;
  const by = clamp(outward, -Math.min(e.inner, e.outer), 1 - Math.max(e.inner, e.outer));
  return by === 0 ? e : { ...e, inner: e.inner + by, outer: e.outer + by };
}

/** Turned clockwise about its own middle; bands have no turn. */
export function turnElement(e: DesignElement, deg: number): DesignElement {
  return isFree(e) && deg !== 0 ? { ...e, turnDeg: plainDeg(e.turnDeg + deg) } : e;
}

/** Larger (above 1) or smaller about its own middle; a width or span it fills grows with it. */
export function sizeElement(e: DesignElement, factor: number): DesignElement {
  if (factor === 1 || !(factor > 0)) return e;
  if (e.kind === 'lineText') {
    const capHeight = clamp(e.capHeight * factor, LEAST_SIZE, 2);
    const grown = capHeight / e.capHeight;
    const fit = e.fit === 'natural' ? e.fit : { ...e.fit, width: clamp(e.fit.width * grown, 0.01, 2) };
    return { ...e, capHeight, fit };
  }
  if (!isBand(e)) return { ...e, size: clamp(e.size * factor, LEAST_SIZE, 2) };
  const middle = (e.inner + e.outer) / 2;
  const most = Math.min(middle, 1 - middle);
  const half = clamp((Math.abs(e.outer - e.inner) / 2) * factor, Math.min(LEAST_SIZE / 2, most), most);
  return { ...e, inner: middle - half, outer: middle + half };
}

const LEAST_SIZE = 0.01;

/** Above -180 and up to 180. */
export function plainDeg(deg: number): number {
  const plain = ((deg % 360) + 360) % 360;
  return plain > 180 ? plain - 360 : plain;
}

function clamp(value: number, least: number, most: number): number {
  return Math.min(most, Math.max(least, value));
}
