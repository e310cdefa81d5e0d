import { intersect, ringsOf } from '../adapters/clipper.ts';
import type { Manner } from '../design/schema.ts';
import { regionAreaMm2 } from '../measure/ring.ts';
import type { Region } from '../shapes.ts';
import type { StockRules } from '../stock/rules.ts';
import { bridgeDrawing } from './bridging.ts';
import { canonicalUnit } from './canonical-unit.ts';
import { closePinches } from './close-pinches.ts';
import { findHeldOnce } from './find-held-once.ts';
import { type HandEdits, NO_EDITS } from './hand-edits.ts';
import type { SolvedIsland, SolvedUnit } from './solved-unit.ts';
import { hangsOfBars, metalOf } from './stiffness.ts';

/**
 * Bridges one unit.
 *
 * In: united openings in the unit's frame (y up is upright for the letter), stock rules, manner, a person's edits.
 * Out: openings without islands, whose surrounding metal is still one piece when shrunk by just under half the least
 * bridge; islands and bars for the record. What could not be achieved is listed in `loose`, never passed over.
 */
export function solveUnit(
  regions: readonly Region[],
  rules: StockRules,
  manner: Manner,
  edits: HandEdits = NO_EDITS,
): SolvedUnit {
  const unit = canonicalUnit(regions, edits);
  const solved = solveCanonical(unit.regions, rules, manner, unit.edits);
  const { point, ring } = unit.home;
  const region = ({ outer, holes }: Region) => ({ outer: ring(outer), holes: holes.map(ring) });
  return {
    ...solved,
    openings: solved.openings === unit.regions ? regions : solved.openings.map(region),
    bars: solved.bars.map((b) => ({ ...b, from: point(b.from), to: point(b.to), outline: ring(b.outline) })),
    islands: solved.islands.map(({ at, hang, ...island }) => ({
      ...island,
      at: point(at),
      ...(hang && { hang: { ...hang, softAt: point(hang.softAt) } }),
    })),
    specks: solved.specks.map(point),
    loose: solved.loose.map(point),
    once: solved.once.map(point),
    lostParts: solved.lostParts.map(point),
  };
}

/** Bridges the drawing, then tells how its islands hang, what its bars cover and what hangs on one alone. */
function solveCanonical(drawn: readonly Region[], rules: StockRules, manner: Manner, edits: HandEdits): SolvedUnit {
  const metal = metalOf(drawn);
  const { bodies, ...bridged } = bridgeDrawing(closePinches(drawn), metal, rules, manner, edits);
  const { openings, bars } = bridged;
  const hangs = hangsOfBars(metal, bars, rules);
  const islands = bridged.islands.map((island, i): SolvedIsland => {
    const hang = hangs[bodies[i]!];
    return hang ? { ...island, hang } : island;
  });
  const cover = measureCover(drawn, openings, bars.length);
  const crowded = cover.covered > CROWDED_SHARE || islands.some((island) => island.small);
  const outlines = bars.map((b) => b.outline);
  return { ...bridged, islands, once: crowded ? findHeldOnce(drawn, openings, outlines) : [], ...cover };
}

/** Above this share covered, bars run into each other and into islands: what each holds alone is looked at. */
const CROWDED_SHARE = 0.05;

function measureCover(drawn: readonly Region[], openings: readonly Region[], bars: number) {
  if (bars === 0) return { covered: 0, lostParts: [] };
  const area = (regions: readonly Region[]) => regions.reduce((sum, r) => sum + regionAreaMm2(r), 0);
  const left = ringsOf(openings);
  return {
    covered: 1 - area(openings) / area(drawn),
    lostParts: drawn.filter((part) => intersect([part], left).length === 0).map((part) => part.outer[0]!),
  };
}
