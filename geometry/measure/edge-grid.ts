import { spend } from './counted-work.ts';
import type { Point, Ring } from '../shapes.ts';
import { LEAST_DIVISOR_MM } from '../units.ts';

/**
 * The edges of many rings in a grid of square cells, for casting many rays at them.
 * Each edge remembers the number its ring was given.
 */
export interface EdgeGrid {
  readonly ax: Float64Array;
  readonly ay: Float64Array;
  readonly bx: Float64Array;
  readonly by: Float64Array;
  readonly owner: Int32Array;
  readonly minX: number;
  readonly minY: number;
  readonly cell: number;
  readonly columns: number;
  readonly rows: number;
  /** Edges of cell i are list[start[i]] up to list[start[i + 1]]. */
  readonly start: Int32Array;
  readonly list: Int32Array;
  /** Last ray that looked at an edge, so that none is counted twice; scratch of the functions here. */
  readonly seen: Int32Array;
  ray: number;
}

export interface Hit {
  /** Distance along the ray, mm. */
  readonly at: number;
  readonly owner: number;
}

/** Builds the grid; rings[i] belongs to owners[i]. */
export function edgeGrid(rings: readonly Ring[], owners: readonly number[]): EdgeGrid {
  const count = rings.reduce((n, r) => n + r.length, 0);
  const [ax, ay, bx, by] = [0, 0, 0, 0].map(() => new Float64Array(count)) as [
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  const owner = new Int32Array(count);
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  let n = 0;
  rings.forEach((ring, r) => {
    let a = ring[ring.length - 1];
    if (!a) return;
    for (const b of ring) {
      ax[n] = a.x;
      ay[n] = a.y;
      bx[n] = b.x;
      by[n] = b.y;
      owner[n] = owners[r] ?? 0;
      n++;
      minX = Math.min(minX, b.x);
      maxX = Math.max(maxX, b.x);
      minY = Math.min(minY, b.y);
      maxY = Math.max(maxY, b.y);
      a = b;
    }
  });
  if (count === 0) [minX, minY, maxX, maxY] = [0, 0, 1, 1];
  const width = Math.max(maxX - minX, LEAST_DIVISOR_MM);
  const height = Math.max(maxY - minY, LEAST_DIVISOR_MM);
  const cell = Math.sqrt((width * height) / Math.max(1, count)) || Math.max(width, height);
  const columns = Math.min(2000, Math.ceil(width / cell) + 1);
  const rows = Math.min(2000, Math.ceil(height / cell) + 1);
  const size = Math.max(cell, width / (columns - 1 || 1), height / (rows - 1 || 1));
  const grid = { ax, ay, bx, by, owner, minX, minY, cell: size, columns, rows };
  const { start, list } = sortIntoCells(grid, count);
  return { ...grid, start, list, seen: new Int32Array(count), ray: 0 };
}

/**
 * All crossings of the ray from `from` along the unit direction, nearest first. A vertex on the ray counts once
 * (an edge owns its lower end only, seen across the ray), so parity tells inside from outside.
 */
export function castRay(grid: EdgeGrid, from: Point, dx: number, dy: number): Hit[] {
  const hits: Hit[] = [];
  grid.ray++;
  spend(RAY);
  walkCells(grid, from, dx, dy, hits);
  return hits.sort(byDistance);
}

/** Steps of counted work that a ray costs. */
const RAY = 10;

function byDistance(a: Hit, b: Hit): number {
  return a.at - b.at;
}

/** Adds the ray's crossings with the edges of one cell that it has not met in another. */
function crossCell(grid: EdgeGrid, cell: number, from: Point, dx: number, dy: number, hits: Hit[]): void {
  const end = grid.start[cell + 1]!;
  for (let k = grid.start[cell]!; k < end; k++) {
    const e = grid.list[k]!;
    if (grid.seen[e] === grid.ray) continue;
    grid.seen[e] = grid.ray;
    const sideA = (grid.ax[e]! - from.x) * dy - (grid.ay[e]! - from.y) * dx;
    const sideB = (grid.bx[e]! - from.x) * dy - (grid.by[e]! - from.y) * dx;
    if (sideA > 0 === sideB > 0) continue;
    const t = sideA / (sideA - sideB);
    const x = grid.ax[e]! + t * (grid.bx[e]! - grid.ax[e]!) - from.x;
    const y = grid.ay[e]! + t * (grid.by[e]! - grid.ay[e]!) - from.y;
    const at = x * dx + y * dy;
    if (at > 0) hits.push({ at, owner: grid.owner[e]! });
  }
}

type Bare = Omit<EdgeGrid, 'start' | 'list' | 'seen' | 'ray'>;

function columnOf(grid: Bare, x: number): number {
  return Math.min(grid.columns - 1, Math.max(0, Math.floor((x - grid.minX) / grid.cell)));
}

function rowOf(grid: Bare, y: number): number {
  return Math.min(grid.rows - 1, Math.max(0, Math.floor((y - grid.minY) / grid.cell)));
}

/** Edges by the cells that their boxes touch: counted first, then put one after another. */
function sortIntoCells(grid: Bare, count: number): { start: Int32Array; list: Int32Array } {
  const { ax, ay, bx, by, columns } = grid;
  const start = new Int32Array(columns * grid.rows + 1);
  const ranges = new Int32Array(4 * count);
  for (let e = 0; e < count; e++) {
    const c0 = (ranges[4 * e] = columnOf(grid, Math.min(ax[e]!, bx[e]!)));
    const c1 = (ranges[4 * e + 1] = columnOf(grid, Math.max(ax[e]!, bx[e]!)));
    const r0 = (ranges[4 * e + 2] = rowOf(grid, Math.min(ay[e]!, by[e]!)));
    const r1 = (ranges[4 * e + 3] = rowOf(grid, Math.max(ay[e]!, by[e]!)));
    for (let r = r0; r <= r1; r++) for (let c = c0; c <= c1; c++) start[r * columns + c + 1]!++;
  }
  for (let i = 0; i < start.length - 1; i++) start[i + 1]! += start[i]!;
  const list = new Int32Array(start[start.length - 1]!);
  const next = start.slice();
  for (let e = 0; e < count; e++) {
    const [c1, r1] = [ranges[4 * e + 1]!, ranges[4 * e + 3]!];
    for (let r = ranges[4 * e + 2]!; r <= r1; r++) {
      for (let c = ranges[4 * e]!; c <= c1; c++) list[next[r * columns + c]!++] = e;
    }
  }
  return { start, list };
}

/** Looks into the cells the ray passes (Amanatides and Woo 1987). */
function walkCells(grid: EdgeGrid, from: Point, dx: number, dy: number, hits: Hit[]): void {
  const maxX = grid.minX + grid.columns * grid.cell;
  const maxY = grid.minY + grid.rows * grid.cell;
  let t0 = 0;
  let t1 = Infinity;
  if (dx !== 0) {
    const [ta, tb] = [(grid.minX - from.x) / dx, (maxX - from.x) / dx];
    t0 = Math.max(t0, Math.min(ta, tb));
    t1 = Math.min(t1, Math.max(ta, tb));
  } else if (from.x < grid.minX || from.x > maxX) return;
  if (dy !== 0) {
    const [ta, tb] = [(grid.minY - from.y) / dy, (maxY - from.y) / dy];
    t0 = Math.max(t0, Math.min(ta, tb));
    t1 = Math.min(t1, Math.max(ta, tb));
  } else if (from.y < grid.minY || from.y > maxY) return;
  if (t0 > t1) return;
  let c = columnOf(grid, from.x + t0 * dx);
  let r = rowOf(grid, from.y + t0 * dy);
  const stepC = dx > 0 ? 1 : -1;
  const stepR = dy > 0 ? 1 : -1;
  const edgeX = grid.minX + (c + (dx > 0 ? 1 : 0)) * grid.cell;
  const edgeY = grid.minY + (r + (dy > 0 ? 1 : 0)) * grid.cell;
  let nextX = dx === 0 ? Infinity : (edgeX - from.x) / dx;
  let nextY = dy === 0 ? Infinity : (edgeY - from.y) / dy;
  const growX = dx === 0 ? Infinity : grid.cell / Math.abs(dx);
  const growY = dy === 0 ? Infinity : grid.cell / Math.abs(dy);
  while (c >= 0 && c < grid.columns && r >= 0 && r < grid.rows) {
    crossCell(grid, r * grid.columns + c, from, dx, dy, hits);
    if (nextX < nextY) {
      c += stepC;
      nextX += growX;
    } else {
      r += stepR;
      nextY += growY;
    }
  }
}
