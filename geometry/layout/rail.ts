import { clockPoint, placePoint, turnPoint } from '../measure/clock.ts';
import type { Placement, Point, Ring } from '../shapes.ts';

/**
 * What letters stand along: a straight line or a ring. Positions are millimetres along the rail, reading
 * direction positive, 0 where the middle of the text comes to stand; a ring is measured at half the height of
 * its capitals. A rail lies in a plain position of its own (see each); the text as a whole is moved afterwards,
 * so that spacing never depends on where on the plate it stands.
 */
export interface Rail {
  /** Rails with the same key space letters alike. */
  readonly key: string;
  /** Length at the tightest place of the letters per length along the rail; at most 1. */
  readonly tightest: number;
  /** For a glyph whose advance has its middle so far along. */
  place(atMm: number, advanceMm: number): Placement;
  /** How far along a point in that plain position is. */
  along(p: Point): number;
}

/** Along the x axis, half the height of the capitals at y = 0. */
export function straightRail(capMm: number): Rail {
  return {
    key: 'line',
    tightest: 1,
    place: (atMm, advanceMm) => ({ x: atMm - advanceMm / 2, y: -capMm / 2, turnDeg: 0 }),
    along: (p) => p.x,
  };
}

/**
 * About the origin with its 0 at the top of the clock. outward: clockwise, baseline at the inner radius.
 * inward: counter-clockwise, baseline at the outer radius, heads to the centre.
 */
export function ringRail(innerMm: number, outerMm: number, reads: 'outward' | 'inward'): Rail {
  const middleMm = (innerMm + outerMm) / 2;
  const [baseMm, sense, turn] = reads === 'outward' ? [innerMm, 1, 0] : [outerMm, -1, 180];
  return {
    key: `ring|${innerMm}|${outerMm}|${reads}`,
    tightest: innerMm / middleMm,
    place(atMm, advanceMm) {
      const clockDeg = (sense * atMm * 180) / (Math.PI * middleMm);
      const turnDeg = clockDeg + turn;
      const base = clockPoint(baseMm, clockDeg);
      const back = turnPoint({ x: advanceMm / 2, y: 0 }, turnDeg);
      return { x: base.x - back.x, y: base.y - back.y, turnDeg };
    },
    along: (p) => sense * Math.atan2(p.x, p.y) * middleMm,
  };
}

/** The rings of a shape where a placement puts them. */
export function placeRings(rings: readonly Ring[], at: Placement): Ring[] {
  return rings.map((ring) => ring.map((p) => placePoint(p, at)));
}

/** A placement carried along when everything is turned clockwise about the origin and then moved. */
export function movePlacement(at: Placement, by: Placement): Placement {
  const moved = placePoint(at, by);
  const turn = (at.turnDeg + by.turnDeg) % 360;
  return { x: moved.x, y: moved.y, turnDeg: turn < 0 ? turn + 360 : turn };
}
