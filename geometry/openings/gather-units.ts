import { union } from '../adapters/clipper.ts';
import { memoize } from '../cache.ts';
import type { Layout, PlacedShape } from '../layout/placed.ts';
import { unplacePoint } from '../measure/clock.ts';
import { doWithin } from '../measure/counted-work.ts';
import { ringsGap } from '../measure/distance.ts';
import { placeRegions, placeRing } from '../measure/place.ts';
import { boxesWithin, ringHolds } from '../measure/ring.ts';
import type { Placement, Region, Ring } from '../shapes.ts';
import { type OutlineStore, type Placed, placeShape, shapeRegions } from './outline-store.ts';
import { GRID_MM, SAME_TURN_DEG } from '../units.ts';

/**
 * Openings that must be bridged together because they touch or come nearer than `reachMm` to each other.
 *
 * In: a layout on one plate. Out: units whose openings keep at least reachMm from every other unit's. Therefore each
 * unit can be bridged on its own: if the metal around every unit alone is one piece, so is the metal around all
 * (disjoint compact sets with connected complements have a connected complement in the plane: Janiszewski's theorem).
 * A unit is worked out in its own frame, so that the same letter, or the same word, is the same work anywhere.
 */
export interface Unit {
  readonly id: string;
  readonly shapes: readonly PlacedShape[];
  /** Same key = same regions in the unit's frame. */
  readonly key: string;
  readonly frame: Placement;
  /** In the unit's frame, united; outer rings counter-clockwise. */
  readonly regions: readonly Region[];
  /** The same on the plate. */
  readonly inPlace: readonly Region[];
}

export function gatherUnits(layout: Layout, reachMm: number, store: OutlineStore): Unit[] {
  const placed = layout.shapes.map((shape) => placeShape(shape, store));
  return groupNear(placed, reachMm).map((members) => {
    const first = members[0]!;
    const known = unitsFrom.get(first);
    if (known && sameShapes(known, members)) return known;
    const unit = members.length === 1 ? unitOfOne(first) : unitOfMany(members, store);
    unitsFrom.set(first, unit);
    return unit;
  });
}

/** Units by the first of their shapes: a unit of the very same shapes is the same object, plate after plate. */
const unitsFrom = new WeakMap<Placed, Unit>();

function sameShapes(unit: Unit, members: readonly Placed[]): boolean {
  return unit.shapes.length === members.length && members.every((m, i) => m.shape === unit.shapes[i]);
}

function unitOfOne({ shape, regions, inPlace }: Placed): Unit {
  return { id: shape.id, shapes: [shape], key: shape.storeKey, frame: shape.placement, regions, inPlace };
}

function unitOfMany(members: readonly Placed[], store: OutlineStore): Unit {
  const shapes = members.map((m) => m.shape);
  const { id, placement: frame } = shapes[0]!;
  const relative = shapes.map((s) => relativePlacement(s.placement, frame));
  const key = shapes.map((s, i) => `${s.storeKey}@${Object.values(relative[i]!).join(',')}`).join('+');
  const regions = store.regions.getOrMake(
    key,
    () => doWithin(MOST_UNION_STEPS, () => union(shapes.flatMap((s, i) => ownRings(s, relative[i]!, store)))) ?? [],
  );
  return { id, shapes, key, frame, regions, inPlace: placeRegions(regions, frame) };
}

/** Counted work to unite touching shapes with; beyond it they come to nothing, and bridging says that (bridge-openings.ts). */
const MOST_UNION_STEPS = 6_000_000;

/** Shapes by transitive nearness, in the order of their first member. */
function groupNear(placed: readonly Placed[], reachMm: number): Placed[][] {
  const parent = placed.map((_, i) => i);
  const root = (i: number): number => {
    while (parent[i] !== i) i = parent[i]!;
    return i;
  };
  const byLeft = placed.map((_, i) => i).sort((i, j) => placed[i]!.box.minX - placed[j]!.box.minX);
  for (let m = 0; m < byLeft.length; m++) {
    const i = byLeft[m]!;
    const a = placed[i]!;
    for (let n = m + 1; n < byLeft.length; n++) {
      const j = byLeft[n]!;
      const b = placed[j]!;
      if (b.box.minX - a.box.maxX >= reachMm) break;
      if (root(i) === root(j) || !boxesWithin(a.box, b.box, reachMm)) continue;
      if (touchOrNear(a, b, reachMm)) {
        const [low, high] = [Math.min(root(i), root(j)), Math.max(root(i), root(j))];
        parent[high] = low;
      }
    }
  }
  const groups = new Map<number, Placed[]>();
  placed.forEach((p, i) => {
    if (p.rings.length === 0) return;
    const group = groups.get(root(i));
    if (group) group.push(p);
    else groups.set(root(i), [p]);
  });
  return [...groups.values()];
}

/** Asked once for each two shapes where they stand. */
function touchOrNear(a: Placed, b: Placed, reachMm: number): boolean {
  const known = nearFrom(a).get(b);
  if (known?.reachMm === reachMm) return known.near;
  const near =
    ringsGap(a.rings, b.rings, reachMm) !== undefined || covers(a.rings, b.rings) || covers(b.rings, a.rings);
  nearFrom(a).set(b, { reachMm, near });
  return near;
}

const nearFrom = memoize(
  (_shape: Placed) => new WeakMap<Placed, { readonly reachMm: number; readonly near: boolean }>(),
);

/** True when a point of b's edge lies in a's opening: then all of b does, since their edges keep apart. */
function covers(a: readonly Ring[], b: readonly Ring[]): boolean {
  const p = b[0]?.[0];
  return p !== undefined && a.filter((ring) => ringHolds(ring, p)).length % 2 === 1;
}

/** Rounded, so that the same pair of letters gives the same key wherever it stands. */
function relativePlacement(of: Placement, to: Placement): Placement {
  const p = unplacePoint(of, to);
  const round = (v: number, step: number) => Math.round(v / step) * step + 0;
  const turn = (((of.turnDeg - to.turnDeg) % 360) + 360) % 360;
  return { x: round(p.x, GRID_MM), y: round(p.y, GRID_MM), turnDeg: round(turn, SAME_TURN_DEG) };
}

function ownRings(shape: PlacedShape, at: Placement, store: OutlineStore): Ring[] {
  return shapeRegions(shape, store).flatMap((r) => [r.outer, ...r.holes].map((ring) => placeRing(ring, at)));
}
