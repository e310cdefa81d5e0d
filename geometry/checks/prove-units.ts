import type { Cache } from '../cache.ts';
import type { UnitInPlace } from '../bridges/bridge-openings.ts';
import { placePoint } from '../measure/clock.ts';
import { boxOf, gapOf, reachOf } from '../measure/facts.ts';
import { boxesWithin, joinBoxes, ringBox } from '../measure/ring.ts';
import type { Box, Placement, Point, Region, Ring } from '../shapes.ts';
import type { StockRules } from '../stock/rules.ts';
import { measureGaps, type Narrow } from './measure-gaps.ts';
import { verifyPlate } from './verify-plate.ts';
import { ON_BAR_MM } from '../units.ts';

/** What the proof finds around openings: metal that hangs by too little, and what is narrow; narrowest first. */
export interface UnitProof {
  readonly loose: readonly Point[];
  /** Across bars. */
  readonly bridges: readonly Narrow[];
  /** Between openings, no bar in between. */
  readonly webs: readonly Narrow[];
  readonly slots: readonly Narrow[];
}

/** Proofs already made, by the unit's key. */
export type ProofStore = Cache<UnitProof>;

/**
 * The proof of a plate, unit by unit, so that a changed letter costs the proof of one letter.
 *
 * Each unit is proved alone (verifyPlate, in its own frame, once for its key). Units then are measured against each
 * other and against the rim on their contours. Where two units keep more than the shrinking apart, metal that is one
 * piece around each is one piece around both (Janiszewski's theorem); where they do not, that is told in `webs` and
 * by `close`, and the plate must be proved whole. Cut files are proved whole always.
 */
export function proveUnits(
  units: readonly UnitInPlace[],
  openings: readonly Region[],
  diameterMm: number,
  rules: StockRules,
  store: ProofStore,
): UnitProof & { readonly close: boolean } {
  const limitMm = 2 * Math.max(rules.leastBridgeMm, rules.leastWebMm);
  const loose: Point[] = [];
  const [bridges, webs, slots]: Narrow[][] = [[], [], []];
  units.forEach((unit) => {
    const known = store.getOrMake(unit.key, () => proveAlone(unit, rules, limitMm));
    loose.push(...known.loose.map((p) => placePoint(p, unit.frame)));
    const place = (n: Narrow) => placeNarrow(n, unit.frame, unit.firstOpening);
    bridges!.push(...known.bridges.map(place));
    webs!.push(...known.webs.map(place));
    slots!.push(...known.slots.map(place));
  });
  const between = [...betweenUnits(units, openings, limitMm), ...toRim(openings, diameterMm, limitMm)];
  webs!.push(...between);
  const byWidth = (p: Narrow, q: Narrow) => p.mm - q.mm;
  return {
    loose,
    bridges: bridges!.sort(byWidth),
    webs: webs!.sort(byWidth),
    slots: slots!.sort(byWidth),
    close: between.some((n) => n.mm < rules.leastBridgeMm),
  };
}

/** One unit in a disc of metal that leaves more room around it than anything is measured to. */
function proveAlone({ solved }: UnitInPlace, rules: StockRules, limitMm: number): UnitProof {
  if (solved.openings.length === 0) return { loose: [], bridges: [], webs: [], slots: [] };
  const box = joinBoxes(solved.openings.map((o) => ringBox(o.outer)));
  const centre = { x: (box.minX + box.maxX) / 2, y: (box.minY + box.maxY) / 2 };
  const shift = (ring: Ring) => ring.map((p) => ({ x: p.x - centre.x, y: p.y - centre.y }));
  const centred = solved.openings.map((o) => ({ outer: shift(o.outer), holes: o.holes.map(shift) }));
  const reach = Math.hypot(box.maxX - centre.x, box.maxY - centre.y);
  const proof = verifyPlate(2 * (reach + 3 * limitMm), centred, rules.leastBridgeMm);
  const back: Placement = { ...centre, turnDeg: 0 };
  const gaps = measureGaps(proof.graph, limitMm, 2 * rules.leastOpeningMm);
  const [bridges, webs]: Narrow[][] = [[], []];
  for (const gap of gaps.webs) {
    const placed = placeNarrow(gap, back, 0);
    const middle = { x: (placed.from.x + placed.to.x) / 2, y: (placed.from.y + placed.to.y) / 2 };
    (solved.bars.some((bar) => onBar(bar, middle)) ? bridges! : webs!).push(placed);
  }
  return {
    loose: proof.loose.map((p) => placePoint(p, back)),
    bridges: narrowestOfPairs(bridges!),
    webs: narrowestOfPairs(webs!),
    slots: gaps.slots.map((s) => placeNarrow(s, back, 0)),
  };
}

/** Of a list that runs from narrow to wide, the first between each two openings. */
function narrowestOfPairs(gaps: readonly Narrow[]): Narrow[] {
  const seen = new Set<string>();
  return gaps.filter(({ openings }) => {
    const key = [...openings].sort((a, b) => a - b).join('-');
    return seen.size < seen.add(key).size;
  });
}

function placeNarrow(n: Narrow, at: Placement, firstOpening: number): Narrow {
  return {
    mm: n.mm,
    from: placePoint(n.from, at),
    to: placePoint(n.to, at),
    openings: [n.openings[0] + firstOpening, n.openings[1] + firstOpening],
  };
}

/** On the bar itself, or so near its end that the metal belongs to it. */
function onBar(bar: { from: Point; to: Point; widthMm: number }, p: Point): boolean {
  const length = Math.hypot(bar.to.x - bar.from.x, bar.to.y - bar.from.y);
  const [ux, uy] = [(bar.to.x - bar.from.x) / length, (bar.to.y - bar.from.y) / length];
  const along = (p.x - bar.from.x) * ux + (p.y - bar.from.y) * uy;
  const aside = (p.x - bar.from.x) * uy - (p.y - bar.from.y) * ux;
  return along > -ON_BAR_MM && along < length + ON_BAR_MM && Math.abs(aside) <= bar.widthMm / 2 + ON_BAR_MM;
}

interface Boxed {
  /** Index of the unit's first opening on the plate. */
  readonly first: number;
  readonly rings: readonly Ring[];
  readonly boxes: readonly Box[];
  readonly box: Box;
}

/** Narrowest web between each two units that come nearer than the limit. */
function betweenUnits(units: readonly UnitInPlace[], openings: readonly Region[], limitMm: number): Narrow[] {
  const boxed = units.map((unit): Boxed => {
    const mine = openings.slice(unit.firstOpening, unit.firstOpening + unit.solved.openings.length);
    const rings = mine.map((o) => o.outer);
    const boxes = rings.map(boxOf);
    return { first: unit.firstOpening, rings, boxes, box: joinBoxes(boxes) };
  });
  const sorted = boxed.filter((b) => b.rings.length > 0).sort((a, b) => a.box.minX - b.box.minX);
  const found: Narrow[] = [];
  sorted.forEach((a, i) => {
    for (let j = i + 1; j < sorted.length; j++) {
      const b = sorted[j]!;
      if (b.box.minX - a.box.maxX >= limitMm) break;
      if (!boxesWithin(a.box, b.box, limitMm)) continue;
      const gap = narrowestOf(a, b, limitMm);
      if (gap) found.push(gap);
    }
  });
  return found;
}

function narrowestOf(a: Boxed, b: Boxed, limitMm: number): Narrow | undefined {
  let best: Narrow | undefined;
  a.rings.forEach((p, i) => {
    if (!boxesWithin(a.boxes[i]!, b.box, best?.mm ?? limitMm)) return;
    b.rings.forEach((q, j) => {
      const within = best?.mm ?? limitMm;
      if (!boxesWithin(a.boxes[i]!, b.boxes[j]!, within)) return;
      const gap = gapOf(p, q, limitMm);
      if (gap && gap.mm < within) best = { ...gap, openings: [a.first + i, b.first + j] };
    });
  });
  return best;
}

/** Openings that come nearer to the rim than the limit, each with its nearest point. */
function toRim(openings: readonly Region[], diameterMm: number, limitMm: number): Narrow[] {
  const radius = diameterMm / 2;
  return openings.flatMap(({ outer }, i): Narrow[] => {
    const { mm: reach, at: far } = reachOf(outer);
    if (radius - reach >= limitMm) return [];
    const to = { x: (far.x * radius) / reach, y: (far.y * radius) / reach };
    return [{ mm: Math.max(0, radius - reach), from: far, to, openings: [i, -1] }];
  });
}
