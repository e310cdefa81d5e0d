import { createCache, memoize } from '../../cache.ts';
import type { PlacedPlate } from '../../sheet/sheets.ts';
import { contourLengthTo, placeVertices } from '../contour-walk.ts';
import type { CutPlan } from '../cut-plan.ts';
import { preparePlate } from './prepare-plate.ts';
import type { CutPass, CutSettings, Slug, SlugChances } from '../sheet-plan.ts';
import { computeSlugChances, TIP_LIMIT } from './slugs.ts';

/** Pieces of all plates, the likeliest to tip first. Tabs hold those above the limit, or those that are named; never a plate. */
export function judgeSlugs(
  plates: readonly PlacedPlate[],
  plans: ReadonlyMap<string, CutPlan>,
  settings: CutSettings,
  tabs: { readonly all: boolean; readonly held: ReadonlySet<string> },
): Slug[] {
  const slugs = plates.flatMap((plate) => {
    const plan = plans.get(plate.wish);
    if (!plan) return [];
    return [...computePlateChances(plan, settings, plate.turnDeg)].map(([id, chances]): Slug => {
      const pass = `${plate.id}/${id}`;
      const isTabbed = id !== 'rim' && ((tabs.all && chances.tips > TIP_LIMIT) || tabs.held.has(pass));
      return { pass, plate: plate.id, isTabbed, ...chances };
    });
  });
  return slugs.sort((a, b) => b.tips - a.tips);
}

/** Chances of all pieces of a plate turned so, by the contour's id; worked out once for each turn. */
export function computePlateChances(plan: CutPlan, settings: CutSettings, turnDeg: number): Map<string, SlugChances> {
  const { kerfMm, slats } = settings;
  const key = [kerfMm, slats.pitchMm, slats.edgeMm, turnDeg].join(' ');
  return chancesOf(plan).getOrMake(key, () => {
    const { openings, kerf } = preparePlate(plan, settings);
    const turned = { x: 0, y: 0, turnDeg };
    const paths = [...openings.flatMap((o) => [...o.inner, o.outer]), kerf.rim];
    return new Map(paths.map((p) => [p.id, computeSlugChances(placeVertices(p.path, turned), slats)]));
  });
}

/** By settings and turn; a plate lies in at most so many turns on the sheets of an order. */
const chancesOf = memoize((_plan: CutPlan) => createCache<Map<string, SlugChances>>(400));

/** Metal left across the cut, wide enough to hold a piece and snapped by hand; common practice, no source. */
const TAB_MM = 0.5;
/** Where along the path the two tabs stand: away from its start, across from each other. */
const TABS_AT = [0.3, 0.8];

/** The passes of tabbed pieces, with their tabs. */
export function addTabs(passes: readonly CutPass[], slugs: readonly Slug[], kerfMm: number): CutPass[] {
  const held = new Set(slugs.filter((s) => s.isTabbed).map((s) => s.pass));
  return passes.map((pass) => {
    if (!held.has(pass.id)) return pass;
    const lengthMm = contourLengthTo(pass.path, pass.path.length);
    // The beam's own half width is cut on both sides of where it stops.
    const half = (TAB_MM + kerfMm) / 2;
    const tabsMm = TABS_AT.map((share) => ({ fromMm: share * lengthMm - half, toMm: share * lengthMm + half }));
    return { ...pass, tabsMm };
  });
}
