import type { Opening } from '../../../geometry/bridges/types.ts';
import type { Point, Region } from '../../../geometry/shapes.ts';

/** Says whether a disc about a point covers no opening, to the nearest cell: good enough to keep pins off letters. */
export type IsBare = (at: Point, reachMm: number) => boolean;

const CELLS = 128;

/** Looks once where the openings are, cell by cell, so that asking costs next to nothing. Pure; plate millimetres. */
export function bareMetal(openings: readonly Opening[], radiusMm: number): IsBare {
  const cellMm = (2 * radiusMm) / CELLS;
  const open = new Uint8Array(CELLS * CELLS);
  const cellOf = (mm: number) => Math.floor((mm + radiusMm) / cellMm);
  const kept = (cell: number) => Math.max(0, Math.min(CELLS - 1, cell));
  const middleMm = (cell: number) => (cell + 0.5) * cellMm - radiusMm;
  for (const { region } of openings) {
    for (const [row, crossed] of crossings(region, middleMm, kept, cellOf)) {
      // between the first and second edge that the row's middle crosses is inside, between the third and fourth again
      for (let i = 0; i + 1 < crossed.length; i += 2) {
        const [from, to] = [crossed[i] ?? 0, crossed[i + 1] ?? 0];
        for (let col = kept(cellOf(from)); col <= kept(cellOf(to)); col++)
          if (middleMm(col) >= from && middleMm(col) < to) open[row * CELLS + col] = 1;
      }
    }
  }
  return (at, wantedMm) => {
    // Less than a cell could slip between the middles of cells.
    const reachMm = Math.max(wantedMm, cellMm * 0.75);
    for (let row = kept(cellOf(at.y - reachMm)); row <= kept(cellOf(at.y + reachMm)); row++) {
      for (let col = kept(cellOf(at.x - reachMm)); col <= kept(cellOf(at.x + reachMm)); col++) {
        if (open[row * CELLS + col] !== 1) continue;
        const dx = middleMm(col) - at.x;
        const dy = middleMm(row) - at.y;
        if (dx * dx + dy * dy <= reachMm * reachMm) return false;
      }
    }
    return true;
  };
}

/** Where the middle of each row crosses the region's edges, from left to right, mm. */
function crossings(
  region: Region,
  middleMm: (cell: number) => number,
  kept: (cell: number) => number,
  cellOf: (mm: number) => number,
): ReadonlyMap<number, readonly number[]> {
  const rows = new Map<number, number[]>();
  for (const ring of [region.outer, ...region.holes]) {
    let a = ring.at(-1);
    for (const b of ring) {
      if (!a) break;
      for (let row = kept(cellOf(Math.min(a.y, b.y))); row <= kept(cellOf(Math.max(a.y, b.y))); row++) {
        const y = middleMm(row);
        if (a.y > y === b.y > y) continue;
        const x = a.x + ((y - a.y) * (b.x - a.x)) / (b.y - a.y);
        const others = rows.get(row);
        if (others) others.push(x);
        else rows.set(row, [x]);
      }
      a = b;
    }
  }
  for (const crossed of rows.values()) crossed.sort((p, q) => p - q);
  return rows;
}
