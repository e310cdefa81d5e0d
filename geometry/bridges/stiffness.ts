import {
  type Beam,
  greatestStressMPa,
  GROUND,
  type Group,
  groupsOf,
  liftAt,
  motionUnder,
} from '../measure/grillage.ts';
import { boxesWithin, ringBox, ringHolds, signedAreaMm2 } from '../measure/ring.ts';
import type { Box, Point, Region, Ring } from '../shapes.ts';
import type { StockRules } from '../stock/rules.ts';
import { FLATTEN_ERROR_MM, M3_PER_MM3 } from '../units.ts';
import type { Hang } from './types.ts';

/** What counts of a bridge. */
export interface Plank {
  readonly from: Point;
  readonly to: Point;
  readonly widthMm: number;
}

/** An island of the drawing: what one hole of the unbridged openings encloses. */
export interface Body {
  readonly ring: Ring;
  readonly box: Box;
  /** Of all that the ring encloses. */
  readonly enclosedMm2: number;
  /** Metal of it: openings inside taken off. */
  readonly areaMm2: number;
  /** Their common centre of mass. */
  readonly centre: Point;
}

/** Islands of the drawing and what lies beyond each edge of its openings. */
export interface Metal {
  readonly bodies: readonly Body[];
  /** Edges of the openings, with the body that is the metal on their far side. */
  readonly edges: readonly { readonly ring: Ring; readonly body: number; readonly box: Box }[];
}

/**
 * How every island hangs (or only one of them and those that move with it), by beams (measure/grillage.ts); undefined for one that no bars hold.
 *
 * In: the metal, the beams of all its bridges, stock rules that know the stock's stiffness. Out: by metal.bodies. Each island is taken as rigid, each bridge as a bar of the length of opening that its middle line crosses, built in
 * at both ends. Islands held by other islands move with them. The sheet outside is taken as held still.
 * Not counted: the sheet's own bending (a whole round of 360 mm in 1.5 mm steel: 0.05 mm under 5 N, Timoshenko's
 * Pa2/16piD), bridges of a stencil face that are wide enough as drawn, letters cut out of the island elsewhere.
 */
export function hangOf(metal: Metal, beams: readonly Beam[], rules: StockRules, only?: number): (Hang | undefined)[] {
  const hangs: (Hang | undefined)[] = metal.bodies.map(() => undefined);
  const { stiffness, thicknessMm } = rules;
  if (!stiffness || beams.length === 0) return hangs;
  const centres = metal.bodies.map((b) => b.centre);
  const section = { ...stiffness, thicknessMm };
  const weight = thicknessMm * stiffness.densityKgM3 * M3_PER_MM3 * GRAVITY;
  for (const group of groupsOf(centres, beams, section, only)) {
    if (!group.factor) continue;
    const heavy = new Float64Array(3 * group.bodies.length);
    group.bodies.forEach((b, i) => (heavy[3 * i] = metal.bodies[b]!.areaMm2 * weight));
    const sagged = motionUnder(group, heavy)!;
    group.bodies.forEach((b, i) => {
      const { ring, centre } = metal.bodies[b]!;
      const { at, mm } = findSoftest(group, i, ring, centre);
      const push = new Float64Array(3 * group.bodies.length);
      push.set(
        liftAt(at, centre).map((v) => v * stiffness.touchN),
        3 * i,
      );
      const sags = ring.map((p) => Math.abs(dot(liftAt(p, centre), sagged, 3 * i)));
      hangs[b] = {
        touchMm: mm * stiffness.touchN,
        softAt: at,
        sagMm: Math.max(...sags),
        rootMPa: greatestStressMPa(group, motionUnder(group, push)!, centres, section),
      };
    });
  }
  return hangs;
}

/** The same for bars: their beams are found first. */
export function hangsOfBars(metal: Metal, bars: readonly Plank[], rules: StockRules): (Hang | undefined)[] {
  if (!rules.stiffness) return metal.bodies.map(() => undefined);
  return hangOf(
    metal,
    bars.flatMap((bar) => beamsOf(metal, bar)),
    rules,
  );
}

/** Standard gravity, m/s2: exact by definition (3rd CGPM, 1901). */
const GRAVITY = 9.80665;

/** How many times the island gives, sags or strains its bridges more than it may; above 1 it is too soft. */
export function softness({ touchMm, sagMm, rootMPa }: Hang, { stiffness }: StockRules): number {
  if (!stiffness) return 0;
  const { touchLimitMm, sagLimitMm, yieldMPa = Infinity } = stiffness;
  return Math.max(touchMm / touchLimitMm, sagMm / sagLimitMm, rootMPa / yieldMPa);
}

/** The islands of the drawing. In: united openings, one unit or more. */
export function metalOf(regions: readonly Region[]): Metal {
  const holes = regions
    .flatMap((r) => r.holes)
    .map((ring) => ({ ring, box: ringBox(ring), enclosedMm2: Math.abs(signedAreaMm2(ring)) }));
  const inside = regions.map((r) => findInnermost(holes, r.outer[0]!));
  const bodies = holes.map((own, hole): Body => {
    const parts = [own.ring, ...regions.filter((_, i) => inside[i] === hole).map((r) => r.outer)];
    let [area, x, y] = [0, 0, 0];
    parts.forEach((part, i) => {
      const m = momentsOf(part);
      const sign = i === 0 ? 1 : -1;
      area += sign * m.area;
      x += sign * m.x;
      y += sign * m.y;
    });
    return { ...own, areaMm2: area, centre: { x: x / area, y: y / area } };
  });
  const edges = [
    ...holes.map(({ ring, box }, body) => ({ ring, box, body })),
    ...regions.map((r, i) => ({ ring: r.outer, box: ringBox(r.outer), body: inside[i]! })),
  ];
  return { bodies, edges };
}

/** The innermost island that the point lies in, or GROUND. */
export function bodyAt(metal: Metal, p: Point): number {
  return findInnermost(metal.bodies, p);
}

/** The lengths of opening that the bar's middle line crosses, each a beam between the metal at its two ends. */
export function beamsOf({ edges }: Metal, { from, to, widthMm }: Plank): Beam[] {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const [dx, dy] = [(to.x - from.x) / length, (to.y - from.y) / length];
  const crossings: { at: number; body: number }[] = [];
  const bar = ringBox([from, to]);
  for (const { ring, body, box } of edges) {
    // A ring clear of the bar's box is crossed an even number of times, all before it or all after it.
    if (!boxesWithin(bar, box, FLATTEN_ERROR_MM)) continue;
    let a = ring[ring.length - 1]!;
    let sideA = (a.x - from.x) * dy - (a.y - from.y) * dx;
    for (const b of ring) {
      const sideB = (b.x - from.x) * dy - (b.y - from.y) * dx;
      if (sideA > 0 !== sideB > 0) {
        const t = sideA / (sideA - sideB);
        const at = (a.x + t * (b.x - a.x) - from.x) * dx + (a.y + t * (b.y - a.y) - from.y) * dy;
        crossings.push({ at, body });
      }
      [a, sideA] = [b, sideB];
    }
  }
  crossings.sort((p, q) => p.at - q.at);
  const beams: Beam[] = [];
  // Far out the line is in metal, so crossings go in and out of openings by turns.
  for (let i = 0; i + 1 < crossings.length; i += 2) {
    const [p, q] = [crossings[i]!, crossings[i + 1]!];
    if (p.at < 0 || q.at > length || p.body === q.body || q.at - p.at < FLATTEN_ERROR_MM) continue;
    const point = (at: number) => ({ x: from.x + at * dx, y: from.y + at * dy });
    beams.push({ a: p.body, b: q.body, from: point(p.at), to: point(q.at), widthMm });
  }
  return beams;
}

/** Where on the ring 1 N moves the group's i-th body farthest, and how far: a convex function, so at a corner of it. */
function findSoftest(group: Group, i: number, ring: Ring, centre: Point): { at: Point; mm: number } {
  const [first, second, third] = [0, 1, 2].map((freedom) => {
    const load = new Float64Array(3 * group.bodies.length);
    load[3 * i + freedom] = 1;
    return motionUnder(group, load)!;
  });
  let best = { at: centre, mm: 0 };
  for (const at of ring) {
    const lift = liftAt(at, centre);
    const mm =
      lift[0] * dot(lift, first!, 3 * i) + lift[1] * dot(lift, second!, 3 * i) + lift[2] * dot(lift, third!, 3 * i);
    if (mm > best.mm) best = { at, mm };
  }
  return best;
}

function dot(lift: readonly [number, number, number], motion: Float64Array, first: number): number {
  return lift[0] * motion[first]! + lift[1] * motion[first + 1]! + lift[2] * motion[first + 2]!;
}

function findInnermost(holes: readonly Pick<Body, 'ring' | 'box' | 'enclosedMm2'>[], p: Point): number {
  let best = GROUND;
  let least = Infinity;
  holes.forEach(({ ring, box, enclosedMm2 }, i) => {
    if (enclosedMm2 >= least || p.x < box.minX || p.x > box.maxX || p.y < box.minY || p.y > box.maxY) return;
    if (ringHolds(ring, p)) [best, least] = [i, enclosedMm2];
  });
  return best;
}

/** Area of a ring and its first moments, whatever way it runs, mm2 and mm3. */
function momentsOf(ring: Ring): { area: number; x: number; y: number } {
  let [area, x, y] = [0, 0, 0];
  const o = ring[0]!;
  let a = ring[ring.length - 1]!;
  for (const b of ring) {
    // About the first point, so that a ring far from the origin loses no digits.
    const cross = (a.x - o.x) * (b.y - o.y) - (b.x - o.x) * (a.y - o.y);
    area += cross / 2;
    x += (cross * (a.x + b.x - 2 * o.x)) / 6;
    y += (cross * (a.y + b.y - 2 * o.y)) / 6;
    a = b;
  }
  const sign = area < 0 ? -1 : 1;
  return { area: sign * area, x: sign * (x + area * o.x), y: sign * (y + area * o.y) };
}
