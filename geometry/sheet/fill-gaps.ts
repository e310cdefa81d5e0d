import { GRID_MM } from '../units.ts';
import { findCorners, isFree, addDisc, findNear, findTouching, type DiscGrid } from './disc-grid.ts';
import { apart, type Disc } from './container.ts';

/** Which way a heap grows: the place with the least of it is taken first. */
export type Grain = 'x' | 'y' | 'snug';

/**
 * Puts up to `most` equal discs of radius r into the grid, each where it touches two neighbours or walls: farthest to
 * the left ('x'), lowest ('y'), or where it lies snuggest. The grid is changed; what was put is given back.
 */
export function fillGaps(grid: DiscGrid, r: number, most: number, grain: Grain): readonly Disc[] {
  const { container } = grid;
  const put: Disc[] = [];
  let places = findCorners(container, r).map((at) => rankPlace(grid, { ...at, r }, grain));
  const order = new Map(grid.discs.map((disc, i) => [disc, i]));
  for (const [i, disc] of grid.discs.entries()) {
    const others = findNear(grid, disc.x, disc.y, disc.r + 2 * r).filter((other) => (order.get(other) ?? 0) > i);
    for (const at of findTouching(container, r, disc, others)) places.push(rankPlace(grid, { ...at, r }, grain));
  }
  places = places.filter(({ disc }) => isFree(grid, disc));
  while (put.length < most && places.length > 0) {
    let first = places[0]!;
    for (const place of places) if (isBefore(place, first)) first = place;
    const { disc } = first;
    addDisc(grid, disc);
    put.push(disc);
    places = places.filter((place) => apart(place.disc, disc));
    const others = findNear(grid, disc.x, disc.y, 3 * r).filter((other) => other !== disc);
    for (const at of findTouching(container, r, disc, others)) {
      const next = { ...at, r };
      if (isFree(grid, next)) places.push(rankPlace(grid, next, grain));
    }
  }
  return put;
}

interface Place {
  readonly disc: Disc;
  readonly rank: number;
  readonly second: number;
}

function rankPlace(grid: DiscGrid, disc: Disc, grain: Grain): Place {
  if (grain === 'x') return { disc, rank: disc.x, second: disc.y };
  if (grain === 'y') return { disc, rank: disc.y, second: disc.x };
  return { disc, rank: looseness(grid, disc), second: disc.x + disc.y };
}

/** Distance to the third nearest neighbour or wall, the two that it touches being the first. */
function looseness(grid: DiscGrid, { x, y, r }: Disc): number {
  const { container } = grid;
  const gaps = findNear(grid, x, y, 2 * r).map((other) => Math.hypot(other.x - x, other.y - y) - other.r - r);
  if ('radius' in container) gaps.push(container.radius - Math.hypot(x - container.x, y - container.y) - r);
  else gaps.push(x - r - container.minX, container.maxX - x - r, y - r - container.minY, container.maxY - y - r);
  return gaps.sort((a, b) => a - b)[2] ?? Infinity;
}

/** Places that differ by rounding alone are taken in the order of the other measure. */
function isBefore(a: Place, b: Place): boolean {
  return a.rank < b.rank - GRID_MM || (a.rank < b.rank + GRID_MM && a.second < b.second - GRID_MM);
}
