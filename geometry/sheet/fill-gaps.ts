import { GRID_MM } from '../units.ts';
import { corners, isFree, join, near, touching, type Crowd } from './crowd.ts';
import { apart, type Disc } from './room.ts';

/** Which way a heap grows: the place with the least of it is taken first. */
export type Grain = 'x' | 'y' | 'snug';

/**
 * Puts up to `most` equal discs of radius r into the crowd, each where it touches two neighbours or walls: farthest to
 * the left ('x'), lowest ('y'), or where it lies snuggest. The crowd is changed; what was put is given back.
 */
export function fillGaps(crowd: Crowd, r: number, most: number, grain: Grain): readonly Disc[] {
  const { room } = crowd;
  const put: Disc[] = [];
  let places = corners(room, r).map((at) => ranked(crowd, { ...at, r }, grain));
  const order = new Map(crowd.discs.map((disc, i) => [disc, i]));
  for (const [i, disc] of crowd.discs.entries()) {
    const others = near(crowd, disc.x, disc.y, disc.r + 2 * r).filter((other) => (order.get(other) ?? 0) > i);
    for (const at of touching(room, r, disc, others)) places.push(ranked(crowd, { ...at, r }, grain));
  }
  places = places.filter(({ disc }) => isFree(crowd, disc));
  while (put.length < most && places.length > 0) {
    let first = places[0]!;
    for (const place of places) if (isBefore(place, first)) first = place;
    const { disc } = first;
    join(crowd, disc);
    put.push(disc);
    places = places.filter((place) => apart(place.disc, disc));
    const others = near(crowd, disc.x, disc.y, 3 * r).filter((other) => other !== disc);
    for (const at of touching(room, r, disc, others)) {
      const next = { ...at, r };
      if (isFree(crowd, next)) places.push(ranked(crowd, next, grain));
    }
  }
  return put;
}

interface Place {
  readonly disc: Disc;
  readonly rank: number;
  readonly second: number;
}

function ranked(crowd: Crowd, disc: Disc, grain: Grain): Place {
  if (grain === 'x') return { disc, rank: disc.x, second: disc.y };
  if (grain === 'y') return { disc, rank: disc.y, second: disc.x };
  return { disc, rank: looseness(crowd, disc), second: disc.x + disc.y };
}

/** Distance to the third nearest neighbour or wall, the two that it touches being the first. */
function looseness(crowd: Crowd, { x, y, r }: Disc): number {
  const { room } = crowd;
  const gaps = near(crowd, x, y, 2 * r).map((other) => Math.hypot(other.x - x, other.y - y) - other.r - r);
  if ('radius' in room) gaps.push(room.radius - Math.hypot(x - room.x, y - room.y) - r);
  else gaps.push(x - r - room.minX, room.maxX - x - r, y - r - room.minY, room.maxY - y - r);
  return gaps.sort((a, b) => a - b)[2] ?? Infinity;
}

/** Places that differ by rounding alone are taken in the order of the other measure. */
function isBefore(a: Place, b: Place): boolean {
  return a.rank < b.rank - GRID_MM || (a.rank < b.rank + GRID_MM && a.second < b.second - GRID_MM);
}
