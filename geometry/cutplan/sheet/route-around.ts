/**
 * A way from one point to another that passes over none of some rings, as straight as it can be.
 *
 * In: two points and rings. A ring may be left where the way begins, on its edge or half a kerf inside it, never
 * crossed again. Out: the points of the way, or undefined where none was found.
 *
 * The shortest way around polygons bends only at their corners (Lozano-Perez and Wesley, Comm. ACM 22 (1979) 560):
 * shortest path through the corners, moved out a little, that see each other. Rings are taken in as they get in the way.
 */
import { offset } from '../../adapters/clipper.ts';
import { memoize } from '../../cache.ts';
import { segmentsMeet } from '../../measure/distance.ts';
import { boxOf } from '../../measure/facts.ts';
import { ringHolds, signedAreaMm2 } from '../../measure/ring.ts';
import type { Point, Ring } from '../../shapes.ts';
import { DETOUR_ERROR_MM } from '../../units.ts';

/** Ways keep so far off: a little more than the play of a head in motion. Common practice, no source. */
const CLEAR_MM = 0.3;
/** Rings taken in at most; a way around more is rather made above them. */
const MOST_RINGS = 8;

export function routeAround(from: Point, to: Point, rings: readonly Ring[]): Point[] | undefined {
  const taken: Ring[] = [];
  let way = [from, to];
  for (;;) {
    const hit = rings.find((ring) => !taken.includes(ring) && crossesAny(way, ring));
    if (!hit) return taken.length === 0 || !taken.some((ring) => crossesAny(way, ring)) ? way : undefined;
    taken.push(hit);
    if (taken.length > MOST_RINGS) return undefined;
    const found = findShortestRoute(from, to, taken);
    if (!found) return undefined;
    way = found;
  }
}

function crossesAny(way: readonly Point[], ring: Ring): boolean {
  return way.some((p, i) => i > 0 && crosses(way[i - 1]!, p, ring));
}

/** Whether a straight way meets a ring's edge or lies in it; touching counts. */
function crosses(a: Point, b: Point, ring: Ring): boolean {
  const box = boxOf(ring);
  if (Math.max(a.x, b.x) < box.minX || Math.min(a.x, b.x) > box.maxX) return false;
  if (Math.max(a.y, b.y) < box.minY || Math.min(a.y, b.y) > box.maxY) return false;
  let p = ring[ring.length - 1]!;
  for (const q of ring) {
    if (segmentsMeet(a, b, p, q)) return true;
    p = q;
  }
  return ringHolds(ring, a);
}

/** Corners around a ring at which a way may bend, a little off it. */
const bendsOf = memoize((ring: Ring): readonly Point[] => {
  const outer = signedAreaMm2(ring) > 0 ? ring : [...ring].reverse();
  const grown = offset([{ outer, holes: [] }], CLEAR_MM, DETOUR_ERROR_MM)[0]?.outer ?? [];
  return simplifyRing(grown).filter((p, i, all) => {
    const [a, b] = [all[(i + all.length - 1) % all.length]!, all[(i + 1) % all.length]!];
    return (p.x - a.x) * (b.y - p.y) - (p.y - a.y) * (b.x - p.x) > 0;
  });
});

/** Fewer points: one is left out while the line past it stays within DETOUR_ERROR_MM. */
function simplifyRing(ring: Ring): Point[] {
  const out: Point[] = [];
  let i = 0;
  while (i < ring.length) {
    out.push(ring[i]!);
    let j = i + 1;
    while (j < ring.length && within(ring, i, j + 1)) j++;
    i = j;
  }
  return out;
}

function within(ring: Ring, from: number, to: number): boolean {
  const [a, b] = [ring[from]!, ring[to % ring.length]!];
  const mm = Math.hypot(b.x - a.x, b.y - a.y);
  if (mm === 0) return false;
  for (let k = from + 1; k < to; k++) {
    const p = ring[k]!;
    if (Math.abs((p.x - a.x) * (b.y - a.y) - (p.y - a.y) * (b.x - a.x)) / mm > DETOUR_ERROR_MM) return false;
  }
  return true;
}

/** Dijkstra's shortest path; whether two bends see each other is asked only when it matters. */
function findShortestRoute(from: Point, to: Point, rings: readonly Ring[]): Point[] | undefined {
  const nodes = [
    from,
    to,
    ...rings.flatMap((ring) => bendsOf(ring)).filter((p) => !rings.some((r) => ringHolds(r, p))),
  ];
  const mm = nodes.map((_, i) => (i === 0 ? 0 : Infinity));
  const before = nodes.map(() => -1);
  const done = nodes.map(() => false);
  for (;;) {
    let at = -1;
    for (let i = 0; i < nodes.length; i++) if (!done[i] && mm[i]! < (at < 0 ? Infinity : mm[at]!)) at = i;
    if (at < 0) return undefined;
    if (at === 1) break;
    done[at] = true;
    const p = nodes[at]!;
    for (let i = 1; i < nodes.length; i++) {
      if (done[i]) continue;
      const q = nodes[i]!;
      const way = mm[at]! + Math.hypot(q.x - p.x, q.y - p.y);
      if (way >= mm[i]! || rings.some((ring) => crosses(p, q, ring))) continue;
      [mm[i], before[i]] = [way, at];
    }
  }
  const way: Point[] = [];
  for (let i = 1; i >= 0; i = before[i]!) way.unshift(nodes[i]!);
  return way;
}
