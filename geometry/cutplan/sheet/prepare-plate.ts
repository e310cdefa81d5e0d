/**
 * All that is worked out once for a plate and serves every copy of it, wherever and however turned it lies: paths,
 * lead-ins, the order of its openings as a round trip. In the plate's own frame.
 */
import { createCache, memoize } from '../../cache.ts';
import { contourToRing } from '../../measure/arc.ts';
import { castRay, type EdgeGrid, edgeGrid } from '../../measure/edge-grid.ts';
import type { Contour, Point, Region } from '../../shapes.ts';
import { contourLengthTo, type Station, placeStations } from '../contour-walk.ts';
import { findCoolRound, EXTRA_SHARE, type Round } from './cool-round.ts';
import type { CutPlan } from '../cut-plan.ts';
import { type KerfPlate, offsetByKerf } from '../plate/kerf-paths.ts';
import { findLeads } from '../plate/lead-ins.ts';
import type { CutSettings } from '../sheet-plan.ts';
import type { PreparedOpening } from './prepared-opening.ts';
import { LEAD_ROOM_FLATTEN_MM, NEARNESS_ERROR_MM } from '../../units.ts';

export interface PreparedPlate {
  readonly kerf: KerfPlate;
  readonly openings: readonly PreparedOpening[];
  /** Places on the rim's path, with the metal inside of each. */
  readonly rimStations: readonly { readonly start: Station; readonly metalMm: number }[];
}

const RIM_STATIONS = 72;

/** The work for a plate under settings; cached as long as its cut plan is in use. */
export function preparePlate(plan: CutPlan, settings: CutSettings): PreparedPlate {
  const { kerfMm, leadInMm, feedMmMin, rapidMmMin, pierceS, coolS } = settings;
  const key = [kerfMm, leadInMm, feedMmMin, rapidMmMin, pierceS, coolS].join(' ');
  return preparedFor(plan).getOrMake(key, () => prepare(plan, settings));
}

/** Few settings are tried at a time: one for each process that is compared. */
const MOST_SETTINGS = 20;
const preparedFor = memoize((_plan: CutPlan) => createCache<PreparedPlate>(MOST_SETTINGS));

/** The order of the openings, round, and where each is begun, forwards and backwards; cached with the work. */
export function planRounds(
  work: PreparedPlate,
  settings: CutSettings,
  extraShare = EXTRA_SHARE,
): readonly [Round, Round] {
  return roundsOf(work).getOrMake(String(extraShare), () => findCoolRound(work.openings, settings, extraShare));
}

const roundsOf = memoize((_work: PreparedPlate) => createCache<readonly [Round, Round]>(MOST_SETTINGS));

function prepare(plan: CutPlan, settings: CutSettings): PreparedPlate {
  const kerf = offsetByKerf(plan, settings.kerfMm);
  const nets = [...kerf.openings.flatMap((o) => o.paths.map((p) => p.net)), kerf.rim.net];
  const grid = edgeGrid(
    nets.map((net) => contourToRing(net, NEARNESS_ERROR_MM)),
    nets.map((_, i) => i),
  );
  const openings = kerf.openings.map(({ id, word, isLoose, paths, inset }): PreparedOpening => {
    const flatInset = {
      outer: contourToRing(paths.at(-1)!.path, LEAD_ROOM_FLATTEN_MM),
      holes: paths.slice(0, -1).map((p) => contourToRing(p.path, LEAD_ROOM_FLATTEN_MM)),
    };
    const passes = paths.map((p) => ({ ...p, ...leadsAndLength(p.path, flatInset, grid, settings) }));
    return { id, word, isLoose, inset, inner: passes.slice(0, -1), outer: passes.at(-1)! };
  });
  const rimStations = placeStations(kerf.rim.path, RIM_STATIONS).map((start) => ({
    start,
    metalMm: measureMetalBeside(grid, start),
  }));
  return { kerf, openings, rimStations };
}

function leadsAndLength(path: Contour, inset: Region, grid: EdgeGrid, { kerfMm, leadInMm }: CutSettings) {
  const metalMm = (station: Station) => measureMetalBeside(grid, station);
  return {
    leads: findLeads(path, inset, { lengthMm: leadInMm, kerfMm, metalMm }),
    lengthMm: contourLengthTo(path, path.length),
  };
}

/** Directions in which the metal is measured, about square to the path. */
const FAN_RAD = [-0.7, -0.35, 0, 0.35, 0.7];

/** The least way through the metal to the right of a path, to the next cut; Infinity where there is none. */
function measureMetalBeside(grid: EdgeGrid, { at, along }: Station): number {
  const outward: Point = { x: along.y, y: -along.x };
  return FAN_RAD.reduce((least, rad) => {
    const [c, s] = [Math.cos(rad), Math.sin(rad)];
    const hits = castRay(grid, at, outward.x * c - outward.y * s, outward.x * s + outward.y * c);
    // The first is the edge that stays here, the second the far edge of that metal.
    return hits.length < 2 ? least : Math.min(least, hits[1]!.at - hits[0]!.at);
  }, Infinity);
}
