import type { NestGaps, SheetKind } from '../../geometry/sheet/sheets.ts';

// What a person lays out with a ruler: regular hexagonal rows, nothing pushed or squeezed. Written apart from the kernel.

const SINK = Math.sqrt(3) / 2;
const SPARE = 1e-6;

/** How many plates hexagonal rows hold on a sheet, the better of rows along and across. */
export function rowsHold(sheet: SheetKind, diameterMm: number, gaps: NestGaps): number {
  const { w, h, d } = roomFor(sheet, diameterMm, gaps);
  return Math.max(hexagonal(w, h, d), hexagonal(h, w, d));
}

/** How many small plates lie in rows beyond `large` plates in rows at one end of a sheet; undefined: these do not fit. */
export function smallBeyondLarge(
  sheet: SheetKind,
  large: { readonly diameterMm: number; readonly count: number },
  smallMm: number,
  gaps: NestGaps,
): number | undefined {
  const { w, h, d } = roomFor(sheet, large.diameterMm, gaps);
  const small = smallMm + gaps.betweenMm;
  const found = [
    [w, h],
    [h, w],
  ].flatMap(([across = 0, along = 0]) => {
    const used = lengthOf(across, large.count, d);
    if (used > along + SPARE) return [];
    const rest = along - used;
    return [Math.max(hexagonal(across, rest, small), hexagonal(rest, across, small))];
  });
  return found.length > 0 ? Math.max(...found) : undefined;
}

function roomFor(sheet: SheetKind, diameterMm: number, { betweenMm, edgeMm }: NestGaps) {
  const grow = betweenMm - 2 * edgeMm;
  return { w: sheet.widthMm + grow, h: sheet.heightMm + grow, d: diameterMm + betweenMm };
}

function hexagonal(across: number, along: number, d: number): number {
  if (across + SPARE < d) return 0;
  let count = 0;
  for (let row = 0; d + row * d * SINK <= along + SPARE; row++) count += inRow(across, row, d);
  return count;
}

function inRow(across: number, row: number, d: number): number {
  return Math.floor((across - (row % 2 ? d / 2 : 0) + SPARE) / d);
}

/** Length of the rows that so many take. */
function lengthOf(across: number, count: number, d: number): number {
  if (count === 0) return 0;
  if (across + SPARE < d) return Infinity;
  let rows = 0;
  for (let laid = 0; laid < count; rows++) laid += inRow(across, rows, d);
  return d + (rows - 1) * d * SINK;
}
