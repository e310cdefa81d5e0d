/**
 * What helps against pieces that may tip: the plate turned against the slats, small tabs, or such pieces cut last of
 * their plate. Each is offered with what it would do.
 */
import type { NestedSheet } from '../../sheet/sheets.ts';
import type { CutPlan } from '../cut-plan.ts';
import { computePlateChances } from './plate-slugs.ts';
import type { CutSettings, SheetPlan } from '../sheet-plan.ts';
import { TIP_LIMIT } from './slugs.ts';

/** Pieces that will tip, on the average over all offsets of the slats, before and after. */
interface Effect {
  readonly plate: string;
  readonly before: number;
  readonly after: number;
}

export type SlugRemedy =
  /** Turn the plate so that it lies at this angle (clockwise, degrees). */
  | (Effect & { readonly kind: 'turn'; readonly turnDeg: number })
  /** Hold these pieces by tabs (SheetWishes.tabs). */
  | (Effect & { readonly kind: 'tabs'; readonly passes: readonly string[] })
  /** Cut these words last of their plate: then so many fewer ways of it have to go around or over what may stand. */
  | { readonly kind: 'last'; readonly plate: string; readonly words: readonly string[]; readonly fewerWays: number };

/** Angles looked at: slats and plates are symmetric about half a turn. */
const STEP_DEG = 5;
/** A turn that saves less than this many pieces is not worth the handling. */
const WORTH = 0.5;

export function suggestRemedies(
  plan: SheetPlan,
  sheet: NestedSheet,
  plans: ReadonlyMap<string, CutPlan>,
  settings: CutSettings,
): SlugRemedy[] {
  return sheet.plates.flatMap((plate): SlugRemedy[] => {
    const cuts = plans.get(plate.wish);
    const risky = plan.slugs.filter((s) => s.plate === plate.id && s.tips > TIP_LIMIT && !s.isTabbed);
    if (!cuts || risky.length === 0) return [];
    const before = countTipping(cuts, settings, plate.turnDeg);
    const mends: SlugRemedy[] = [];
    const best = plate.locked ? undefined : findBestTurn(cuts, settings);
    if (best && best.tips < before - WORTH)
      mends.push({ kind: 'turn', plate: plate.id, turnDeg: best.turnDeg, before, after: best.tips });
    const passes = risky.filter((s) => !s.pass.endsWith('/rim'));
    const saved = passes.reduce((sum, s) => sum + s.tips, 0);
    if (passes.length > 0)
      mends.push({ kind: 'tabs', plate: plate.id, passes: passes.map((s) => s.pass), before, after: before - saved });
    const last = findLaterWords(plan, plate.id, new Set(risky.map((s) => s.pass)));
    if (last) mends.push({ kind: 'last', plate: plate.id, ...last });
    return mends;
  });
}

/** Pieces of a plate that tip, on the average. */
function countTipping(cuts: CutPlan, settings: CutSettings, turnDeg: number): number {
  let sum = 0;
  for (const { tips } of computePlateChances(cuts, settings, turnDeg).values()) sum += tips;
  return sum;
}

function findBestTurn(cuts: CutPlan, settings: CutSettings): { turnDeg: number; tips: number } {
  let best = { turnDeg: 0, tips: Infinity };
  for (let turnDeg = 0; turnDeg < 180; turnDeg += STEP_DEG) {
    const tips = countTipping(cuts, settings, turnDeg);
    if (tips < best.tips) best = { turnDeg, tips };
  }
  return best;
}

/** Words with risky pieces, when cutting them after the plate's other words leaves fewer ways that come after one. */
function findLaterWords(
  plan: SheetPlan,
  plate: string,
  risky: ReadonlySet<string>,
): { words: string[]; fewerWays: number } | undefined {
  const own = plan.passes.filter((p) => p.plate === plate && p.kind === 'opening');
  const words = new Set(own.filter((p) => risky.has(p.id)).map((p) => p.word));
  const fewerWays = countMovesSaved(plan, plate, words, risky);
  return fewerWays > 0 ? { words: [...words], fewerWays } : undefined;
}

/** Ways of a plate that come after a risky piece of these words now, and would come before it were they cut last. */
export function countMovesSaved(
  plan: SheetPlan,
  plate: string,
  words: ReadonlySet<string>,
  risky: ReadonlySet<string>,
): number {
  const own = plan.passes.filter((p) => p.plate === plate && p.kind === 'opening');
  const first = own.findIndex((p) => words.has(p.word) && risky.has(p.id));
  return first < 0 ? 0 : own.slice(first + 1).filter((p) => !words.has(p.word)).length;
}
