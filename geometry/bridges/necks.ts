import { castRay, type EdgeGrid } from '../measure/edge-grid.ts';
import type { Point, Ring } from '../shapes.ts';
import type { Pieces } from './find-pieces.ts';
import { SAME_TIP_MM } from '../units.ts';

/**
 * Necks: metal thinner than a bridge with wider metal at both ends (a stencil face's own bridge at a small size, the
 * bar between two strokes, the gap under the dot of an i).
 *
 * Where a neck opens into wider metal the shrunk metal ends in a tip: the offsets of the neck's two walls meet there.
 * So a neck is a pair of tips, no shrunk metal between them, with a lane of metal, walled on both sides, right
 * through the bar that would join them. (The middle line itself may cross an opening: past a pointed serif the tips stand off the far wall.)
 */
export interface Neck {
  readonly from: Point;
  readonly to: Point;
  readonly a: number;
  readonly b: number;
}

/** A corner of the shrunk metal counts as a tip from this turn on: a neck of 0.985 of a bridge makes one of 20 degrees. */
const LEAST_TURN_DEG = 18;

interface Tip {
  readonly at: Point;
  readonly piece: number;
  /** Unit direction out of the shrunk metal. */
  readonly out: Point;
}

/** Least cosine between the way a tip points and the neck: a corner beside a straight wall points well aside. */
const FACING = 0.3;

/** Lanes looked at on each side of the middle line: a lane narrower than 1/32 of a bridge may be overlooked. */
const LANES = 16;

/** All necks of a unit; shortest first. In: pieces, width of a bridge (mm); out: middle lines from tip to tip. */
export function findNecks(pieces: Pieces, widthMm: number): Neck[] {
  const tips = pieces.edges.flatMap(({ ring, owner }) => findTips(ring, owner));
  const necks: (Neck & { length: number })[] = [];
  for (let i = 0; i < tips.length; i++) {
    for (let j = i + 1; j < tips.length; j++) {
      const [p, q] = [tips[i]!, tips[j]!];
      const length = Math.hypot(q.at.x - p.at.x, q.at.y - p.at.y);
      if (length < SAME_TIP_MM) continue;
      const d = { x: (q.at.x - p.at.x) / length, y: (q.at.y - p.at.y) / length };
      if (d.x * p.out.x + d.y * p.out.y < FACING || d.x * q.out.x + d.y * q.out.y > -FACING) continue;
      if (meets(pieces.shrunk, p.at, d, SAME_TIP_MM, length - SAME_TIP_MM)) continue;
      if (!hasLane(pieces.open, p.at, d, length, widthMm)) continue;
      necks.push({ from: p.at, to: q.at, a: p.piece, b: q.piece, length });
    }
  }
  return necks.sort((p, q) => p.length - q.length);
}

/** Some line along the bar runs in metal all the way, and on either side of it another one, still in the bar, does not. */
function hasLane(open: EdgeGrid, from: Point, d: Point, length: number, widthMm: number): boolean {
  let [left, lane] = [false, false];
  for (let k = -LANES; k <= LANES; k++) {
    const aside = (k / LANES) * 0.999 * (widthMm / 2);
    const start = { x: from.x - d.y * aside, y: from.y + d.x * aside };
    const hits = castRay(open, start, d.x, d.y);
    const free = hits.length % 2 === 0 && !hits.some((h) => h.at < length);
    if (!free && lane) return true;
    if (!free) left = true;
    else if (left) lane = true;
  }
  return false;
}

function meets(grid: EdgeGrid, from: Point, d: Point, after: number, before: number): boolean {
  return castRay(grid, from, d.x, d.y).some((h) => h.at > after && h.at < before);
}

/**
 * Corners where the ring turns right: rings run with the shrunk metal on their right (outer rings of grown openings
 * counter-clockwise, edges of pieces clockwise), so a right turn is a corner of the metal.
 */
function findTips(ring: Ring, owner: number): Tip[] {
  const tips: Tip[] = [];
  ring.forEach((at, i) => {
    const before = ring[(i + ring.length - 1) % ring.length]!;
    const after = ring[(i + 1) % ring.length]!;
    const [ax, ay] = toUnit(at.x - before.x, at.y - before.y);
    const [bx, by] = toUnit(after.x - at.x, after.y - at.y);
    const turn = (Math.atan2(ax * by - ay * bx, ax * bx + ay * by) * 180) / Math.PI;
    if (turn > -LEAST_TURN_DEG) return;
    const [ox, oy] = toUnit(-(ay + by), ax + bx);
    tips.push({ at, piece: owner, out: { x: ox, y: oy } });
  });
  return tips;
}

function toUnit(x: number, y: number): [number, number] {
  const length = Math.hypot(x, y);
  return length > 0 ? [x / length, y / length] : [0, 0];
}
