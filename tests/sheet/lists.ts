import type { NestGaps, PlateWish, SheetKind } from '../../geometry/sheet/sheets.ts';

export const GAPS: NestGaps = { betweenMm: 6, edgeMm: 10 };
export const SHEET: SheetKind = { id: 'large', widthMm: 1250, heightMm: 2500 };

export function wish(id: string, diameterMm: number, quantity: number): PlateWish {
  return { id, diameterMm, quantity };
}

/** A ring around a plate: all but its band is waste. */
export function ring(id: string, diameterMm: number, quantity: number, bandMm: number): PlateWish {
  return { id, diameterMm, quantity, waste: [{ x: 0, y: 0, radiusMm: diameterMm / 2 - bandMm }] };
}

/** A shop's year: a thousand plates of four sizes. */
export const THOUSAND: readonly PlateWish[] = [
  wish('heads', 533.4, 300),
  wish('large', 508, 200),
  wish('middle', 381, 200),
  wish('half', 254, 300),
];
