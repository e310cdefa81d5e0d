import type { Opening } from '../../../geometry/bridges/types.ts';
import { regionHolds, ringBox } from '../../../geometry/measure/ring.ts';
import type { Point } from '../../../geometry/shapes.ts';

/** Says whether a disc about a point covers no opening, to the nearest cell: good enough to keep pins off letters. */
export type IsBare = (at: Point, reachMm: number) => boolean;

const CELLS = 128;

/** Looks once where the openings are, cell by cell, so that asking costs next to nothing. Pure; plate millimetres. */
export function bareMetal(openings: readonly Opening[], radiusMm: number): IsBare {
  const cellMm = (2 * radiusMm) / CELLS;
  const open = new Uint8Array(CELLS * CELLS);
  const cellOf = (mm: number) => Math.floor((mm + radiusMm) / cellMm);
  const kept = (cell: number) => Math.max(0, Math.min(CELLS - 1, cell));
  for (const { region } of openings) {
    const box = ringBox(region.outer);
    for (let row = kept(cellOf(box.minY)); row <= kept(cellOf(box.maxY)); row++) {
      for (let col = kept(cellOf(box.minX)); col <= kept(cellOf(box.maxX)); col++) {
        if (open[row * CELLS + col] === 1) continue;
        const middle = { x: (col + 0.5) * cellMm - radiusMm, y: (row + 0.5) * cellMm - radiusMm };
        if (regionHolds(region, middle)) open[row * CELLS + col] = 1;
      }
    }
  }
  return (at, wantedMm) => {
    // Less than a cell could slip between the middles of cells.
    const reachMm = Math.max(wantedMm, cellMm * 0.75);
    for (let row = kept(cellOf(at.y - reachMm)); row <= kept(cellOf(at.y + reachMm)); row++) {
      for (let col = kept(cellOf(at.x - reachMm)); col <= kept(cellOf(at.x + reachMm)); col++) {
        if (open[row * CELLS + col] !== 1) continue;
        const dx = (col + 0.5) * cellMm - radiusMm - at.x;
        const dy = (row + 0.5) * cellMm - radiusMm - at.y;
        if (dx * dx + dy * dy <= reachMm * reachMm) return false;
      }
    }
    return true;
  };
}
