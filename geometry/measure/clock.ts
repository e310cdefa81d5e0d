import type { Placement, Point } from '../shapes.ts';

/** Point at a radius and a clock angle (0 at the top, clockwise). Millimetres or shares, as the radius is. */
export function clockPoint(radius: number, clockDeg: number): Point {
  const rad = (clockDeg * Math.PI) / 180;
  return { x: radius * Math.sin(rad), y: radius * Math.cos(rad) };
}

/** Clock angle of a point about the origin, 0 up to 360; the origin itself is at 0. */
export function clockAngleDeg(p: Point): number {
  const deg = (Math.atan2(p.x, p.y) * 180) / Math.PI;
  return deg < 0 ? deg + 360 : deg;
}

/** Turned clockwise about the origin. */
export function turnPoint(p: Point, turnDeg: number): Point {
  const rad = (turnDeg * Math.PI) / 180;
  const c = Math.cos(rad);
  const s = Math.sin(rad);
  return { x: p.x * c + p.y * s, y: p.y * c - p.x * s };
}

/** From a shape's own frame to the plate's. */
export function placePoint(p: Point, at: Placement): Point {
  const t = turnPoint(p, at.turnDeg);
  return { x: t.x + at.x, y: t.y + at.y };
}

/** From the plate's frame to a shape's own. */
export function unplacePoint(p: Point, at: Placement): Point {
  return turnPoint({ x: p.x - at.x, y: p.y - at.y }, -at.turnDeg);
}
