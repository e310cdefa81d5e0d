import { GRID_MM } from '../units.ts';
import { inMm } from '../sentences/say.ts';
import { CUT_EN } from '../sentences/cut-en.ts';
import type { KeyOf } from '../sentences/make-say.ts';
import type { WordValues, Wording } from '../sentences/wording.ts';
import type { NestedSheet, NestGaps, PlacedPlate, PlateWish, SheetKind } from './sheets.ts';

/** One thing that is wrong with plates on sheets. */
export interface NestFault {
  readonly code: 'overlap' | 'edge' | 'hole' | 'waste' | 'count' | 'plate' | 'sheet';
  /** Its place in the list of sheets; absent where it concerns them all. */
  readonly sheet?: number;
  /** The plates concerned, by id. */
  readonly plates: readonly string[];
  readonly sentence: string;
  readonly words: Wording;
}

/**
 * Looks plates on sheets over from the records alone, sharing nothing with what placed them: every pair of plates on a
 * sheet, every edge, every hole, the waste that plates lie in, and the numbers. `complete`: whether every wish has to be
 * there in full (otherwise fewer are right, more never). A grid step of the cut counts as nothing.
 */
export function checkNest(
  sheets: readonly NestedSheet[],
  wishes: readonly PlateWish[],
  kinds: readonly SheetKind[],
  gaps: NestGaps,
  complete = true,
): readonly NestFault[] {
  const faults = sheets.flatMap((sheet, i) => [
    ...checkSheet(sheet, wishes, gaps).map((fault) => ({ ...fault, sheet: i })),
    ...checkRack(sheet, i, sheets, kinds),
  ]);
  return [...faults, ...checkPlates(sheets, wishes), ...checkCounts(sheets, wishes, complete)];
}

/** The same for the plates of one sheet: what the page asks while a hand moves one. */
export function checkSheet(sheet: NestedSheet, wishes: readonly PlateWish[], gaps: NestGaps): readonly NestFault[] {
  const faults: NestFault[] = [];
  sheet.plates.forEach((plate, i) => {
    const radius = plate.diameterMm / 2;
    const outer = plate.inside === undefined ? undefined : sheet.plates.find(({ id }) => id === plate.inside);
    if (plate.inside !== undefined) {
      if (!outer || !liesInWaste(plate, outer, wishes, gaps)) {
        faults.push(fault('waste', [plate.id, plate.inside], 'nesting.notInWaste', { other: plate.inside }));
      }
    } else {
      const container = Math.min(plate.x, plate.y, sheet.widthMm - plate.x, sheet.heightMm - plate.y) - radius;
      const past = gaps.edgeMm - container;
      if (!(past <= GRID_MM)) faults.push(fault('edge', [plate.id], 'nesting.closeToEdge', { past: inMm(past, 2) }));
      for (const hole of sheet.gone) {
        const near = gaps.betweenMm - (Math.hypot(plate.x - hole.x, plate.y - hole.y) - radius - hole.radiusMm);
        if (!(near <= GRID_MM)) faults.push(fault('hole', [plate.id], 'nesting.closeToHole', { past: inMm(near, 2) }));
      }
    }
    for (const other of sheet.plates.slice(i + 1)) {
      // a plate and the one it lies in are held apart by the waste's edge, as above
      if (isWithin(plate, other, sheet.plates) || isWithin(other, plate, sheet.plates)) continue;
      const between = Math.hypot(plate.x - other.x, plate.y - other.y) - radius - other.diameterMm / 2;
      const near = gaps.betweenMm - between;
      if (!(near <= GRID_MM)) {
        const values = { other: other.id, past: inMm(near, 2) };
        faults.push(fault('overlap', [plate.id, other.id], 'nesting.closeToPlate', values));
      }
    }
  });
  return faults;
}

function liesInWaste(plate: PlacedPlate, outer: PlacedPlate, wishes: readonly PlateWish[], gaps: NestGaps): boolean {
  // clockwise, as seen with y up
  const angle = -(outer.turnDeg * Math.PI) / 180;
  const wastes = wishes.find(({ id }) => id === outer.wish)?.waste ?? [];
  return wastes.some((waste) => {
    const x = outer.x + waste.x * Math.cos(angle) - waste.y * Math.sin(angle);
    const y = outer.y + waste.x * Math.sin(angle) + waste.y * Math.cos(angle);
    const reach = Math.hypot(plate.x - x, plate.y - y) + plate.diameterMm / 2 + gaps.betweenMm;
    return reach <= waste.radiusMm + GRID_MM;
  });
}

function isWithin(plate: PlacedPlate, outer: PlacedPlate, plates: readonly PlacedPlate[]): boolean {
  let at: PlacedPlate | undefined = plate;
  for (let depth = 0; at?.inside !== undefined && depth < plates.length; depth++) {
    if (at.inside === outer.id) return true;
    const next: string = at.inside;
    at = plates.find(({ id }) => id === next);
  }
  return false;
}

function checkRack(
  sheet: NestedSheet,
  index: number,
  sheets: readonly NestedSheet[],
  kinds: readonly SheetKind[],
): readonly NestFault[] {
  const kind = kinds.find(({ id }) => id === sheet.kind);
  const gone = JSON.stringify((kind?.gone ?? []).map(({ x, y, radiusMm }) => [x, y, radiusMm]));
  const isThere =
    kind?.widthMm === sheet.widthMm &&
    kind.heightMm === sheet.heightMm &&
    sheet.number >= 1 &&
    sheet.number <= (kind.count ?? Infinity) &&
    gone === JSON.stringify(sheet.gone.map(({ x, y, radiusMm }) => [x, y, radiusMm])) &&
    sheets.findIndex((other) => other.kind === sheet.kind && other.number === sheet.number) === index;
  const values = { number: sheet.number, kind: sheet.kind };
  return isThere ? [] : [{ ...fault('sheet', [], 'nesting.sheetUnknown', values), sheet: index }];
}

function checkPlates(sheets: readonly NestedSheet[], wishes: readonly PlateWish[]): readonly NestFault[] {
  const seen = new Set<string>();
  return sheets.flatMap(({ plates }, sheet) =>
    plates.flatMap((plate) => {
      const wish = wishes.find(({ id }) => id === plate.wish);
      const right = wish?.diameterMm === plate.diameterMm && !seen.has(plate.id);
      seen.add(plate.id);
      return right ? [] : [{ ...fault('plate', [plate.id], 'nesting.strangePlate'), sheet }];
    }),
  );
}

function checkCounts(
  sheets: readonly NestedSheet[],
  wishes: readonly PlateWish[],
  complete: boolean,
): readonly NestFault[] {
  return wishes.flatMap(({ id, quantity }) => {
    const count = sheets.reduce((sum, { plates }) => sum + plates.filter(({ wish }) => wish === id).length, 0);
    if (complete ? count === quantity : count <= quantity) return [];
    return [fault('count', [id], 'nesting.countWrong', { count, wanted: quantity })];
  });
}

function fault(
  code: NestFault['code'],
  plates: readonly string[],
  key: KeyOf<typeof CUT_EN>,
  values: WordValues = {},
): NestFault {
  return { code, plates, ...CUT_EN.said(key, { plate: plates[0] ?? '', ...values }) };
}
