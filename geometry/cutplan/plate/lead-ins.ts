/**
 * Where a contour may be pierced, and how the beam comes from there to its path.
 *
 * In: a path with the waste to its left, where the beam's middle may be, and how thick the metal beside it is. Out: at
 * least one lead-in, the better ones first choice for the tour: pierced in waste, never over another cut, with as much
 * space around the pierce as it wants, off corners and where the metal left beside the start is thick.
 *
 * 1. Places all along the path. At each a quarter of a circle that meets the path without a kink, from the waste; where
 *    it finds no space a shorter one, in the end a short straight way, square to the path.
 * 2. Where none fits, from the deepest point of the waste straight to the path.
 * 3. Each is marked down for thin metal beside it, a near corner, a short lead-in; those near the best are kept.
 */
import { deepestPoint } from '../../adapters/polylabel.ts';
import { nearestOnSegment, segmentsMeet } from '../../measure/distance.ts';
import { regionHolds, ringBox } from '../../measure/ring.ts';
import type { Contour, Point, Region } from '../../shapes.ts';
import {
  startContourAt,
  contourLengthTo,
  sampleRun,
  sideLengthMm,
  type Station,
  stationAt,
  placeStations,
} from '../contour-walk.ts';
import type { Run } from '../sheet-plan.ts';
import { LEAD_PIECE_MM } from '../../units.ts';

export interface Lead {
  readonly pierce: Point;
  readonly run: Run;
  /** Where the path is met. */
  readonly start: Station;
  /** The less the better; from 0. */
  readonly cost: number;
  /** The pierce has less space than it wants: half a kerf more than the beam itself. */
  readonly isTight?: boolean;
}

export interface LeadWishes {
  readonly lengthMm: number;
  readonly kerfMm: number;
  /** Thickness of the metal that stays, beside the path at a station, mm. */
  readonly metalMm: (station: Station) => number;
}

/** Common practice, no source: places looked at, a step apart where the contour is long enough. */
const STEP_MM = 2.5;
const LEAST_STATIONS = 16;
const MOST_STATIONS = 60;
/** Metal thicker than this beside the start is thick; starts keep so far off corners. Common practice, no source. */
const THICK_MM = 5;
const OFF_CORNER_MM = 2.5;
/** A kink of more than this is a corner. */
const CORNER_COS = Math.cos((20 * Math.PI) / 180);
/** What is dearer than the best by more is left out; and no more than so many are kept for the tour. */
const SLACK = 0.35;
const MOST_LEADS = 20;

/** Pieces that a lead-in is looked at in. */
const PIECES = 14;

/** The tangent arc takes a quarter of a circle. */
const QUARTER_BULGE = Math.tan(Math.PI / 8);
const SHORTENED = [1, 0.6, 0.35, 0.2];

export function findLeads(path: Contour, inset: Region, wishes: LeadWishes): Lead[] {
  const lengthMm = contourLengthTo(path, path.length);
  const count = Math.min(MOST_STATIONS, Math.max(LEAST_STATIONS, Math.round(lengthMm / STEP_MM)));
  const corners = findCorners(path);
  const leads: Lead[] = [];
  for (const start of placeStations(path, count)) {
    const lead = findLeadAt(
      start,
      wishes,
      (run, pierce) => leadFits(run, pierce, inset, wishes.kerfMm / 2) && clearsPathBefore(path, start, run),
    );
    if (!lead) continue;
    const off = nearestAlong(corners, contourLengthTo(path, start.side) + lengthAlong(path, start), lengthMm);
    const thin = Math.max(0, 1 - wishes.metalMm(start) / THICK_MM);
    leads.push({ ...lead, cost: lead.cost + 2 * thin + Math.max(0, 1 - off / OFF_CORNER_MM) });
  }
  return leads.length > 0 ? chooseLeads(leads) : [leadFromDeepest(path, inset, wishes)];
}

/** A lead-in at a station, the longest that fits; its cost is how much shorter it is than wished. */
export function findLeadAt(
  start: Station,
  { lengthMm, kerfMm }: Pick<LeadWishes, 'lengthMm' | 'kerfMm'>,
  fitting: (run: Run, pierce: Point) => boolean,
): Lead | undefined {
  const { at, along } = start;
  const waste = { x: -along.y, y: along.x };
  for (const share of SHORTENED) {
    const radius = (lengthMm * share * 2) / Math.PI;
    if (radius < kerfMm / 2) break;
    const pierce = { x: at.x + (waste.x - along.x) * radius, y: at.y + (waste.y - along.y) * radius };
    const run = [
      { ...pierce, bulge: QUARTER_BULGE },
      { ...at, bulge: 0 },
    ];
    if (fitting(run, pierce)) return { pierce, run, start, cost: 0.5 * (1 - share) };
  }
  for (const mm of [kerfMm, kerfMm * 0.6]) {
    const pierce = { x: at.x + waste.x * mm, y: at.y + waste.y * mm };
    const run = [
      { ...pierce, bulge: 0 },
      { ...at, bulge: 0 },
    ];
    if (fitting(run, pierce)) return { pierce, run, start, cost: 0.6 };
  }
  return undefined;
}

/** The best leads, those near them in cost, thinned out evenly where there are too many. */
export function chooseLeads(leads: readonly Lead[]): Lead[] {
  const least = leads.reduce((m, l) => Math.min(m, l.cost), Infinity);
  const good = leads.filter((l) => l.cost <= least + SLACK);
  if (good.length <= MOST_LEADS) return good;
  return Array.from({ length: MOST_LEADS }, (_, i) => good[Math.floor((i * good.length) / MOST_LEADS)]!);
}

/** Path begun where the lead meets it. */
export function startPathAt(path: Contour, lead: Lead): Contour {
  return startContourAt(path, lead.start);
}

/**
 * The run stays where the beam's middle may be, and nothing is cut within half a kerf of the pierce's own hole. Its last
 * piece, which ends on the inset's edge, is left out.
 */
export function leadFits(run: Run, pierce: Point, inset: Region, clearMm: number): boolean {
  if (!regionHolds(inset, pierce)) return false;
  const points = sampleRun(
    run,
    Math.max(LEAD_PIECE_MM, Math.hypot(run[0]!.x - run[1]!.x, run[0]!.y - run[1]!.y) / PIECES),
  );
  const last = points.length - 2;
  const box = ringBox(points);
  for (const ring of [inset.outer, ...inset.holes]) {
    let a = ring[ring.length - 1]!;
    for (const b of ring) {
      const isNear =
        Math.min(a.x, b.x) <= box.maxX + clearMm &&
        Math.max(a.x, b.x) >= box.minX - clearMm &&
        Math.min(a.y, b.y) <= box.maxY + clearMm &&
        Math.max(a.y, b.y) >= box.minY - clearMm;
      if (isNear) {
        const near = nearestOnSegment(pierce, a, b);
        if (Math.hypot(near.x - pierce.x, near.y - pierce.y) < clearMm) return false;
        for (let i = 0; i < last; i++) if (segmentsMeet(points[i]!, points[i + 1]!, a, b)) return false;
      }
      a = b;
    }
  }
  return last < 1 || regionHolds(inset, points[last]!);
}

/** How far back the path is looked at where a tangent arc comes to it, of the arc's length; and at how many places. */
const BACK_SHARE = 1.5 / PIECES;
const BACK_PLACES = 12;

/**
 * Where a tangent arc comes to the path, the path before it bends away from the arc, or less than three quarters as
 * much: else the two would cross within the piece that `leadFits` leaves out.
 */
function clearsPathBefore(path: Contour, start: Station, [pierce, at]: Run): boolean {
  if (!pierce || !at || pierce.bulge === 0) return true;
  const radius = Math.hypot(pierce.x - at.x, pierce.y - at.y) / Math.SQRT2;
  const centre = { x: at.x - start.along.y * radius, y: at.y + start.along.x * radius };
  const turned = startContourAt(path, start);
  const stepMm = (radius * (Math.PI / 2) * BACK_SHARE) / BACK_PLACES;
  let [side, endMm, beginMm] = [turned.length, 0, 0];
  for (let i = 1; i <= BACK_PLACES; i++) {
    const mm = i * stepMm;
    while (mm > beginMm && side > 0) {
      side--;
      endMm = beginMm;
      beginMm += sideLengthMm(turned[side]!, turned[(side + 1) % turned.length]!);
    }
    if (mm > beginMm) return true;
    const { at: p } = stationAt(turned, side, (beginMm - mm) / (beginMm - endMm));
    if (Math.hypot(p.x - centre.x, p.y - centre.y) < radius + mm ** 2 / (8 * radius)) return false;
  }
  return true;
}

function leadFromDeepest(path: Contour, inset: Region, { kerfMm }: LeadWishes): Lead {
  const { at: deepest, depthMm } = deepestPoint(inset.outer);
  const clear = depthMm >= kerfMm / 2 && regionHolds(inset, deepest);
  const near = placeStations(path, MOST_STATIONS).map((start) => ({
    start,
    mm: Math.hypot(start.at.x - deepest.x, start.at.y - deepest.y),
  }));
  near.sort((a, b) => a.mm - b.mm);
  const hit = near.find(
    ({ start }) =>
      clear &&
      leadFits(
        [
          { ...deepest, bulge: 0 },
          { ...start.at, bulge: 0 },
        ],
        deepest,
        inset,
        0,
      ),
  );
  const start = (hit ?? near[0]!).start;
  const pierce = hit ? deepest : start.at;
  return {
    pierce,
    run: [
      { ...pierce, bulge: 0 },
      { ...start.at, bulge: 0 },
    ],
    start,
    cost: 0,
    ...(!hit && { isTight: true }),
  };
}

/** How far along the path its corners lie. */
function findCorners(path: Contour): number[] {
  const found: number[] = [];
  path.forEach((_, i) => {
    const before = stationAt(path, (i + path.length - 1) % path.length, 1).along;
    const after = stationAt(path, i, 0).along;
    if (before.x * after.x + before.y * after.y < CORNER_COS) found.push(contourLengthTo(path, i));
  });
  return found;
}

function nearestAlong(corners: readonly number[], mm: number, lengthMm: number): number {
  return corners.reduce((least, c) => Math.min(least, Math.abs(c - mm), lengthMm - Math.abs(c - mm)), Infinity);
}

function lengthAlong(path: Contour, { side, share }: Station): number {
  return (contourLengthTo(path, side + 1) - contourLengthTo(path, side)) * share;
}
