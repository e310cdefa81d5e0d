/**
 * In what sequence the plates of a sheet are cut, where each one's round of openings is begun, which way round it runs, and
 * where its rim is pierced.
 *
 * 1. Plates that lie in the waste of another come right before it.
 * 2. A short round trip through the resting corner and all plates, by points on their rims.
 * 3. Along it, forwards and backwards, the shortest way through layers: where the round of openings is opened (between
 *    two words), its direction, and the lead of the rim. The shorter of the two is taken.
 */
import type { PlacedPlate } from '../../sheet/sheets.ts';
import type { Point } from '../../shapes.ts';
import { findTour } from '../tour/find-tour.ts';
import type { TourGroup } from '../tour/tour-group.ts';

/** One way to cut the openings of a plate. */
export interface VisitOption {
  /** Numbers of openings in their sequence. */
  readonly sequence: readonly number[];
  /** Which of the plate's rounds it is part of. */
  readonly round: number;
  readonly from: Point;
  readonly to: Point;
  /** Ways between the openings. */
  readonly lengthMm: number;
}

export interface VisitRim {
  readonly pierce: Point;
  /** Where the rim's path begins and ends. */
  readonly at: Point;
}

export interface Visit {
  readonly plate: PlacedPlate;
  /** None for a plate without openings. */
  readonly options: readonly VisitOption[];
  readonly rims: readonly VisitRim[];
}

export interface ChosenVisit {
  readonly visit: Visit;
  readonly option: VisitOption | undefined;
  /** Number of the rim's lead. */
  readonly rim: number;
}

const HOME: Point = { x: 0, y: 0 };
const RIM_POINTS = 12;

export function visitPlates(visits: readonly Visit[]): ChosenVisit[] {
  const blocks = groupByHost(visits);
  const groups: TourGroup[] = [{ points: [HOME] }, ...blocks.map((b) => ({ points: rimPoints(b.at(-1)!.plate) }))];
  const { sequence } = findTour(groups);
  const home = sequence.indexOf(0);
  const along = [...sequence.slice(home + 1), ...sequence.slice(0, home)].map((i) => blocks[i - 1]!);
  const ways = [along, [...along].reverse()].map((way) => chooseThroughLayers(way.flat()));
  return ways[0]!.mm <= ways[1]!.mm ? ways[0]!.chosen : ways[1]!.chosen;
}

/** Each plate that lies in no other, after all that lie in it, those within those first. */
function groupByHost(visits: readonly Visit[]): Visit[][] {
  const ids = new Set(visits.map((v) => v.plate.id));
  const within = (id: string | undefined): Visit[] =>
    visits.filter((v) => (v.plate.inside !== undefined && ids.has(v.plate.inside) ? v.plate.inside : undefined) === id);
  const block = (v: Visit): Visit[] => [...nearestNext(within(v.plate.id)).flatMap(block), v];
  return within(undefined).map(block);
}

function nearestNext(visits: readonly Visit[]): Visit[] {
  if (visits.length < 3) return [...visits];
  const { sequence } = findTour(visits.map((v) => ({ points: rimPoints(v.plate) })));
  return sequence.map((i) => visits[i]!);
}

function rimPoints({ x, y, diameterMm }: PlacedPlate): Point[] {
  return Array.from({ length: RIM_POINTS }, (_, i) => {
    const rad = (i / RIM_POINTS) * 2 * Math.PI;
    return { x: x + (Math.cos(rad) * diameterMm) / 2, y: y + (Math.sin(rad) * diameterMm) / 2 };
  });
}

interface Step {
  readonly option: number;
  readonly rimBefore: number;
}

function chooseThroughLayers(visits: readonly Visit[]): { mm: number; chosen: ChosenVisit[] } {
  let [ends, costs]: [readonly Point[], number[]] = [[HOME], [0]];
  const steps: Step[][] = [];
  for (const { options, rims } of visits) {
    const begun = options.map((o) => cheapest(ends, costs, o.from, o.lengthMm));
    const into = rims.map((rim): Step & { mm: number } => {
      if (options.length === 0) {
        const way = cheapest(ends, costs, rim.pierce, 0);
        return { option: -1, rimBefore: way.index, mm: way.mm };
      }
      const way = cheapest(
        options.map((o) => o.to),
        begun.map((b) => b.mm),
        rim.pierce,
        0,
      );
      return { option: way.index, rimBefore: begun[way.index]!.index, mm: way.mm };
    });
    steps.push(into);
    [ends, costs] = [rims.map((r) => r.at), into.map((s) => s.mm)];
  }
  let rim = costs.reduce((best, mm, i) => (mm < costs[best]! ? i : best), 0);
  const mm = costs[rim] ?? 0;
  const chosen: ChosenVisit[] = [];
  for (let k = visits.length - 1; k >= 0; k--) {
    const visit = visits[k]!;
    const step = steps[k]![rim]!;
    chosen.unshift({ visit, option: visit.options[step.option], rim });
    rim = step.rimBefore;
  }
  return { mm, chosen };
}

function cheapest(
  from: readonly Point[],
  costs: readonly number[],
  to: Point,
  more: number,
): { mm: number; index: number } {
  let [mm, index] = [Infinity, 0];
  from.forEach((p, i) => {
    const all = costs[i]! + Math.hypot(p.x - to.x, p.y - to.y) + more;
    if (all < mm) [mm, index] = [all, i];
  });
  return { mm, index };
}
