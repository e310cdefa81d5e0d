import { apart, isRound, liesIn, type Disc, type Room } from './room.ts';

/** Discs in a room, found by where they are: cells as wide as the widest disc. */
export interface Crowd {
  readonly room: Room;
  readonly discs: Disc[];
  readonly cellMm: number;
  readonly cells: Map<number, Disc[]>;
  widest: number;
}

export function crowdOf(room: Room, discs: readonly Disc[]): Crowd {
  const crowd: Crowd = { room, discs: [], cellMm: 200, cells: new Map(), widest: 0 };
  for (const disc of discs) join(crowd, disc);
  return crowd;
}

export function join(crowd: Crowd, disc: Disc): void {
  crowd.discs.push(disc);
  crowd.widest = Math.max(crowd.widest, disc.r);
  const key = cellKey(Math.floor(disc.x / crowd.cellMm), Math.floor(disc.y / crowd.cellMm));
  const cell = crowd.cells.get(key);
  if (cell) cell.push(disc);
  else crowd.cells.set(key, [disc]);
}

/** Those whose rim may be nearer to (x, y) than `reach`. */
export function near(crowd: Crowd, x: number, y: number, reach: number): Disc[] {
  const far = reach + crowd.widest;
  const found: Disc[] = [];
  for (let cx = Math.floor((x - far) / crowd.cellMm); cx <= Math.floor((x + far) / crowd.cellMm); cx++) {
    for (let cy = Math.floor((y - far) / crowd.cellMm); cy <= Math.floor((y + far) / crowd.cellMm); cy++) {
      for (const disc of crowd.cells.get(cellKey(cx, cy)) ?? []) {
        const reachHere = reach + disc.r;
        const [dx, dy] = [disc.x - x, disc.y - y];
        if (dx * dx + dy * dy < reachHere * reachHere) found.push(disc);
      }
    }
  }
  return found;
}

/** Has the disc its place to itself? */
export function isFree(crowd: Crowd, disc: Disc): boolean {
  return liesIn(disc, crowd.room) && near(crowd, disc.x, disc.y, disc.r).every((other) => apart(disc, other));
}

/** Centres at which a disc of radius r touches two of: the discs given, the walls. Not all of them are free. */
export function touching(room: Room, r: number, a: Disc, others: readonly Disc[]): { x: number; y: number }[] {
  const found: { x: number; y: number }[] = [];
  for (const b of others) found.push(...meet(a.x, a.y, a.r + r, b.x, b.y, b.r + r));
  if (isRound(room)) found.push(...meet(a.x, a.y, a.r + r, room.x, room.y, room.radius - r));
  else {
    const reach = a.r + r;
    for (const x of [room.minX + r, room.maxX - r]) {
      const up = reach ** 2 - (x - a.x) ** 2;
      if (up >= 0) found.push({ x, y: a.y + Math.sqrt(up) }, { x, y: a.y - Math.sqrt(up) });
    }
    for (const y of [room.minY + r, room.maxY - r]) {
      const along = reach ** 2 - (y - a.y) ** 2;
      if (along >= 0) found.push({ x: a.x + Math.sqrt(along), y }, { x: a.x - Math.sqrt(along), y });
    }
  }
  return found;
}

/** Where a disc of radius r rests against the walls alone. */
export function corners(room: Room, r: number): { x: number; y: number }[] {
  if (isRound(room)) {
    const out = room.radius - r;
    return [
      { x: room.x - out, y: room.y },
      { x: room.x, y: room.y - out },
    ];
  }
  return [room.minX + r, room.maxX - r].flatMap((x) => [room.minY + r, room.maxY - r].map((y) => ({ x, y })));
}

/** Where two circles cross. */
function meet(ax: number, ay: number, ar: number, bx: number, by: number, br: number): { x: number; y: number }[] {
  const [dx, dy] = [bx - ax, by - ay];
  const d = Math.hypot(dx, dy);
  if (d === 0 || d > ar + br || d < Math.abs(ar - br)) return [];
  const along = (d * d + ar * ar - br * br) / (2 * d);
  const side = Math.sqrt(Math.max(0, ar * ar - along * along));
  const [ux, uy] = [dx / d, dy / d];
  return [
    { x: ax + ux * along - uy * side, y: ay + uy * along + ux * side },
    { x: ax + ux * along + uy * side, y: ay + uy * along - ux * side },
  ];
}

function cellKey(cx: number, cy: number): number {
  return cx * 65536 + cy;
}
