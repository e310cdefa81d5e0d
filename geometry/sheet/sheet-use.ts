import { LEAST_PLATE_MM } from '../units.ts';
import { findFreeBox } from './free-box.ts';
import type { Circle, NestedSheet, NestGaps, PlateWish, SheetRest } from './sheets.ts';

/** Area of the plates, without their round waste, over the area of the sheet that was there: 0 to 1. */
export function usedShare(sheet: Omit<NestedSheet, 'usedShare'>, wishes: readonly PlateWish[]): number {
  const wasteOf = new Map(wishes.map((wish) => [wish.id, discArea(wish.waste ?? [])]));
  const plates = sheet.plates.reduce((sum, { diameterMm, wish }) => {
    return sum + (Math.PI / 4) * diameterMm ** 2 - (wasteOf.get(wish) ?? 0);
  }, 0);
  return plates / (sheet.widthMm * sheet.heightMm - discArea(sheet.gone));
}

/**
 * The largest rectangle of a sheet that no plate and no hole reaches, a gap away from all of them, as a remnant to be
 * put back on the rack; undefined where no plate would fit on it.
 */
export function restOf(sheet: NestedSheet, index: number, gaps: NestGaps): SheetRest | undefined {
  const holes = [
    ...sheet.gone.map(({ x, y, radiusMm }) => ({ x, y, r: radiusMm + gaps.betweenMm })),
    ...sheet.plates
      .filter((p) => !p.inside)
      .map(({ x, y, diameterMm }) => ({ x, y, r: diameterMm / 2 + gaps.betweenMm })),
  ];
  const box = findFreeBox({ minX: 0, minY: 0, maxX: sheet.widthMm, maxY: sheet.heightMm }, holes);
  if (!box) return undefined;
  const [widthMm, heightMm] = [box.maxX - box.minX, box.maxY - box.minY];
  if (Math.min(widthMm, heightMm) < LEAST_PLATE_MM + 2 * gaps.edgeMm) return undefined;
  const kind = { id: `${sheet.kind}#${sheet.number}-rest`, widthMm, heightMm, count: 1, remnant: true };
  return { sheet: index, x: box.minX, y: box.minY, kind };
}

function discArea(circles: readonly Circle[]): number {
  return circles.reduce((sum, { radiusMm }) => sum + Math.PI * radiusMm ** 2, 0);
}
