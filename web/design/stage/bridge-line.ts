import type { Bridge } from '../../../geometry/bridges/types.ts';
import { nearestOnSegment } from '../../../geometry/measure/distance.ts';
import type { Point } from '../../../geometry/shapes.ts';
import { toPlate, toScreen, type ScreenPoint, type View } from './canvas/view.ts';
import { LEAST_DIVISOR_MM } from '../../../geometry/units.ts';

/** Bridges as they are taken hold of on the stage. Pure; plate millimetres unless a name says pixels. */
export interface Line {
  readonly from: Point;
  readonly to: Point;
}

/** What of a chosen bridge is held: one of its ends turns it, its body moves it. */
export type Hold = 'from' | 'to' | 'body';

/** End handles stand off the bar's ends by so much, so that a short bar still has a body to hold. */
export const HANDLE_OFF_PX = 18;
export const HANDLE_PX = 7;

/** A bridge's name among all: its edit when a person made it, so that it stays chosen while it is worked on. */
export function bridgeKey(bridge: Pick<Bridge, 'id' | 'editId'>): string {
  return bridge.editId ?? bridge.id;
}

export function middleOf({ from, to }: Line): Point {
  return { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
}

/** Where the two end handles stand. */
export function handlesOf(line: Line, view: View): { readonly from: ScreenPoint; readonly to: ScreenPoint } {
  const [a, b] = [toScreen(view, line.from), toScreen(view, line.to)];
  const length = Math.max(LEAST_DIVISOR_MM, Math.hypot(b.leftPx - a.leftPx, b.topPx - a.topPx));
  const x = ((b.leftPx - a.leftPx) / length) * HANDLE_OFF_PX;
  const y = ((b.topPx - a.topPx) / length) * HANDLE_OFF_PX;
  return { from: { leftPx: a.leftPx - x, topPx: a.topPx - y }, to: { leftPx: b.leftPx + x, topPx: b.topPx + y } };
}

/** What of the chosen bridge is under a pointer; the nearest of handles and body within reach. */
export function holdAt(line: Line, widthMm: number, view: View, at: ScreenPoint, finger: boolean): Hold | undefined {
  const handles = handlesOf(line, view);
  const far = (p: ScreenPoint) => Math.hypot(p.leftPx - at.leftPx, p.topPx - at.topPx);
  const p = toPlate(view, at);
  const body = (farFrom(line, p) - widthMm / 2) * view.scale;
  const reach = finger ? 22 : 10;
  const all: [Hold, number][] = [
    ['body', Math.max(0, body)],
    ['from', far(handles.from)],
    ['to', far(handles.to)],
  ];
  const best = all.reduce((p, q) => (q[1] < p[1] ? q : p));
  return best[1] <= reach ? best[0] : undefined;
}

/** The bridge under a pointer, or the nearest within reach. */
export function bridgeAt(bridges: readonly Bridge[], view: View, at: ScreenPoint, finger: boolean): Bridge | undefined {
  const p = toPlate(view, at);
  let best: Bridge | undefined;
  let least = (finger ? 20 : 8) / view.scale;
  for (const bridge of bridges) {
    const away = Math.max(0, farFrom(bridge, p) - bridge.widthMm / 2);
    if (away < least) [best, least] = [bridge, away];
  }
  return best;
}

function farFrom(line: Line, p: Point): number {
  const q = nearestOnSegment(p, line.from, line.to);
  return Math.hypot(p.x - q.x, p.y - q.y);
}

export function shifted({ from, to }: Line, dx: number, dy: number): Line {
  return { from: { x: from.x + dx, y: from.y + dy }, to: { x: to.x + dx, y: to.y + dy } };
}

/** Turned about its middle, clockwise. */
export function turned(line: Line, deg: number): Line {
  const m = middleOf(line);
  const [s, c] = [Math.sin((deg * Math.PI) / 180), Math.cos((deg * Math.PI) / 180)];
  const turn = (p: Point) => ({
    x: m.x + (p.x - m.x) * c + (p.y - m.y) * s,
    y: m.y + (p.y - m.y) * c - (p.x - m.x) * s,
  });
  return { from: turn(line.from), to: turn(line.to) };
}

/** The line after what is held was dragged from one place to another. */
export function dragged(line: Line, hold: Hold, start: Point, now: Point): Line {
  if (hold === 'body') return shifted(line, now.x - start.x, now.y - start.y);
  const m = middleOf(line);
  const clock = (p: Point) => (Math.atan2(p.x - m.x, p.y - m.y) * 180) / Math.PI;
  return turned(line, clock(now) - clock(start));
}

export function barOf({ from, to }: Line, widthMm: number): Point[] {
  const length = Math.max(LEAST_DIVISOR_MM, Math.hypot(to.x - from.x, to.y - from.y));
  const x = ((to.y - from.y) / length) * (widthMm / 2);
  const y = ((from.x - to.x) / length) * (widthMm / 2);
  return [
    { x: from.x + x, y: from.y + y },
    { x: to.x + x, y: to.y + y },
    { x: to.x - x, y: to.y - y },
    { x: from.x - x, y: from.y - y },
  ];
}
