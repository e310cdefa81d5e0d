import { placePoint } from '../../geometry/measure/clock.ts';
import { mapOutline } from '../../geometry/measure/map-outline.ts';
import { writePathData } from '../../geometry/measure/path-data.ts';
import type { Outline, Placement, Point, Region, Ring } from '../../geometry/shapes.ts';

/** The layers of the viewer, in the order in which they are drawn; one for each outcome of a stage. */
export const LAYERS = [
  { id: 'blank', title: 'Blank', from: 'what the plate is cut from' },
  { id: 'extents', title: 'Places of elements', from: 'layout' },
  { id: 'layout', title: 'Layout', from: 'layout' },
  { id: 'unbridged', title: 'Openings before bridges', from: 'openings' },
  { id: 'pieces', title: 'Pieces to hold', from: 'bridges, first look' },
  { id: 'bars', title: 'Candidate bars', from: 'bridges, first look' },
  { id: 'openings', title: 'Openings', from: 'bridges' },
  { id: 'bridges', title: 'Bridges', from: 'bridges' },
  { id: 'islands', title: 'Islands', from: 'bridges' },
  { id: 'plan', title: 'Part outline', from: 'cut plan' },
  { id: 'cut', title: 'Tool path and its order', from: 'sheet plan' },
  { id: 'leads', title: 'Lead-ins and pierces', from: 'sheet plan' },
  { id: 'rapids', title: 'Rapid moves', from: 'sheet plan' },
  { id: 'slugs', title: 'Pieces that may tip up', from: 'sheet plan' },
  { id: 'findings', title: 'Findings', from: 'checks' },
] as const;

export type LayerId = (typeof LAYERS)[number]['id'];

/** One thing to draw, in the plate's frame with y turned down, millimetres; `says` is what it is, for a pointer over it. */
export type Mark =
  | { readonly kind: 'area' | 'line'; readonly path: string; readonly says: string }
  | { readonly kind: 'dot'; readonly at: Point; readonly says: string }
  | { readonly kind: 'text'; readonly at: Point; readonly text: string; readonly says: string };

export interface Layer {
  readonly id: LayerId;
  /** Things of the stage; one of them may take several marks. */
  readonly count: number;
  readonly marks: readonly Mark[];
}

export function layer<T>(id: LayerId, things: readonly T[], draw: (thing: T, index: number) => readonly Mark[]): Layer {
  return { id, count: things.length, marks: things.flatMap(draw) };
}

export function regionPath({ outer, holes }: Region): string {
  return [outer, ...holes].map(ringPath).join('');
}

export function ringPath(ring: Ring): string {
  return ring.length === 0 ? '' : `${linePath(ring)}Z`;
}

export function linePath(points: readonly Point[]): string {
  return points.map((p, i) => `${i === 0 ? 'M' : 'L'}${n(p.x)} ${n(-p.y)}`).join('');
}

/** An outline with its curves as they are. */
export function outlinePath(outline: Outline, at: Placement): string {
  const down = (x: number, y: number) => {
    const p = placePoint({ x, y }, at);
    return { x: p.x, y: -p.y };
  };
  return writePathData(mapOutline(outline, down), DECIMALS);
}

export function circlePath(radiusMm: number, at: Point = { x: 0, y: 0 }): string {
  const [left, right, y, r] = [n(at.x - radiusMm), n(at.x + radiusMm), n(-at.y), n(radiusMm)];
  return `M${left} ${y}A${r} ${r} 0 1 0 ${right} ${y}A${r} ${r} 0 1 0 ${left} ${y}Z`;
}

export function mm(value: number): string {
  return `${value.toFixed(2)} mm`;
}

const DECIMALS = 4;

function n(value: number): string {
  return String(Number(value.toFixed(DECIMALS)) + 0);
}
