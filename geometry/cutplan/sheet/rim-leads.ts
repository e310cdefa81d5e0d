/**
 * Lead-ins to rims: pierced in the skeleton, or in the waste of the plate around. A point of a lead-in lies nearer to its
 * own cut than to any other (by a kerf at least), so no two lead-ins can meet, whichever are taken; and it keeps off the
 * sheet's edge, what a remnant has lost, and witness marks.
 */
import { nearestOnSegment } from '../../measure/distance.ts';
import type { Circle, NestedSheet, PlacedPlate } from '../../sheet/sheets.ts';
import { ringHolds } from '../../measure/ring.ts';
import type { Placement, Point, Ring } from '../../shapes.ts';
import { placeVertices, sampleRun } from '../contour-walk.ts';
import { chooseLeads, type Lead, findLeadAt } from '../plate/lead-ins.ts';
import type { PreparedPlate } from './prepare-plate.ts';
import type { CutSettings, Run } from '../sheet-plan.ts';

export interface Neighbours {
  readonly sheet: NestedSheet;
  /** Circles that lead-ins keep off: witness marks. */
  readonly marks: readonly Circle[];
  /** The opening of another plate that this one lies in, true size, in the sheet's frame. */
  readonly around?: Ring | undefined;
}

/** Metal thicker than this inside the rim at the start is thick. Common practice, no source. */
const THICK_MM = 5;

/** Leads in the plate's own frame. */
export function findRimLeads(
  plate: PlacedPlate,
  work: PreparedPlate,
  near: Neighbours,
  { kerfMm, leadInMm }: CutSettings,
): Lead[] {
  const fits = (run: Run): boolean =>
    sampleRun(placeVertices(run, plate), Math.max(0.2, leadInMm / 8)).every((p) => isFree(p, plate, near, kerfMm));
  const leads: Lead[] = [];
  for (const { start, metalMm } of work.rimStations) {
    const lead = findLeadAt(start, { lengthMm: leadInMm, kerfMm }, fits);
    if (lead) leads.push({ ...lead, cost: lead.cost + 2 * Math.max(0, 1 - metalMm / THICK_MM) });
  }
  if (leads.length > 0) return chooseLeads(leads);
  const { start } = work.rimStations[0]!;
  const run = [
    { ...start.at, bulge: 0 },
    { ...start.at, bulge: 0 },
  ];
  return [{ pierce: start.at, run, start, cost: 0, isTight: true }];
}

function isFree(p: Point, plate: PlacedPlate, { sheet, marks, around }: Neighbours, kerfMm: number): boolean {
  const own = off(p, plate, plate.diameterMm / 2);
  if (p.x < kerfMm || p.y < kerfMm || p.x > sheet.widthMm - kerfMm || p.y > sheet.heightMm - kerfMm) return false;
  if (sheet.gone.some((c) => off(p, c, c.radiusMm) < kerfMm)) return false;
  if (marks.some((c) => off(p, c, c.radiusMm) < kerfMm)) return false;
  for (const other of sheet.plates) {
    if (other.id === plate.id || other.id === plate.inside) continue;
    // The plates around the one around lie farther away than its own edge.
    if (holds(other, plate)) continue;
    if (off(p, other, other.diameterMm / 2) < own + kerfMm) return false;
  }
  return !around || (ringHolds(around, p) && edgeGapMm(around, p) >= own + kerfMm);
}

function holds(outer: PlacedPlate, inner: PlacedPlate): boolean {
  return Math.hypot(outer.x - inner.x, outer.y - inner.y) + inner.diameterMm / 2 < outer.diameterMm / 2;
}

/** How far a point lies outside a circle; negative inside. */
function off(p: Point, at: Point, radiusMm: number): number {
  return Math.hypot(p.x - at.x, p.y - at.y) - radiusMm;
}

/** Of the leads of an opening that holds other plates those whose lead-ins stay on its own side. */
export function keepLeadsClear(
  leads: readonly Lead[],
  net: Ring,
  at: Placement,
  inside: readonly PlacedPlate[],
  kerfMm: number,
): Lead[] {
  const clear = leads.filter((lead) =>
    sampleRun(placeVertices(lead.run, at), 0.5).every((p) => {
      const own = edgeGapMm(net, p);
      return inside.every((plate) => off(p, plate, plate.diameterMm / 2) >= own + kerfMm);
    }),
  );
  if (clear.length > 0) return clear;
  // No room even for the shortest: pierced on the path, and told.
  const { start } = leads[0]!;
  const on = { ...start.at, bulge: 0 };
  return [{ pierce: start.at, run: [on, on], start, cost: 0, isTight: true }];
}

function edgeGapMm(ring: Ring, p: Point): number {
  let least = Infinity;
  let a = ring[ring.length - 1]!;
  for (const b of ring) {
    const q = nearestOnSegment(p, a, b);
    least = Math.min(least, Math.hypot(q.x - p.x, q.y - p.y));
    a = b;
  }
  return least;
}
