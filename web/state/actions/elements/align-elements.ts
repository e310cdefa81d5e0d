import { isBand } from '../../../../geometry/design/kinds.ts';
import type { Design, DesignElement } from '../../../../geometry/design/schema.ts';
import type { Extent } from '../../../../geometry/layout/placed.ts';
import { clockAngleDeg } from '../../../../geometry/measure/clock.ts';
import { joinBoxes } from '../../../../geometry/measure/ring.ts';
import type { Box } from '../../../../geometry/shapes.ts';
import type { Change } from '../../change.ts';
import { isFree, plainDeg, pullElement, shiftElement } from './move-element.ts';
import { placeElements } from './place-elements.ts';
import { boxOf } from './reach.ts';
import { ON_CENTRE_SHARE } from '../../../../geometry/units.ts';

export type AlignTo = 'left' | 'centre' | 'right' | 'top' | 'middle' | 'bottom' | 'radius' | 'angle';

/**
 * Lines elements up. Edges and middles are those of the box around all that lie freely; one alone is brought to the
 * plate's own middle. The same radius or angle is that of the first chosen. Locked ones stay and count.
 * extents: of the plate looked at, mm; radiusMm: its radius.
 */
export function alignElements(
  design: Design,
  ids: readonly string[],
  to: AlignTo,
  extents: readonly Extent[],
  radiusMm: number,
): Change {
  const chosen = ids.flatMap((id) => design.elements.filter((e) => e.id === id));
  const moved = to === 'radius' || to === 'angle' ? aboutCentre(chosen, to) : inBox(chosen, to, extents, radiusMm);
  return { ...placeElements(design, moved), undo: 'step' };
}

type BoxSide = Exclude<AlignTo, 'radius' | 'angle'>;

function inBox(
  chosen: readonly DesignElement[],
  to: BoxSide,
  extents: readonly Extent[],
  radiusMm: number,
): DesignElement[] {
  const boxes = chosen.flatMap((element) => {
    const box = isFree(element) ? boxOf(element.id, extents) : undefined;
    return box === undefined ? [] : [{ element, box }];
  });
  const plate: Box = { minX: 0, maxX: 0, minY: 0, maxY: 0 };
  const all = boxes.length > 1 ? joinBoxes(boxes.map((b) => b.box)) : plate;
  return boxes.map(({ element, box }) => {
    const by = spot(all, to) - spot(boxes.length > 1 ? box : pointBox(box), to);
    const across = to === 'left' || to === 'centre' || to === 'right';
    return across ? shiftElement(element, by / radiusMm, 0) : shiftElement(element, 0, by / radiusMm);
  });
}

/** One alone has no edges to line up with: its middle goes to the plate's, whatever was asked. */
function pointBox(box: Box): Box {
  const [x, y] = [(box.minX + box.maxX) / 2, (box.minY + box.maxY) / 2];
  return { minX: x, maxX: x, minY: y, maxY: y };
}

function spot(box: Box, to: BoxSide): number {
  switch (to) {
    case 'left':
      return box.minX;
    case 'right':
      return box.maxX;
    case 'centre':
      return (box.minX + box.maxX) / 2;
    case 'top':
      return box.maxY;
    case 'bottom':
      return box.minY;
    case 'middle':
      return (box.minY + box.maxY) / 2;
  }
}

function aboutCentre(chosen: readonly DesignElement[], to: 'radius' | 'angle'): DesignElement[] {
  const first = chosen.find((e) => (to === 'radius' ? true : angleOf(e) !== undefined));
  if (first === undefined) return [];
  return chosen.map((e) => {
    if (to === 'radius') return atRadius(e, radiusOf(first));
    const deg = angleOf(first);
    return deg === undefined ? e : atAngle(e, deg);
  });
}

/** Distance of an element's middle from the plate's, share of the radius. */
function radiusOf(e: DesignElement): number {
  return isBand(e) ? (e.inner + e.outer) / 2 : Math.hypot(e.x, e.y);
}

/** Clock angle of an element's middle; a border and what lies on the centre have none. */
export function angleOf(e: DesignElement): number | undefined {
  if (e.kind === 'ringText') return e.middleDeg;
  return isFree(e) && Math.hypot(e.x, e.y) > ON_CENTRE_SHARE ? clockAngleDeg(e) : undefined;
}

function atRadius(e: DesignElement, radius: number): DesignElement {
  if (isBand(e)) return pullElement(e, radius - radiusOf(e));
  const deg = angleOf(e);
  return deg === undefined ? e : { ...e, ...onRing(radius, deg) };
}

/** At another clock angle and the same distance from the centre; it keeps its own turn. */
export function atAngle(e: DesignElement, deg: number): DesignElement {
  if (e.kind === 'ringText') return { ...e, middleDeg: plainDeg(deg) };
  return isFree(e) && angleOf(e) !== undefined ? { ...e, ...onRing(radiusOf(e), deg) } : e;
}

function onRing(radius: number, deg: number): { x: number; y: number } {
  const rad = (deg * Math.PI) / 180;
  const kept = (v: number) => Math.min(1, Math.max(-1, v));
  return { x: kept(radius * Math.sin(rad)), y: kept(radius * Math.cos(rad)) };
}
