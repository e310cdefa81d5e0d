/**
 * How bridges come about: openings in units go in, the same openings with bars of metal left across them come out.
 *
 * In: units (a letter, or letters that touch), what the stock asks, the design's manner and a person's edits, a store.
 * Out: openings without islands, bridges and islands on the plate, findings. The metal around them is one piece, also when
 * shrunk by just under half the least bridge. Not promised: the fewest bars. What could not be held is a finding.
 *
 * 1. canonical-unit.ts brings a unit into one form. A drawing shifted, mirrored or listed otherwise is so bridged the same
 *    to the last digit. solve-unit.ts reads as the list of the steps that follow, and is asked once for each form.
 * 2. find-pieces.ts shrinks the metal. What is still joined is joined well enough; every separate part is a piece to hold.
 *    A disc of that radius about any point of a piece lies in metal: so a bar between two pieces joins them at full width.
 * 3. necks.ts finds metal that is there but too thin (a stencil face's own bridges); it is widened. find-bars.ts casts bars
 *    from the edges of islands; measure-bar.ts says how each would sit. Nearly upright or level bars are set so.
 * 4. choose.ts picks bars so that the loss of no single one parts anything (holding-graph.ts), mirrored where the letter is
 *    (mirror.ts), spread around long edges (spans.ts), after what a person laid or barred (choose-by-hand.ts). stiffen.ts
 *    adds or widens where an island would give too much under a touch.
 * 5. Bars are cut out of the openings; tails too narrow to cut stay metal (trim-slivers.ts). The whole is looked at again,
 *    shrunk by a little less, until nothing is found twice running.
 *
 * While the design changes, checks/prove-units.ts proves each unit once and measures units against each other.
 * Weights of what looks wrong stand in cost-of-bar.ts (one bar) and cost-of-set.ts (bars together).
 */

import { createCache, memoize } from '../cache.ts';
import type { Design, Manner } from '../design/schema.ts';
import { gatherAlike } from './gather-alike.ts';
import type { Finding, Severity } from '../findings.ts';
import { placePoint } from '../measure/clock.ts';
import { doWithin } from '../measure/counted-work.ts';
import { placeRegions, placeRing } from '../measure/place.ts';
import type { Unit } from '../openings/gather-units.ts';
import type { Placement, Point } from '../shapes.ts';
import type { StockRules } from '../stock/rules.ts';
import {
  type HandEdits,
  editsByShape,
  editsKey,
  editsOfUnit,
  findLostEdits,
  findShapesOfBars,
  unitEditFindings,
} from './hand-edits.ts';
import { solveUnit } from './solve-unit.ts';
import type { SolvedUnit } from './solved-unit.ts';
import type { UnitStore } from './unit-store.ts';
import type { Bridge, Island, Opening } from './types.ts';
import { inMm, listed, said, shapeWords } from '../sentences/say.ts';
import type { WordValue } from '../sentences/wording.ts';

/** A bridged unit in its own frame, and where it stands among the plate's openings. */
export interface UnitInPlace {
  /** Same key = same openings and bars in the unit's frame. */
  readonly key: string;
  readonly frame: Placement;
  readonly solved: SolvedUnit;
  /** Index of its first opening in the plate's list. */
  readonly firstOpening: number;
}

export interface Bridged {
  readonly units: readonly UnitInPlace[];
  readonly openings: readonly Opening[];
  readonly bridges: readonly Bridge[];
  readonly islands: readonly Island[];
  readonly findings: readonly Finding[];
}

/**
 * Bridges every unit of a plate, each worked out once for its form and the rule, and puts it in its place.
 * In: units with their own regions, stock rules, the design for its wishes, store. Out: what is cut, mm, plate frame.
 */
export function bridgeOpenings(units: readonly Unit[], rules: StockRules, design: Design, store: UnitStore): Bridged {
  const inPlace: UnitInPlace[] = [];
  const openings: Opening[] = [];
  const bridges: Bridge[] = [];
  const islands: Island[] = [];
  const findings: Finding[] = [];
  const bends = JSON.stringify([rules.thicknessMm, rules.stiffness ?? null]);
  const rule = [rules.leastBridgeMm, rules.leastOpeningMm, rules.longestSpanMm, rules.kerfMm, bends].join('|');
  const own = new Map(design.elements.map((e) => [e.id, e.manner]));
  const shapes = units.flatMap((u) => u.shapes);
  const byShape = editsByShape(design, shapes);
  for (const unit of units) {
    const edits = editsOfUnit(unit, byShape);
    const manner = own.get(unit.shapes[0]!.elementId) ?? design.bridges.manner;
    const key = `${rule}|${manner}#${unit.key}${editsKey(edits)}`;
    const solved = recallSolved(key, unit, rules, manner, edits, store);
    inPlace.push({ key, frame: unit.frame, solved, firstOpening: openings.length });
    const placed = placedFrom(unit).getOrMake(key, () => placeUnit(unit, solved, rules));
    openings.push(...placed.openings);
    bridges.push(...placed.bridges);
    islands.push(...placed.islands);
    findings.push(...placed.findings);
    findings.push(...unitEditFindings(unit, edits, solved, 2 * rules.leastBridgeMm));
  }
  findings.push(...findLostEdits(design, shapes, byShape));
  return { units: inPlace, openings, bridges, islands, findings: gatherAlike(findings) };
}

type Sentence = Pick<Finding, 'sentence' | 'words'>;

/** A bridged unit on the plate. */
interface PlacedUnit {
  readonly openings: readonly Opening[];
  readonly bridges: readonly Bridge[];
  readonly islands: readonly Island[];
  readonly findings: readonly Finding[];
}

/** Units placed before, by unit, rule, manner and edits; what was placed is then the same objects too. */
const placedFrom = memoize((_unit: Unit) => createCache<PlacedUnit>(1));

function placeUnit(unit: Unit, solved: SolvedUnit, rules: StockRules): PlacedUnit {
  const elementIds = [...new Set(unit.shapes.map((s) => s.elementId))];
  const first = unit.shapes[0]!;
  const word = `${first.elementId}/${first.word}`;
  const ids = solved.bars.map((_, i) => `${unit.id}:${i}`);
  return {
    openings: placeRegions(solved.openings, unit.frame).map((region, i) => ({
      id: `${unit.id}.${i}`,
      elementIds,
      word,
      region,
    })),
    bridges: solved.bars.map((bar, i) => ({
      id: ids[i]!,
      elementIds,
      from: placePoint(bar.from, unit.frame),
      to: placePoint(bar.to, unit.frame),
      widthMm: bar.widthMm,
      outline: placeRing(bar.outline, unit.frame),
      widens: bar.widens,
      shapeId: unit.shapes[bar.shape ?? 0]!.id,
      ...(bar.editId !== undefined && { editId: bar.editId }),
    })),
    islands: solved.islands.map((island, i) => ({
      id: `${unit.id}~${i}`,
      elementIds,
      at: placePoint(island.at, unit.frame),
      areaMm2: island.areaMm2,
      small: island.small,
      bridgeIds: island.bars.map((b) => ids[b]!),
      ...(island.hang && { hang: { ...island.hang, softAt: placePoint(island.hang.softAt, unit.frame) } }),
    })),
    findings: unitFindings(unit, solved, elementIds, rules),
  };
}

function recallSolved(
  key: string,
  unit: Unit,
  rules: StockRules,
  manner: Manner,
  edits: HandEdits | undefined,
  store: UnitStore,
): SolvedUnit {
  const known = store.units.get(key);
  if (known) {
    store.reused++;
    return known;
  }
  const alone = solveWithin(unit, rules, manner, edits);
  const on = findShapesOfBars(alone.bars, unit, edits);
  const solved =
    unit.shapes.length === 1 ? alone : { ...alone, bars: alone.bars.map((b, i) => ({ ...b, shape: on[i]! })) };
  store.solved++;
  store.units.set(key, solved);
  return solved;
}

/**
 * Bridging in counted work: the hardest motif on a whole plate takes 12 million steps, most letters some 50,000. Beyond this
 * the unit is left out and a finding says so, so that no design runs for minutes.
 */
const MOST_UNIT_STEPS = 20_000_000;

function solveWithin(unit: Unit, rules: StockRules, manner: Manner, edits: HandEdits | undefined): SolvedUnit {
  // Shapes that touch and came to no area: their union alone was too much (gather-units.ts).
  const united = unit.shapes.length === 1 || unit.regions.length > 0;
  const solved = united && doWithin(MOST_UNIT_STEPS, () => solveUnit(unit.regions, rules, manner, edits));
  return solved || LEFT_OUT;
}

const LEFT_OUT: SolvedUnit = {
  openings: [],
  bars: [],
  islands: [],
  specks: [],
  loose: [],
  once: [],
  covered: 0,
  lostParts: [],
  lost: [],
  refused: [],
  tooIntricate: true,
};

function unitFindings(unit: Unit, solved: SolvedUnit, elementIds: string[], rules: StockRules): Finding[] {
  const what = nameOf(unit);
  const place = (p: Point) =>
    ({ kind: 'point', at: placePoint(p, unit.frame), radiusMm: 2 * rules.leastBridgeMm }) as const;
  const leastMm = rules.leastBridgeMm;
  const at = (code: string, severity: Severity, p: Point, sentence: Sentence, limitMm?: number): Finding => ({
    code,
    severity,
    place: place(p),
    elementIds,
    ...(limitMm !== undefined && { limitMm }),
    ...sentence,
  });
  if (solved.tooIntricate) {
    return [at('too-intricate', 'stop', { x: 0, y: 0 }, said('findings.tooIntricate', { what }))];
  }
  const inPieces = said('findings.metalInPieces', { what, least: inMm(leastMm, 2) });
  const findings = solved.loose.map((p) => at('metal-in-pieces', 'stop', p, inPieces, leastMm));
  const [once, speck] = [solved.once[0], solved.specks[0]];
  if (once) findings.push(at('held-once', 'look', once, said('findings.heldOnce', { what })));
  const cover = coverFinding(solved);
  if (cover) findings.push(at(cover.code, cover.severity, cover.at, said(cover.key, { ...cover.values, what })));
  const small = solved.islands.find((i) => i.small);
  if (small) {
    const onBridge = said('findings.islandOnBridge', { what, least: inMm(leastMm, 2) });
    findings.push(at('island-on-its-bridge', 'note', small.at, onBridge, leastMm));
  }
  if (speck) findings.push(at('speck-lost', 'look', speck, said('findings.speckLost', { what })));
  return findings;
}

/** Above this share the bridges show more than the letter; above the second it can't be read. Common practice, no source. */
const MUCH_COVERED = 0.35;
const SWALLOWED = 0.6;

/** What bars take too much of, where that is worth saying. */
function coverFinding({ lostParts, bars, covered }: SolvedUnit) {
  const [lost, first] = [lostParts[0], bars[0]];
  if (lost)
    return { code: 'part-swallowed', severity: 'stop', at: lost, key: 'findings.partSwallowed', values: {} } as const;
  if (!first || covered < MUCH_COVERED) return undefined;
  const severity = covered >= SWALLOWED ? 'stop' : 'look';
  const values = { percent: Math.round(100 * covered) };
  return { code: 'letter-swallowed', severity, at: first.from, key: 'findings.letterSwallowed', values } as const;
}

function nameOf(unit: Unit): WordValue {
  const labels = [...new Set(unit.shapes.map((s) => s.label))];
  return listed(labels.map(shapeWords));
}
