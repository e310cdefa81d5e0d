import type { DesignElement } from '../../../../geometry/design/schema.ts';
import type { Extent } from '../../../../geometry/layout/placed.ts';
import { clockAngleDeg } from '../../../../geometry/measure/clock.ts';
import { joinBoxes } from '../../../../geometry/measure/ring.ts';
import type { Box, Point } from '../../../../geometry/shapes.ts';
import { angleOf } from '../../../state/actions/elements/align-elements.ts';
import {
  isFree,
  plainDeg,
  pullElement,
  shiftElement,
  sizeElement,
  swingElement,
  turnElement,
} from '../../../state/actions/elements/move-element.ts';
import { boxOf } from '../../../state/actions/elements/reach.ts';
import { snapBox, snapSector, snapTurn, type SnapSpace } from './snap.ts';
import type { Guide } from './snap-targets.ts';

/** What of the chosen element is held: its body moves it, the knobs turn it or make it larger. */
export type Hold = 'body' | 'turn' | 'size';

export interface Carried {
  readonly elements: readonly DesignElement[];
  readonly guides: readonly Guide[];
}

export interface Carry {
  readonly hold: Hold;
  /** As they were when they were taken hold of; the first is the one held. */
  readonly chosen: readonly DesignElement[];
  /** Of all elements, as they then were. */
  readonly extents: readonly Extent[];
  readonly radiusMm: number;
  /** Where the hand took hold, mm. */
  readonly start: Point;
  /** A band stays on its radius until it is pulled farther across than this. */
  readonly acrossMm: number;
}

/** The elements after the hand went from where it took hold to a place; snapped within reachMm. Pure; mm. */
export function carried(carry: Carry, now: Point, reachMm: number): Carried {
  const { chosen, hold } = carry;
  const [first] = chosen;
  if (!first) return { elements: chosen, guides: [] };
  if (hold === 'turn') return turnedTo(carry, first, now, reachMm);
  if (hold === 'size') return sizedTo(carry, first, now);
  const ids = new Set(chosen.map((e) => e.id));
  const space = { radiusMm: carry.radiusMm, others: carry.extents.filter((e) => !ids.has(e.elementId)), reachMm };
  return isFree(first) ? shiftedTo(carry, now, space) : swungTo(carry, first, now, space);
}

/** The middle of an element's own place, mm; bands turn about the plate's. */
function middleMm(e: DesignElement, radiusMm: number): Point {
  return isFree(e) ? { x: e.x * radiusMm, y: e.y * radiusMm } : { x: 0, y: 0 };
}

function shiftedTo({ chosen, extents, radiusMm, start }: Carry, now: Point, space: SnapSpace): Carried {
  const [right, up] = [now.x - start.x, now.y - start.y];
  const boxes = chosen.flatMap((e) => boxOf(e.id, extents) ?? []);
  const snapped = snapBox(movedBox(joinBoxes(boxes), right, up), boxes.length === 0 ? { ...space, reachMm: 0 } : space);
  const [x, y] = [(right + snapped.right) / radiusMm, (up + snapped.up) / radiusMm];
  return { elements: chosen.map((e) => shiftElement(e, x, y)), guides: snapped.guides };
}

function swungTo(carry: Carry, first: DesignElement, now: Point, space: SnapSpace): Carried {
  const { chosen, extents, radiusMm, start, acrossMm } = carry;
  const extent = extents.find((e) => e.elementId === first.id);
  const sector = extent?.kind === 'sector' ? extent : undefined;
  const turns = first.kind === 'ringText';
  const deg = turns ? plainDeg(clockAngleDeg(now) - clockAngleDeg(start)) : 0;
  const across = Math.hypot(now.x, now.y) - Math.hypot(start.x, start.y);
  const outward = turns ? Math.sign(across) * Math.max(0, Math.abs(across) - acrossMm) : across;
  const snapped =
    sector === undefined
      ? { deg: 0, outward: 0, guides: [] }
      : snapSector(
          {
            ...sector,
            startDeg: sector.startDeg + deg,
            endDeg: sector.endDeg + deg,
            innerMm: sector.innerMm + outward,
            outerMm: sector.outerMm + outward,
          },
          space,
          { angle: turns, radius: outward !== 0 },
        );
  const by = (outward + snapped.outward) / radiusMm;
  return {
    elements: chosen.map((e) => pullElement(swingElement(e, deg + snapped.deg), by)),
    guides: snapped.guides,
  };
}

function turnedTo({ chosen, radiusMm, start }: Carry, first: DesignElement, now: Point, reachMm: number): Carried {
  if (!isFree(first)) return { elements: chosen, guides: [] };
  const middle = middleMm(first, radiusMm);
  const clock = (p: Point) => clockAngleDeg({ x: p.x - middle.x, y: p.y - middle.y });
  const wished = first.turnDeg + clock(now) - clock(start);
  const snapped = reachMm > 0 ? snapTurn(wished, angleOf(first), SNAP_TURN_DEG) : wished;
  return { elements: [turnElement(first, snapped - first.turnDeg), ...chosen.slice(1)], guides: [] };
}

const SNAP_TURN_DEG = 2.5;

function sizedTo({ chosen, radiusMm, start }: Carry, first: DesignElement, now: Point): Carried {
  const reach = (p: Point) => {
    if (!isFree(first)) return Math.abs(Math.hypot(p.x, p.y) - ((first.inner + first.outer) / 2) * radiusMm);
    const middle = middleMm(first, radiusMm);
    return Math.hypot(p.x - middle.x, p.y - middle.y);
  };
  const from = reach(start);
  const factor = from > 0 ? Math.max(0.02, reach(now) / from) : 1;
  return { elements: [sizeElement(first, factor), ...chosen.slice(1)], guides: [] };
}

function movedBox(box: Box, right: number, up: number): Box {
  return { minX: box.minX + right, maxX: box.maxX + right, minY: box.minY + up, maxY: box.maxY + up };
}
