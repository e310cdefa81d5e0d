import type { PlateResult } from '../../../geometry/plate.ts';
import { nearestOnSegment } from '../../../geometry/measure/distance.ts';
import type { Point, Ring } from '../../../geometry/shapes.ts';
import type { CardPicture } from './card.ts';

/** The picture's box goes from -100 to 100. */
const HALF = 100;
/** A point is left out where the line without it runs no farther off than this: a card's plate is some 130 px wide. */
const MOST_OFF = 0.3;
/** What is smaller than this across can't be seen there. */
const LEAST_ACROSS = 0.8;
/** A plate of more than this keeps its largest openings only. */
const MOST_CHARACTERS = 58_000;

/** A small drawing of what is cut from a plate, for the list of own designs. */
export function smallPicture(plate: PlateResult): CardPicture {
  const scale = HALF / Math.max(plate.diameterMm / 2, 1e-9);
  const rings = plate.openings.flatMap((o) => [o.region.outer, ...o.region.holes]);
  const drawn = rings
    .map((ring) => ring.map((p) => ({ x: p.x * scale, y: -p.y * scale })))
    .map((ring) => ({ ring, across: across(ring) }))
    .filter((one) => one.across >= LEAST_ACROSS)
    .sort((p, q) => q.across - p.across);
  let path = '';
  for (const { ring } of drawn) {
    const part = ringPath(ring);
    if (path.length + part.length <= MOST_CHARACTERS) path += part;
  }
  return { path };
}

/** y up in the plate's frame, down on the screen. */
function ringPath(ring: Ring): string {
  const half = Math.floor(ring.length / 2);
  const kept = [...thinned(ring, 0, half), ...thinned([...ring, ...ring.slice(0, 1)], half, ring.length)];
  return `M${kept.map((p) => `${p.x.toFixed(1)} ${p.y.toFixed(1)}`).join('L')}Z`;
}

/** Points from one place up to and without another, after Douglas and Peucker (Cartographica 10, 1973). */
function thinned(points: readonly Point[], from: number, to: number): readonly Point[] {
  const [a, b] = [points[from], points[to]];
  if (!a || !b) return [];
  let [farthest, off] = [-1, MOST_OFF];
  for (let i = from + 1; i < to; i++) {
    const p = points[i] ?? a;
    const near = nearestOnSegment(p, a, b);
    const distance = Math.hypot(p.x - near.x, p.y - near.y);
    if (distance > off) [farthest, off] = [i, distance];
  }
  return farthest < 0 ? [a] : [...thinned(points, from, farthest), ...thinned(points, farthest, to)];
}

function across(ring: Ring): number {
  const [xs, ys] = [ring.map((p) => p.x), ring.map((p) => p.y)];
  return Math.hypot(Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys));
}
