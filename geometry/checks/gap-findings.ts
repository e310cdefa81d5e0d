import type { Opening } from '../bridges/types.ts';
import type { Finding } from '../findings.ts';
import type { StockRules } from '../stock/rules.ts';
import { inMm, said } from '../sentences/say.ts';
import type { Amount } from '../sentences/wording.ts';
import type { Narrow } from './measure-gaps.ts';
import type { UnitProof } from './prove-units.ts';

/** What the narrow places of a finished plate come to. */
export interface GapReport {
  readonly findings: readonly Finding[];
  readonly leastBridgeMm?: number;
  readonly leastWebMm?: number;
  readonly leastOpeningMm?: number;
}

/** Sampling errs by up to 1 %; a width this share of its limit passes. */
const PASS_SHARE = 0.98;

/** A web thinner than this share of the rule is no longer a question of care: it burns away or tears. */
const HOPELESS_SHARE = 0.6;

/** At most so many places of one kind are listed; more would only hide each other. */
const MOST_PLACES = 6;

/**
 * Judges bridges, webs and openings by what was measured on the finished plate.
 * In: what the proof found narrow, the plate's openings, stock rules. A web is stop below HOPELESS_SHARE of the
 * rule, else look; an opening narrower than the cut is stop, narrower than the process likes is look.
 */
export function judgeGaps(
  { bridges, webs, slots }: Pick<UnitProof, 'bridges' | 'webs' | 'slots'>,
  openings: readonly Opening[],
  rules: StockRules,
): GapReport {
  const findings: Finding[] = [
    ...narrowestPlaces(bridges, PASS_SHARE * rules.leastBridgeMm).map((gap) => thinBridge(gap, openings, rules)),
    ...narrowestPlaces(webs, PASS_SHARE * rules.leastWebMm).map((gap) => thinWeb(gap, openings, rules)),
    ...narrowestPlaces(slots, PASS_SHARE * rules.leastOpeningMm)
      .slice(0, 1)
      .map((gap) => narrowOpening(gap, openings, rules)),
  ];
  return {
    findings,
    ...least('leastBridgeMm', bridges),
    ...least('leastWebMm', webs),
    ...least('leastOpeningMm', slots),
  };
}

function least<K extends string>(key: K, gaps: readonly Narrow[]): { [P in K]?: number } {
  const first = gaps[0];
  return (first ? { [key]: first.mm } : {}) as { [P in K]?: number };
}

/** The narrowest place between each two openings, as long as it is under the limit. */
function narrowestPlaces(gaps: readonly Narrow[], limitMm: number): Narrow[] {
  const seen = new Set<string>();
  const out: Narrow[] = [];
  for (const gap of gaps) {
    if (gap.mm >= limitMm || out.length >= MOST_PLACES) break;
    const key = [...gap.openings].sort((a, b) => a - b).join('-');
    if (seen.has(key)) continue;
    seen.add(key);
    out.push(gap);
  }
  return out;
}

function thinBridge(gap: Narrow, openings: readonly Opening[], rules: StockRules): Finding {
  return {
    code: 'bridge-too-thin',
    severity: 'stop',
    ...locate(gap, openings),
    limitMm: rules.leastBridgeMm,
    ...said('findings.bridgeThinBetween', { width: mm(gap.mm), least: mm(rules.leastBridgeMm) }),
  };
}

function thinWeb(gap: Narrow, openings: readonly Opening[], rules: StockRules): Finding {
  return {
    code: 'web-too-thin',
    severity: gap.mm < HOPELESS_SHARE * rules.leastWebMm ? 'stop' : 'look',
    ...locate(gap, openings),
    limitMm: rules.leastWebMm,
    ...said('findings.webThin', { width: mm(gap.mm), least: mm(rules.leastWebMm) }),
  };
}

function narrowOpening(gap: Narrow, openings: readonly Opening[], rules: StockRules): Finding {
  const tooNarrow = gap.mm < rules.kerfMm;
  return {
    code: 'opening-too-narrow',
    severity: tooNarrow ? 'stop' : 'look',
    ...locate(gap, openings),
    limitMm: tooNarrow ? rules.kerfMm : rules.leastOpeningMm,
    ...(tooNarrow
      ? said('findings.openingFine', { width: mm(gap.mm), kerf: mm(rules.kerfMm) })
      : said('findings.openingNarrow', { width: mm(gap.mm), least: mm(rules.leastOpeningMm) })),
  };
}

function locate(gap: Narrow, openings: readonly Opening[]): Pick<Finding, 'place' | 'elementIds' | 'measuredMm'> {
  const ids = gap.openings.flatMap((i) => openings[i]?.elementIds ?? []);
  return {
    place: {
      kind: 'point',
      at: { x: (gap.from.x + gap.to.x) / 2, y: (gap.from.y + gap.to.y) / 2 },
      radiusMm: Math.max(3, 1.5 * gap.mm),
    },
    elementIds: [...new Set(ids)],
    measuredMm: gap.mm,
  };
}

function mm(value: number): Amount {
  return inMm(value, 2);
}
