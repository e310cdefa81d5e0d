/**
 * What becomes of a piece that is cut free over slats, and how high an end of it may stand.
 *
 * Model: slats are straight upright strips along y, all alike, edgeMm wide, pitchMm from middle to middle, the gap
 * between them g; where they lie under the sheet is unknown, every offset as likely. The piece is cut free at once,
 * stiff, thin, and lies on whatever strips are under it.
 * - With none it drops. With its centre of gravity over the hull of what carries it, it lies.
 * - Carried on one side of its centre only, it turns about that slat's edge and slides into the gap. One no wider than
 *   the gap slips through. A wider one, w, may come to rest with one end against the next slat's face: a ladder between
 *   a wall and an edge that is g off it. Its other end stands w sin a - g tan a high at a slope of a, at most
 *   (w^(2/3) - g^(2/3))^(3/2): the ladder around the corner, turned about (MathWorld, Moving Ladder Problem).
 * - Carried on both sides, its centre beside the line through what carries it, it turns about that line and hangs from
 *   it; what lies beyond the line stands upright.
 * At which slope it rests is a matter of friction, so the highest counts. It tips where that end stands higher than
 * RISE_MM above the sheet; one that hangs lower is out of the head's way and counts as dropped.
 * Not in it: the sheet's thickness, gas pressure, dross that welds a piece on, burnt or bent slats, spikes, a piece that
 * jams in its kerf. Statics of a rigid body; that this decides is common practice, no source.
 */
import { contourToRing } from '../../measure/arc.ts';
import { centroid, ringBox } from '../../measure/ring.ts';
import type { Contour, Point, Ring } from '../../shapes.ts';
import type { CutSettings, SlugChances } from '../sheet-plan.ts';
import { COARSE_ERROR_MM, ROUNDING } from '../../units.ts';

/** A nozzle runs about a millimetre above the sheet: what rises less passes under it. Common practice, no source. */
const RISE_MM = 1;
/** From this chance on ways at cutting height go round: one in twenty; common practice, no source. */
export const TIP_LIMIT = 0.05;

/**
 * Offsets looked at over one pitch; between two with another fate the place of the change is halved so often. What
 * comes and goes within one of them is not seen: chances are right to about one in a hundred.
 */
const OFFSETS = 128;
const HALVINGS = 8;
const COLUMNS = 512;

/** Chances of the piece inside a contour, as it lies on the sheet; 1 that it drops where there are no slats. */
export function computeSlugChances(contour: Contour, slats: CutSettings['slats']): SlugChances {
  if (!(slats.pitchMm > 0)) return { drops: 1, lies: 0, tips: 0, riseMm: 0 };
  const piece = sampleColumns(contourToRing(contour, COARSE_ERROR_MM));
  const chances = { drops: 0, lies: 0, tips: 0 };
  let riseMm = 0;
  const at = (share: number): Fate => {
    const fate = judgeFate(piece, slats, share * slats.pitchMm);
    if (fate.kind === 'tips') riseMm = Math.max(riseMm, fate.riseMm);
    return fate;
  };
  let before = at(0);
  for (let i = 0; i < OFFSETS; i++) {
    const [from, to] = [i / OFFSETS, (i + 1) / OFFSETS];
    const after = at(to);
    let [low, high] = [from, to];
    for (let k = 0; k < HALVINGS && before.kind !== after.kind; k++) {
      const middle = (low + high) / 2;
      if (at(middle).kind === before.kind) low = middle;
      else high = middle;
    }
    const change = before.kind === after.kind ? to : (low + high) / 2;
    chances[before.kind] += change - from;
    chances[after.kind] += to - change;
    before = after;
  }
  return { ...chances, riseMm };
}

/** How high the far end of a bar can stand that leans between a slat's edge and the face of the next, mm. */
export function computeLeaningMm(widthMm: number, gapMm: number): number {
  return Math.max(0, widthMm ** (2 / 3) - gapMm ** (2 / 3)) ** 1.5;
}

interface Fate {
  readonly kind: 'drops' | 'lies' | 'tips';
  readonly riseMm: number;
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

function sampleColumns(ring: Ring): Columns {
  const { minX, maxX } = ringBox(ring);
  const stepMm = (maxX - minX) / (COLUMNS - 1);
  const low = new Array<number>(COLUMNS).fill(Infinity);
  const high = new Array<number>(COLUMNS).fill(-Infinity);
  let a = ring[ring.length - 1]!;
  for (const b of ring) {
    const [l, r] = a.x < b.x ? [a, b] : [b, a];
    const [from, to] = [Math.ceil((l.x - minX) / stepMm - ROUNDING), Math.floor((r.x - minX) / stepMm + ROUNDING)];
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

interface Carried {
  readonly x: number;
  readonly low: number;
  readonly high: number;
}

/** First slat's middle at the offset from the piece's left. */
function judgeFate(piece: Columns, { pitchMm, edgeMm }: CutSettings['slats'], offset: number): Fate {
  const { minX, maxX, stepMm, centre } = piece;
  const [widthMm, cx] = [maxX - minX, centre.x - minX];
  const carried: Carried[] = [];
  for (let middle = offset - pitchMm; middle - edgeMm / 2 <= widthMm; middle += pitchMm) {
    const [from, to] = [Math.max(0, middle - edgeMm / 2), Math.min(widthMm, middle + edgeMm / 2)];
    if (to < from) continue;
    for (const x of [from, (from + to) / 2, to]) {
      const c = Math.min(COLUMNS - 1, Math.round(x / stepMm));
      carried.push({ x, low: piece.low[c]!, high: piece.high[c]! });
    }
  }
  if (carried.length === 0) return { kind: 'drops', riseMm: 0 };
  const across = linesAcross(carried, cx);
  if (across && across.low.at <= centre.y && centre.y <= across.high.at) return { kind: 'lies', riseMm: 0 };
  const riseMm = across ? beyondMm(piece, across, cx) : computeLeaningMm(widthMm, pitchMm - edgeMm);
  return { kind: riseMm > RISE_MM ? 'tips' : 'drops', riseMm };
}

/** A line over x: its y there, and its slope. */
interface Line {
  readonly at: number;
  readonly slope: number;
}

/** Lower and upper edge of the hull of what carries, over x; undefined where all of it lies on one side. */
function linesAcross(carried: readonly Carried[], x: number): { low: Line; high: Line } | undefined {
  let low: Line = { at: Infinity, slope: 0 };
  let high: Line = { at: -Infinity, slope: 0 };
  for (const l of carried) {
    if (l.x > x) continue;
    for (const r of carried) {
      if (r.x < x) continue;
      const wide = r.x - l.x;
      const lower = { at: l.low, slope: wide > 0 ? (r.low - l.low) / wide : 0 };
      const upper = { at: l.high, slope: wide > 0 ? (r.high - l.high) / wide : 0 };
      const [lowAt, highAt] = [lower.at + lower.slope * (x - l.x), upper.at + upper.slope * (x - l.x)];
      if (lowAt < low.at) low = { ...lower, at: lowAt };
      if (highAt > high.at) high = { ...upper, at: highAt };
    }
  }
  return low.at <= high.at ? { low, high } : undefined;
}

/** How far the piece reaches beyond the line that its centre hangs from. */
function beyondMm(piece: Columns, { low, high }: { low: Line; high: Line }, cx: number): number {
  const hangsBelow = piece.centre.y < low.at;
  const line = hangsBelow ? low : high;
  const ends = hangsBelow ? piece.high : piece.low;
  const most = ends.reduce((far, y, c) => {
    const off = y - (line.at + line.slope * (c * piece.stepMm - cx));
    return Math.max(far, hangsBelow ? off : -off);
  }, 0);
  return most / Math.hypot(1, line.slope);
}
