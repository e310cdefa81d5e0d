/**
 * What becomes of a piece that is cut free over slats.
 *
 * Model: slats are straight upright strips along y, all alike, edgeMm wide, pitchMm from middle to middle; where they
 * lie under the sheet is unknown, every offset as likely. The piece is cut free at once, stiff, and lies on whatever
 * strips are under it. With none it drops. If its centre of gravity is over the hull of what carries it, it lies. Else
 * it turns about the edge of a slat: one end goes down between two slats, the other rises. It counts as tipping where
 * that end could come up by more than RISE_MM (the whole of it beyond the slat, when the piece stands upright);
 * else it slides down between the slats and drops.
 * Not in it: gas pressure, dross that welds a piece on, friction, burnt or bent slats, a piece that jams in its kerf.
 * The forces on a tipping piece by statics of a rigid body; after that common practice, no source.
 */
import { contourToRing } from '../measure/arc.ts';
import { centroid, ringBox } from '../measure/ring.ts';
import type { Contour, Point, Ring } from '../shapes.ts';
import type { CutSettings, SlugChances } from './sheet-plan.ts';

/** A nozzle runs about a millimetre above the sheet: what rises less passes under it. Common practice, no source. */
export const RISE_MM = 1;
/** From this chance on ways at cutting height go round: one in twenty; common practice, no source. */
export const TIP_LIMIT = 0.05;

/** Offsets tried over one pitch, and columns the piece is looked at in: chances are right to about one in a hundred. */
const OFFSETS = 200;
const COLUMNS = 128;
const FLAT_MM = 0.1;

/** Chances of the piece inside a contour, as it lies on the sheet; 1 that it drops where there are no slats. */
export function slugChances(contour: Contour, slats: CutSettings['slats']): SlugChances {
  const ring = contourToRing(contour, FLAT_MM);
  if (!(slats.pitchMm > 0)) return { drops: 1, lies: 0, tips: 0, riseMm: 0 };
  const piece = columnsOf(ring);
  let [drops, lies, riseMm] = [0, 0, 0];
  for (let i = 0; i < OFFSETS; i++) {
    const fate = fateAt(piece, slats, ((i + 0.5) / OFFSETS) * slats.pitchMm);
    if (fate === 'lies') lies++;
    else if (fate <= RISE_MM) drops++;
    else riseMm = Math.max(riseMm, fate);
  }
  return { drops: drops / OFFSETS, lies: lies / OFFSETS, tips: (OFFSETS - drops - lies) / OFFSETS, riseMm };
}

interface Columns {
  readonly minX: number;
  readonly maxX: number;
  readonly stepMm: number;
  /** Least and greatest y of the piece at each column's x. */
  readonly low: readonly number[];
  readonly high: readonly number[];
  readonly centre: Point;
}

function columnsOf(ring: Ring): Columns {
  const { minX, maxX } = ringBox(ring);
  const stepMm = (maxX - minX) / (COLUMNS - 1);
  const low = new Array<number>(COLUMNS).fill(Infinity);
  const high = new Array<number>(COLUMNS).fill(-Infinity);
  let a = ring[ring.length - 1]!;
  for (const b of ring) {
    const [l, r] = a.x < b.x ? [a, b] : [b, a];
    const [from, to] = [Math.ceil((l.x - minX) / stepMm - 1e-9), Math.floor((r.x - minX) / stepMm + 1e-9)];
    for (let c = Math.max(0, from); c <= Math.min(COLUMNS - 1, to); c++) {
      const t = r.x > l.x ? Math.min(1, Math.max(0, (minX + c * stepMm - l.x) / (r.x - l.x))) : 0;
      const y = l.y + (r.y - l.y) * t;
      low[c] = Math.min(low[c]!, y);
      high[c] = Math.max(high[c]!, y);
    }
    a = b;
  }
  return { minX, maxX, stepMm, low, high, centre: centroid(ring) };
}

/** `lies`, or how far one end could come up (0: it drops). First slat's middle at the offset from the piece's left. */
function fateAt(piece: Columns, { pitchMm, edgeMm }: CutSettings['slats'], offset: number): 'lies' | number {
  const { minX, maxX, stepMm, centre } = piece;
  const [widthMm, cx] = [maxX - minX, centre.x - minX];
  const carried: { x: number; low: number; high: number }[] = [];
  let [leftEdge, rightEdge] = [-Infinity, Infinity];
  for (let middle = offset - pitchMm; middle - edgeMm / 2 <= widthMm; middle += pitchMm) {
    const [from, to] = [Math.max(0, middle - edgeMm / 2), Math.min(widthMm, middle + edgeMm / 2)];
    if (to < from) continue;
    for (const x of [from, (from + to) / 2, to]) {
      const c = Math.min(COLUMNS - 1, Math.round(x / stepMm));
      carried.push({ x, low: piece.low[c]!, high: piece.high[c]! });
    }
    if (to <= cx) leftEdge = Math.max(leftEdge, to);
    if (from >= cx) rightEdge = Math.min(rightEdge, from);
  }
  if (carried.length === 0) return 0;
  if (carries(carried, cx, centre.y)) return 'lies';
  // It turns about the slat's edge that is nearest to its centre; what lies beyond that edge comes up.
  if (cx - leftEdge < rightEdge - cx) return leftEdge;
  return rightEdge === Infinity ? 0 : widthMm - rightEdge;
}

/** Whether a point lies in the hull of upright lines. */
function carries(lines: readonly { x: number; low: number; high: number }[], x: number, y: number): boolean {
  let [low, high] = [Infinity, -Infinity];
  for (const l of lines) {
    if (l.x > x) continue;
    for (const r of lines) {
      if (r.x < x) continue;
      const t = r.x > l.x ? (x - l.x) / (r.x - l.x) : 0;
      low = Math.min(low, l.low + (r.low - l.low) * t);
      high = Math.max(high, l.high + (r.high - l.high) * t);
    }
  }
  return low <= y && y <= high;
}
