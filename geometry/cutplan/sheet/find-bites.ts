import { EXTENT_ERROR_MM } from '../../units.ts';
import { boxOf } from '../../measure/facts.ts';
import type { NestedSheet, PlacedPlate } from '../../sheet/sheets.ts';
import type { Point } from '../../shapes.ts';
import { CUT_EN } from '../../sentences/cut-en.ts';
import { inMm } from '../../sentences/say.ts';
import type { Wording } from '../../sentences/wording.ts';
import { runsOf } from '../pass-runs.ts';
import { closeRun, sampleRun } from '../contour-walk.ts';
import type { CutPass, Run, SheetPlan } from '../sheet-plan.ts';

/** A cut that runs where it spoils a plate, or off the sheet. */
export interface Bite {
  /** The pass that cuts there. */
  readonly pass: string;
  /** The plate that is bitten; absent: the edge of the sheet, or what a remnant has lost. */
  readonly plate?: string;
  readonly at: Point;
  /** How deep the beam reaches, mm. */
  readonly deepMm: number;
  readonly sentence: string;
  readonly words: Wording;
}

/** A path is looked at in pieces no longer than this, mm: an arc of a plate's rim bulges less than a grid step between. */
const PIECE_MM = 0.25;

/**
 * Looks a plan over by what the beam really cuts, its width and lead-ins included, sharing nothing with what placed the
 * plates: no pass may reach another plate, leave the sheet, or run over a hole. What lies in a plate's waste is another
 * plate to it; the one around a plate is looked at by checkNest.
 */
export function findBites({ plates, gone, ...sheet }: NestedSheet, plan: SheetPlan, kerfMm: number): Bite[] {
  const half = kerfMm / 2;
  const byId = new Map(plates.map((p) => [p.id, p]));
  const bites: Bite[] = [];
  for (const pass of plan.passes) {
    const points = listPoints(pass);
    const box = boxOf(points);
    const host = byId.get(pass.plate);
    for (const other of plates) {
      if (other.id === pass.plate || liesAround(other, host, byId)) continue;
      const reach = other.diameterMm / 2 + half;
      const isFar =
        other.x + reach < box.minX ||
        other.x - reach > box.maxX ||
        other.y + reach < box.minY ||
        other.y - reach > box.maxY;
      if (isFar) continue;
      const worst = deepest(points, (p) => reach - Math.hypot(p.x - other.x, p.y - other.y));
      if (worst.deepMm > EXTENT_ERROR_MM) bites.push(biteOf(pass, worst, other.id));
    }
    const off = deepest(points, (p) =>
      Math.max(
        half - Math.min(p.x, p.y, sheet.widthMm - p.x, sheet.heightMm - p.y),
        ...gone.map((hole) => hole.radiusMm + half - Math.hypot(p.x - hole.x, p.y - hole.y)),
      ),
    );
    if (off.deepMm > EXTENT_ERROR_MM) bites.push(biteOf(pass, off));
  }
  return bites;
}

function biteOf(pass: CutPass, { at, deepMm }: { at: Point; deepMm: number }, plate?: string): Bite {
  const values = { plate: pass.plate, other: plate ?? '', deep: inMm(deepMm, 2) };
  const said = CUT_EN.said(plate === undefined ? 'nesting.cutOffSheet' : 'nesting.cutInPlate', values);
  return { pass: pass.id, ...(plate !== undefined && { plate }), at, deepMm, ...said };
}

function listPoints(pass: CutPass): Point[] {
  const runs = runsOf(pass).flatMap((r): Run[] => [r.leadIn, r.closed ? closeRun(r.cut) : r.cut, r.leadOut]);
  return runs.flatMap((run) => (run.length > 1 ? sampleRun(run, PIECE_MM) : [...run]));
}

function deepest(points: readonly Point[], depthOf: (p: Point) => number): { at: Point; deepMm: number } {
  let worst = { at: points[0]!, deepMm: -Infinity };
  for (const at of points) {
    const deepMm = depthOf(at);
    if (deepMm > worst.deepMm) worst = { at, deepMm };
  }
  return worst;
}

function liesAround(
  outer: PlacedPlate,
  plate: PlacedPlate | undefined,
  byId: ReadonlyMap<string, PlacedPlate>,
): boolean {
  for (let at = plate, depth = 0; at?.inside !== undefined && depth < byId.size; depth++) {
    if (at.inside === outer.id) return true;
    at = byId.get(at.inside);
  }
  return false;
}
