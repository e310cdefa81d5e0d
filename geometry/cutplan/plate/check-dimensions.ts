import { circleContour, contourToRing } from '../../measure/arc.ts';
import { ringBox } from '../../measure/ring.ts';
import type { Contour, Point, Ring } from '../../shapes.ts';
import { ARC_FIT_ERROR_MM } from '../../units.ts';
import type { CutPlan } from '../cut-plan.ts';

/** One cut of a plate, in its turn. */
export interface SequencedCut {
  readonly id: string;
  readonly kind: 'opening' | 'rim';
  readonly word: string;
  readonly contour: Contour;
}

/**
 * A length that shows whether the sheet moved while one plate was cut: between far edges of two openings (or an opening
 * and the rim) of which one was cut early and the other late. The jaws of a caliper find it as the greatest length.
 */
export interface CheckDimension {
  /** A, B, ... as on the spec sheet. */
  readonly label: string;
  readonly early: string;
  readonly late: string;
  readonly from: Point;
  readonly to: Point;
  readonly mm: number;
}

/** Cuts that count as early: this part of all, from the beginning; as late: the same part at the end. */
const PART = 1 / 3;
/** Directions tried; the two lengths of a plate stand at least so far apart, or they would show the same shift. */
const DIRECTIONS = 36;
const APART_DEG = 45;

/**
 * At most two check dimensions across early and late openings of one plate, and one from an early opening to the rim.
 * Takes the cuts of the plate in their order, true size. A plate with one opening has the last of them only.
 */
export function findCheckDimensions(cuts: readonly SequencedCut[]): CheckDimension[] {
  const openings = cuts.filter((c) => c.kind === 'opening').map((c) => ({ ...c, ring: ringOf(c.contour) }));
  const rim = cuts.find((c) => c.kind === 'rim');
  const part = Math.max(1, Math.floor(openings.length * PART));
  const early = openings.slice(0, part);
  const late = openings.slice(-part).filter((c) => !early.includes(c));
  const found: Omit<CheckDimension, 'label'>[] = [];
  const lengths = acrossAll(early, late).sort((a, b) => b.mm - a.mm);
  const first = lengths[0];
  if (first) {
    found.push(first);
    const second = lengths.find((l) => apartDeg(l, first) >= APART_DEG);
    if (second) found.push(second);
  }
  const toRim = rim && early.length > 0 ? lengthToRim(early, rim) : undefined;
  if (toRim) found.push(toRim);
  return found.map((dimension, i) => ({ label: String.fromCharCode(65 + i), ...dimension }));
}

/** The cuts of one plate, from its own plan. */
export function listCuts(plan: CutPlan): SequencedCut[] {
  return plan.contours.map((c) =>
    c.kind === 'opening'
      ? { id: c.id, kind: c.kind, word: c.word, contour: c.contour }
      : { id: c.id, kind: c.kind, word: c.id, contour: circleContour(c.diameterMm / 2) },
  );
}

interface Ringed extends SequencedCut {
  readonly ring: Ring;
}

function acrossAll(early: readonly Ringed[], late: readonly Ringed[]): Omit<CheckDimension, 'label'>[] {
  const pairs = new Map<string, Omit<CheckDimension, 'label'>>();
  for (let k = 0; k < DIRECTIONS; k++) {
    const rad = (2 * Math.PI * k) / DIRECTIONS;
    const along = (p: Point) => p.x * Math.cos(rad) + p.y * Math.sin(rad);
    const a = farthestOut(early, along);
    const b = farthestOut(late, (p) => -along(p));
    if (!a || !b || pairs.has(`${a.id} ${b.id}`)) continue;
    pairs.set(`${a.id} ${b.id}`, { early: a.id, late: b.id, ...farthestApart(a.ring, b.ring) });
  }
  return [...pairs.values()];
}

function farthestOut(cuts: readonly Ringed[], along: (p: Point) => number): Ringed | undefined {
  let best: Ringed | undefined;
  let most = -Infinity;
  for (const cut of cuts) {
    for (const p of cut.ring) if (along(p) > most) [best, most] = [cut, along(p)];
  }
  return best;
}

function farthestApart(a: Ring, b: Ring): { from: Point; to: Point; mm: number } {
  let best = { from: a[0]!, to: b[0]!, mm: -Infinity };
  for (const from of a) {
    for (const to of b) {
      const mm = Math.hypot(to.x - from.x, to.y - from.y);
      if (mm > best.mm) best = { from, to, mm };
    }
  }
  return best;
}

/** From the early edge that lies farthest from the middle, through the middle, to the rim on the other side. */
function lengthToRim(early: readonly Ringed[], rim: SequencedCut): Omit<CheckDimension, 'label'> | undefined {
  const box = ringBox(ringOf(rim.contour));
  const centre = { x: (box.minX + box.maxX) / 2, y: (box.minY + box.maxY) / 2 };
  const radius = (box.maxX - box.minX) / 2;
  let best: Omit<CheckDimension, 'label'> | undefined;
  for (const cut of early) {
    for (const from of cut.ring) {
      const out = Math.hypot(from.x - centre.x, from.y - centre.y);
      if (out === 0 || out + radius <= (best?.mm ?? 0)) continue;
      const share = radius / out;
      const to = { x: centre.x - (from.x - centre.x) * share, y: centre.y - (from.y - centre.y) * share };
      best = { early: cut.id, late: rim.id, from, to, mm: out + radius };
    }
  }
  return best;
}

/** Between two lengths as lines without a sense, 0 to 90. */
function apartDeg(a: { from: Point; to: Point }, b: { from: Point; to: Point }): number {
  const turn = (l: { from: Point; to: Point }) => Math.atan2(l.to.y - l.from.y, l.to.x - l.from.x);
  const deg = (Math.abs(turn(a) - turn(b)) * 180) / Math.PI;
  const half = deg % 180;
  return Math.min(half, 180 - half);
}

function ringOf(contour: Contour): Ring {
  return contourToRing(contour, ARC_FIT_ERROR_MM);
}
