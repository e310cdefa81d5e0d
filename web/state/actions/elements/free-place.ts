import type { Extent } from '../../../../geometry/layout/placed.ts';
import { uprightBox } from './reach.ts';

/** Where a drawing goes: its middle and its height, in shares of the plate's radius, y up. */
export interface FreePlace {
  readonly x: number;
  readonly y: number;
  readonly size: number;
}

/** Cells from the middle to the rim. */
const CELLS = 60;
/** What stays free at the rim and around whatever lies there, in shares of the radius. */
const RIM = 0.06;
const MARGIN = 0.015;
/** A place that lets a drawing be no larger than this part of what it should be is none. */
const LEAST_PART = 0.25;
const STEP = 0.85;

/**
 * The middle of a free place for a drawing that should be `size` high and `width` times as wide: as large as it
 * should be where that goes, else as large as there is room for, and as near to the middle as can be. Where there is no
 * room at all it lies in the middle, on what is there. extents: of the plate looked at, mm; radiusMm: its radius.
 */
export function freePlace(extents: readonly Extent[], radiusMm: number, size: number, width: number): FreePlace {
  const taken = takenCells(extents, radiusMm);
  for (let part = 1; part >= LEAST_PART; part *= STEP) {
    const high = size * part;
    const halfX = Math.ceil(((high * width) / 2) * CELLS);
    const halfY = Math.ceil((high / 2) * CELLS);
    const at = NEAREST_FIRST.find(({ i, j }) => taken(i - halfX, i + halfX, j - halfY, j + halfY) === 0);
    if (at !== undefined) return { x: at.i / CELLS, y: at.j / CELLS, size: high };
  }
  return { x: 0, y: 0, size };
}

/** Cells by how far they lie from the middle; what lies on the upright through it comes before what lies beside. */
const NEAREST_FIRST = Array.from({ length: (2 * CELLS + 1) ** 2 }, (_, n) => ({
  i: (n % (2 * CELLS + 1)) - CELLS,
  j: Math.floor(n / (2 * CELLS + 1)) - CELLS,
})).sort((a, b) => 2 * Math.abs(a.i) + Math.abs(a.j) - (2 * Math.abs(b.i) + Math.abs(b.j)));

/** How many cells of a rectangle are taken, by sums over all cells left of and below each. */
function takenCells(extents: readonly Extent[], radiusMm: number) {
  const side = 2 * CELLS + 1;
  const sums = new Int32Array((side + 1) ** 2);
  const boxes = extents.flatMap((e) => (e.kind === 'box' ? [uprightBox(e)] : []));
  const sectors = extents.filter((e) => e.kind === 'sector');
  const margin = MARGIN * radiusMm;
  const isTaken = (i: number, j: number): boolean => {
    const [x, y] = [(i / CELLS) * radiusMm, (j / CELLS) * radiusMm];
    const away = Math.hypot(x, y);
    if (away > (1 - RIM) * radiusMm) return true;
    const inBox = boxes.some(
      (b) => x > b.minX - margin && x < b.maxX + margin && y > b.minY - margin && y < b.maxY + margin,
    );
    if (inBox) return true;
    const deg = (Math.atan2(x, y) * 180) / Math.PI;
    const slack = (Math.asin(Math.min(1, margin / Math.max(away, margin))) * 180) / Math.PI;
    return sectors.some((s) => {
      if (away < s.innerMm - margin || away > s.outerMm + margin) return false;
      const [from, to] = [Math.min(s.startDeg, s.endDeg) - slack, Math.max(s.startDeg, s.endDeg) + slack];
      return to - from >= 360 || (((deg - from) % 360) + 360) % 360 <= to - from;
    });
  };
  for (let j = 0; j < side; j++) {
    for (let i = 0; i < side; i++) {
      const below = sums[j * (side + 1) + i + 1]! - sums[j * (side + 1) + i]!;
      sums[(j + 1) * (side + 1) + i + 1] =
        below + sums[(j + 1) * (side + 1) + i]! + (isTaken(i - CELLS, j - CELLS) ? 1 : 0);
    }
  }
  const at = (i: number, j: number): number => sums[j * (side + 1) + i]!;
  return (fromI: number, toI: number, fromJ: number, toJ: number): number => {
    const [left, right, low, high] = [fromI + CELLS, toI + CELLS + 1, fromJ + CELLS, toJ + CELLS + 1];
    if (left < 0 || low < 0 || right > side || high > side) return Infinity;
    return at(right, high) - at(left, high) - at(right, low) + at(left, low);
  };
}
