import { createCache, memoize } from '../../cache.ts';
import type { PlacedPlate } from '../../sheet/sheets.ts';
import { placeVertices } from '../contour-walk.ts';
import type { CutPlan } from '../cut-plan.ts';
import { preparePlate } from './prepare-plate.ts';
import type { CutSettings, Slug, SlugChances } from '../sheet-plan.ts';
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
