import { apart, isRound, liesIn, type Disc, type Container } from './container.ts';

/** Discs in a container, found by where they are: cells as wide as the widest disc. */
export interface DiscGrid {
  readonly container: Container;
  readonly discs: Disc[];
  readonly cellMm: number;
  readonly cells: Map<number, Disc[]>;
  widest: number;
}

export function createDiscGrid(container: Container, discs: readonly Disc[]): DiscGrid {
  const grid: DiscGrid = { container, discs: [], cellMm: 200, cells: new Map(), widest: 0 };
  for (const disc of discs) addDisc(grid, disc);
  return grid;
}

export function addDisc(grid: DiscGrid, disc: Disc): void {
  grid.discs.push(disc);
  grid.widest = Math.max(grid.widest, disc.r);
  const key = cellKey(Math.floor(disc.x / grid.cellMm), Math.floor(disc.y / grid.cellMm));
  const cell = grid.cells.get(key);
  if (cell) cell.push(disc);
  else grid.cells.set(key, [disc]);
}

/** Those whose rim may be nearer to (x, y) than `reach`. */
export function findNear(grid: DiscGrid, x: number, y: number, reach: number): Disc[] {
  const far = reach + grid.widest;
  const found: Disc[] = [];
  for (let cx = Math.floor((x - far) / grid.cellMm); cx <= Math.floor((x + far) / grid.cellMm); cx++) {
    for (let cy = Math.floor((y - far) / grid.cellMm); cy <= Math.floor((y + far) / grid.cellMm); cy++) {
      for (const disc of grid.cells.get(cellKey(cx, cy)) ?? []) {
        const reachHere = reach + disc.r;
        const [dx, dy] = [disc.x - x, disc.y - y];
        if (dx * dx + dy * dy < reachHere * reachHere) found.push(disc);
      }
    }
  }
  return found;
}

/** Has the disc its place to itself? */
export function isFree(grid: DiscGrid, disc: Disc): boolean {
  return liesIn(disc, grid.container) && findNear(grid, disc.x, disc.y, disc.r).every((other) => apart(disc, other));
}

/** Centres at which a disc of radius r touches two of: the discs given, the walls. Not all of them are free. */
export function findTouching(
  container: Container,
  r: number,
  a: Disc,
  others: readonly Disc[],
): { x: number; y: number }[] {
  const found: { x: number; y: number }[] = [];
  for (const b of others) found.push(...crossCircles(a.x, a.y, a.r + r, b.x, b.y, b.r + r));
  if (isRound(container))
    found.push(...crossCircles(a.x, a.y, a.r + r, container.x, container.y, container.radius - r));
  else {
    const reach = a.r + r;
    for (const x of [container.minX + r, container.maxX - r]) {
      const up = reach ** 2 - (x - a.x) ** 2;
      if (up >= 0) found.push({ x, y: a.y + Math.sqrt(up) }, { x, y: a.y - Math.sqrt(up) });
    }
    for (const y of [container.minY + r, container.maxY - r]) {
      const along = reach ** 2 - (y - a.y) ** 2;
      if (along >= 0) found.push({ x: a.x + Math.sqrt(along), y }, { x: a.x - Math.sqrt(along), y });
    }
  }
  return found;
}

/** Where a disc of radius r rests against the walls alone. */
export function findCorners(container: Container, r: number): { x: number; y: number }[] {
  if (isRound(container)) {
    const out = container.radius - r;
    return [
      { x: container.x - out, y: container.y },
      { x: container.x, y: container.y - out },
    ];
  }
  return [container.minX + r, container.maxX - r].flatMap((x) =>
    [container.minY + r, container.maxY - r].map((y) => ({ x, y })),
  );
}

function crossCircles(
  ax: number,
  ay: number,
  ar: number,
  bx: number,
  by: number,
  br: number,
): { x: number; y: number }[] {
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
