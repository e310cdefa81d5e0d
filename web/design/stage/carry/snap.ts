import type { Extent } from '../../../../geometry/layout/placed.ts';
import { clockAngleDeg, clockPoint } from '../../../../geometry/measure/clock.ts';
import type { Box, Point } from '../../../../geometry/shapes.ts';
import { uprightBox } from '../../../state/actions/elements/reach.ts';
import { gapTargets, nearest, type Guide, type Span, type Target } from './snap-targets.ts';

/** Where something dragged comes to rest. Pure; millimetres in the plate's frame, clock degrees. */
export interface SnapSpace {
  /** Of the plate. */
  readonly radiusMm: number;
  /** Of all that does not move along. */
  readonly others: readonly Extent[];
  /** From how far a guide draws; 0 switches snapping off. */
  readonly reachMm: number;
}

/** Hours of the clock; halves of them draw from half as far. */
const HOUR_DEG = 30;
const HALF_HOUR_DEG = 15;
/** Nearer to the centre than this share of the radius, the clock's hours mean nothing. */
const LEAST_POLAR = 0.12;

/** What to add to a free box's place. Centre lines, edges and equal gaps first; else the clock's hours and the rings. */
export function snapBox(box: Box, space: SnapSpace): { right: number; up: number; guides: Guide[] } {
  const { others, reachMm } = space;
  if (reachMm <= 0) return { right: 0, up: 0, guides: [] };
  const boxes = others.flatMap((e) => (e.kind === 'box' ? [uprightBox(e)] : []));
  const across = nearest([...lineTargets(box, boxes, 'x'), ...boxGaps(box, boxes, others, 'x')], reachMm);
  const along = nearest([...lineTargets(box, boxes, 'y'), ...boxGaps(box, boxes, others, 'y')], reachMm);
  if (across || along) {
    const [right, up] = [across?.by ?? 0, along?.by ?? 0];
    // Bars of one direction move with what the other direction does.
    const guides = [
      ...(across?.guides ?? []).map((g) => movedGuide(g, 0, up)),
      ...(along?.guides ?? []).map((g) => movedGuide(g, right, 0)),
    ];
    return { right, up, guides };
  }
  return snapPolar({ x: (box.minX + box.maxX) / 2, y: (box.minY + box.maxY) / 2 }, space);
}

/** What to add to a band's angle and radius, both looked at apart. A band all round has no angle. */
export function snapSector(
  sector: Extent & { readonly kind: 'sector' },
  space: SnapSpace,
  wish: { readonly angle: boolean; readonly radius: boolean },
): { deg: number; outward: number; guides: Guide[] } {
  const { others, reachMm, radiusMm } = space;
  if (reachMm <= 0) return { deg: 0, outward: 0, guides: [] };
  const middleMm = (sector.innerMm + sector.outerMm) / 2;
  const bands = others.flatMap((e) => (e.kind === 'sector' ? [e] : []));
  const radial = wish.radius ? nearest(radiusTargets(sector, bands, radiusMm), reachMm) : undefined;
  const reachDeg = (reachMm / Math.max(1, middleMm)) * (180 / Math.PI);
  const angular = wish.angle ? nearest(angleTargets(sector, bands, reachDeg), reachDeg) : undefined;
  return {
    deg: angular?.by ?? 0,
    outward: radial?.by ?? 0,
    guides: [...(angular?.guides ?? []), ...(radial?.guides ?? [])],
  };
}

/** A turn brought to the nearest multiple of 15 degrees, or along the ring it stands on. */
export function snapTurn(turnDeg: number, placeDeg: number | undefined, reachDeg: number): number {
  const targets: Target[] = [{ by: offset(turnDeg, Math.round(turnDeg / HALF_HOUR_DEG) * HALF_HOUR_DEG), guides: [] }];
  if (placeDeg !== undefined) {
    for (const deg of [placeDeg, placeDeg + 180]) targets.push({ by: offset(turnDeg, deg), guides: [] });
  }
  return turnDeg + (nearest(targets, reachDeg)?.by ?? 0);
}

function snapPolar(at: Point, { radiusMm, others, reachMm }: SnapSpace) {
  const nothing = { right: 0, up: 0, guides: [] as Guide[] };
  const away = Math.hypot(at.x, at.y);
  if (away < LEAST_POLAR * radiusMm) return nothing;
  const deg = clockAngleDeg(at);
  const reachDeg = (reachMm / away) * (180 / Math.PI);
  const hour = nearest(hourTargets(deg, reachDeg), reachDeg);
  const rings = others.flatMap((e) =>
    e.kind === 'sector'
      ? [(e.innerMm + e.outerMm) / 2]
      : [Math.hypot(e.x, e.y)].filter((r) => r > LEAST_POLAR * radiusMm),
  );
  const ring = nearest(
    rings.map((r): Target => ({ by: r - away, guides: [{ kind: 'ring', radiusMm: r }] })),
    reachMm,
  );
  if (!hour && !ring) return nothing;
  const to = clockPoint(away + (ring?.by ?? 0), deg + (hour?.by ?? 0));
  return { right: to.x - at.x, up: to.y - at.y, guides: [...(hour?.guides ?? []), ...(ring?.guides ?? [])] };
}

function hourTargets(deg: number, reachDeg: number): Target[] {
  const hour = Math.round(deg / HOUR_DEG) * HOUR_DEG;
  const half = Math.round(deg / HALF_HOUR_DEG) * HALF_HOUR_DEG;
  const targets: Target[] = [{ by: hour - deg, guides: [{ kind: 'ray', deg: hour }] }];
  if (Math.abs(half - deg) < reachDeg / 2) targets.push({ by: half - deg, guides: [{ kind: 'ray', deg: half }] });
  return targets;
}

function lineTargets(box: Box, boxes: readonly Box[], axis: 'x' | 'y'): Target[] {
  const [low, high] = ends(box, axis);
  const line = (mm: number): Guide => (axis === 'x' ? { kind: 'upright', x: mm } : { kind: 'level', y: mm });
  const targets: Target[] = [{ by: -(low + high) / 2, guides: [line(0)] }];
  for (const other of boxes) {
    const [from, to] = ends(other, axis);
    const pairs = [
      [(low + high) / 2, (from + to) / 2],
      [low, from],
      [high, to],
    ] as const;
    for (const [mine, theirs] of pairs) targets.push({ by: theirs - mine, guides: [line(theirs)] });
  }
  return targets;
}

/** Equal gaps to the neighbours in one direction; bands that lie there are neighbours as well. */
function boxGaps(box: Box, boxes: readonly Box[], others: readonly Extent[], axis: 'x' | 'y'): Target[] {
  const other = axis === 'x' ? 'y' : 'x';
  const [from, to] = ends(box, other);
  const spans: Span[] = boxes.flatMap((b) => {
    const [low, high] = ends(b, other);
    const [start, end] = ends(b, axis);
    return low < to && high > from ? [{ from: start, to: end }] : [];
  });
  if (from < 0 && to > 0) spans.push(...bandsOn(others, axis));
  const middle = (from + to) / 2;
  const point = (mm: number): Point => (axis === 'x' ? { x: mm, y: middle } : { x: middle, y: mm });
  const [low, high] = ends(box, axis);
  return gapTargets({ from: low, to: high }, spans).map(({ by, gaps }) => ({
    by,
    guides: gaps.map((g): Guide => ({ kind: 'gap', from: point(g.from), to: point(g.to) })),
  }));
}

/** Where bands cross the plate's upright or level middle line. */
function bandsOn(others: readonly Extent[], axis: 'x' | 'y'): Span[] {
  return others.flatMap((e) => {
    if (e.kind !== 'sector') return [];
    const [plus, minus] = axis === 'x' ? [90, 270] : [0, 180];
    return [
      ...(holdsDeg(e, plus) ? [{ from: e.innerMm, to: e.outerMm }] : []),
      ...(holdsDeg(e, minus) ? [{ from: -e.outerMm, to: -e.innerMm }] : []),
    ];
  });
}

type Sector = Extent & { readonly kind: 'sector' };

function radiusTargets(sector: Sector, bands: readonly Sector[], radiusMm: number): Target[] {
  const { innerMm, outerMm } = sector;
  const deg = (sector.startDeg + sector.endDeg) / 2;
  const targets: Target[] = [];
  for (const band of bands) {
    const pairs = [
      [(innerMm + outerMm) / 2, (band.innerMm + band.outerMm) / 2],
      [innerMm, band.innerMm],
      [outerMm, band.outerMm],
    ] as const;
    for (const [mine, theirs] of pairs) {
      targets.push({ by: theirs - mine, guides: [{ kind: 'ring', radiusMm: theirs }] });
    }
  }
  const spans: Span[] = bands.filter((b) => meet(b, sector)).map((b) => ({ from: b.innerMm, to: b.outerMm }));
  // The rim is a neighbour too.
  spans.push({ from: radiusMm, to: radiusMm * 2 });
  for (const { by, gaps } of gapTargets({ from: innerMm, to: outerMm }, spans)) {
    targets.push({
      by,
      guides: gaps.map((g): Guide => ({ kind: 'gap', from: clockPoint(g.from, deg), to: clockPoint(g.to, deg) })),
    });
  }
  return targets;
}

function angleTargets(sector: Sector, bands: readonly Sector[], reachDeg: number): Target[] {
  const deg = (sector.startDeg + sector.endDeg) / 2;
  const half = (sector.endDeg - sector.startDeg) / 2;
  const targets = hourTargets(deg, reachDeg);
  const ringed = bands.filter((b) => b.endDeg - b.startDeg < 360);
  for (const band of ringed) {
    const middle = (band.startDeg + band.endDeg) / 2;
    for (const to of [middle, middle + 180]) targets.push({ by: offset(deg, to), guides: [{ kind: 'ray', deg: to }] });
  }
  // Between two neighbours on the same ring, or opposite to the only one.
  const near = ringed.filter((b) => b.innerMm < sector.outerMm && b.outerMm > sector.innerMm);
  const after = near.map((b) => ahead(deg, b.startDeg)).sort((a, b) => a - b)[0];
  const before = near.map((b) => ahead(b.endDeg, deg)).sort((a, b) => a - b)[0];
  if (after !== undefined && before !== undefined) {
    const by = (after - before) / 2;
    const gap = (after + before) / 2 - half;
    const radiusMm = (sector.innerMm + sector.outerMm) / 2;
    const at = deg + by;
    const arcs: Guide[] = [
      { kind: 'arc', radiusMm, fromDeg: at - half - gap, toDeg: at - half },
      { kind: 'arc', radiusMm, fromDeg: at + half, toDeg: at + half + gap },
    ];
    if (gap > 0) targets.push({ by, guides: arcs });
  }
  return targets;
}

function holdsDeg(sector: Sector, deg: number): boolean {
  const span = sector.endDeg - sector.startDeg;
  return span >= 360 || ahead(sector.startDeg, deg) <= span;
}

function meet(a: Sector, b: Sector): boolean {
  return holdsDeg(a, b.startDeg) || holdsDeg(b, a.startDeg);
}

/** Degrees clockwise from one angle to another, 0 up to 360. */
function ahead(from: number, to: number): number {
  return (((to - from) % 360) + 360) % 360;
}

/** The short way from one angle to another. */
function offset(from: number, to: number): number {
  const by = ahead(from, to);
  return by > 180 ? by - 360 : by;
}

function ends(box: Box, axis: 'x' | 'y'): [number, number] {
  return axis === 'x' ? [box.minX, box.maxX] : [box.minY, box.maxY];
}

function movedGuide(guide: Guide, right: number, up: number): Guide {
  if (guide.kind !== 'gap') return guide;
  const move = (p: Point) => ({ x: p.x + right, y: p.y + up });
  return { kind: 'gap', from: move(guide.from), to: move(guide.to) };
}
