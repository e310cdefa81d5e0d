import type { CutPlan } from '../../../geometry/cutplan/cut-plan.ts';
import { preparePlate } from '../../../geometry/cutplan/sheet/prepare-plate.ts';
import { placeVertices } from '../../../geometry/cutplan/contour-walk.ts';
import { linkPasses } from '../../../geometry/cutplan/sheet/link-passes.ts';
import { type Lead, startPathAt } from '../../../geometry/cutplan/plate/lead-ins.ts';
import type { CutPass, CutSettings, SheetPlan } from '../../../geometry/cutplan/sheet-plan.ts';
import { placeRing } from '../../../geometry/measure/place.ts';
import type { NestedSheet, PlacedPlate } from '../../../geometry/sheet/sheets.ts';
import type { Point } from '../../../geometry/shapes.ts';

/** A fibre laser in thin stainless sheet; common practice, no source. */
export const LASER: CutSettings = {
  kerfMm: 0.2,
  feedMmMin: 4000,
  pierceS: 0.3,
  accelerationMmS2: 5000,
  rapidMmMin: 60000,
  cornerMm: 0.05,
  raiseS: 0.5,
  leadInMm: 3,
  slats: { pitchMm: 30, edgeMm: 3 },
  coolS: 10,
};

/** Eight large plates in two rows and four half as large above them, on a sheet of 2500 by 1350 mm. */
export function demoSheet(
  large: { id: string; diameterMm: number },
  half: { id: string; diameterMm: number },
): NestedSheet {
  const plates: PlacedPlate[] = [];
  const add = ({ id, diameterMm }: { id: string; diameterMm: number }, x: number, y: number) =>
    plates.push({ id: `${id}#${plates.length + 1}`, wish: id, diameterMm, x, y, turnDeg: 0, locked: false });
  const pitch = large.diameterMm + 6;
  for (let row = 0; row < 2; row++)
    for (let column = 0; column < 4; column++)
      add(large, 10 + large.diameterMm / 2 + column * pitch, 10 + large.diameterMm / 2 + row * pitch);
  for (let column = 0; column < 4; column++)
    add(half, 10 + half.diameterMm / 2 + column * pitch, 10 + 2 * pitch + half.diameterMm / 2);
  return { kind: 'demo', number: 1, widthMm: 2500, heightMm: 1350, gone: [], plates, usedShare: 0 };
}

/**
 * The same passes of the same sheet, cut nearest-first: always the nearest pierce of what may come next (a word begun is
 * finished first, a rim comes after all of its plate), each contour pierced by its way in that is nearest to the first
 * vertex of the cut plan's contour. Ways go around what may stand, as in the plan itself.
 */
export function nearestFirstMm(
  plan: SheetPlan,
  sheet: NestedSheet,
  plans: ReadonlyMap<string, CutPlan>,
  settings: CutSettings,
): number {
  const left = new Map(plan.passes.map((pass) => [pass.id, begunAtFirstVertex(pass, sheet, plans, settings)]));
  const order: CutPass[] = [];
  let at: Point = { x: 0, y: 0 };
  while (left.size > 0) {
    const free = [...left.values()].filter((pass) => pass.after.every((id) => !left.has(id)));
    const begun = order.findLast((pass) => isLettered(pass) && free.some((other) => other.word === pass.word))?.word;
    const allowed = free.filter((pass) => begun === undefined || pass.word === begun || !isLettered(pass));
    const [next] = allowed.map((pass) => ({ pass, mm: gapMm(at, pass.pierce) })).sort((a, b) => a.mm - b.mm);
    order.push(next!.pass);
    left.delete(next!.pass.id);
    at = next!.pass.path[0]!;
  }
  return linkPasses(order, plan.slugs, settings).rapidMm;
}

function begunAtFirstVertex(
  pass: CutPass,
  sheet: NestedSheet,
  plans: ReadonlyMap<string, CutPlan>,
  settings: CutSettings,
): CutPass {
  const plate = sheet.plates.find((p) => p.id === pass.plate)!;
  const plan = plans.get(plate.wish)!;
  const id = pass.id.slice(plate.id.length + 1);
  const work = preparePlate(plan, settings);
  const contour = plan.contours.find((c) => c.id === id);
  if (pass.kind === 'rim') return turnedTo0(pass, plate);
  if (contour?.kind !== 'opening') return pass;
  const own = work.openings.flatMap((o) => [...o.inner, o.outer]).find((p) => p.id === id)!;
  const first = contour.contour[0]!;
  const lead = own.leads.reduce((a: Lead, b: Lead) => (gapMm(b.start.at, first) < gapMm(a.start.at, first) ? b : a));
  return {
    ...pass,
    path: placeVertices(startPathAt(own.path, lead), plate),
    pierce: placeRing([lead.pierce], plate)[0]!,
    leadIn: placeVertices(lead.run, plate),
  };
}

/** A rim drawn as a circle begins at its right end. */
function turnedTo0(pass: CutPass, { x, y }: PlacedPlate): CutPass {
  const rad = Math.atan2(pass.path[0]!.y - y, pass.path[0]!.x - x);
  const turn = { x: 0, y: 0, turnDeg: (rad * 180) / Math.PI };
  const turned = <T extends Point>(p: T): T => {
    const [q] = placeRing([{ x: p.x - x, y: p.y - y }], turn);
    return { ...p, x: q!.x + x, y: q!.y + y };
  };
  return { ...pass, path: pass.path.map(turned), pierce: turned(pass.pierce), leadIn: pass.leadIn.map(turned) };
}

function isLettered(pass: CutPass): boolean {
  return pass.kind === 'opening' && !pass.word.includes('/:');
}

function gapMm(a: Point, b: Point): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}
