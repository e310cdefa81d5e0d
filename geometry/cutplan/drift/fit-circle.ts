import type { Point } from '../../shapes.ts';
import { SETTLED_SHARE } from '../../units.ts';

export interface FittedCircle {
  readonly centre: Point;
  readonly radiusMm: number;
  /** Sum of the squared distances of the points from the circle, mm2. */
  readonly squaresMm2: number;
  /** Standard error of each coordinate of the centre, mm, as the points' scatter shows it; absent for three points. */
  readonly centreErrorMm?: number;
}

/** Steps that a fit may take; from the algebraic circle four to eight are enough for points on a hole's edge. */
const MOST_STEPS = 100;

/**
 * The circle for which the sum of squared distances to the points is least (geometric fit), by Gauss-Newton with
 * halved steps, from the algebraic fit. Undefined for fewer than three points or points on one line.
 * Gander, Golub, Strebel, "Least-squares fitting of circles and ellipses", BIT 34 (1994) 558-578, sections 2 and 3.
 */
export function fitCircle(measured: readonly Point[]): FittedCircle | undefined {
  // About their own middle: far from the origin the moments would drown in their rounding.
  const middle = {
    x: measured.reduce((sum, p) => sum + p.x, 0) / measured.length,
    y: measured.reduce((sum, p) => sum + p.y, 0) / measured.length,
  };
  const points = measured.map((p) => ({ x: p.x - middle.x, y: p.y - middle.y }));
  const start = algebraicCircle(points);
  if (!start) return undefined;
  let at = { x: start.centre.x, y: start.centre.y, r: start.radiusMm };
  let squares = squaresOf(points, at);
  for (let step = 0; step < MOST_STEPS; step++) {
    const way = newtonStep(points, at);
    if (!way) return undefined;
    let share = 1;
    let next = added(at, way, share);
    // Too long a step is shortened, so that the sum never grows.
    while (squaresOf(points, next) > squares && share > SETTLED_SHARE) next = added(at, way, (share /= 2));
    const moved = share * Math.hypot(way.x, way.y, way.r);
    if (squaresOf(points, next) > squares) break;
    at = next;
    squares = squaresOf(points, at);
    if (moved <= SETTLED_SHARE * Math.abs(at.r)) break;
  }
  if (!Number.isFinite(at.r)) return undefined;
  const error = centreError(points, at, squares);
  return {
    centre: { x: at.x + middle.x, y: at.y + middle.y },
    radiusMm: at.r,
    squaresMm2: squares,
    ...(error !== undefined && { centreErrorMm: error }),
  };
}

interface At {
  readonly x: number;
  readonly y: number;
  readonly r: number;
}

function added(at: At, way: At, share: number): At {
  return { x: at.x + share * way.x, y: at.y + share * way.y, r: at.r + share * way.r };
}

function squaresOf(points: readonly Point[], at: At): number {
  return points.reduce((sum, p) => sum + (Math.hypot(p.x - at.x, p.y - at.y) - at.r) ** 2, 0);
}

/** Normal equations of the distances d_i - r; the derivatives are -cos, -sin of the way to the point, and -1. */
function newtonStep(points: readonly Point[], at: At): At | undefined {
  const n = normalsOf(points, at);
  const rhs = [0, 0, 0];
  for (const p of points) {
    const far = Math.hypot(p.x - at.x, p.y - at.y);
    if (far === 0) continue;
    const off = far - at.r;
    rhs[0]! += (off * (p.x - at.x)) / far;
    rhs[1]! += (off * (p.y - at.y)) / far;
    rhs[2]! += off;
  }
  const solved = solve(n, rhs);
  return solved && { x: solved[0]!, y: solved[1]!, r: solved[2]! };
}

function normalsOf(points: readonly Point[], at: At): number[][] {
  const n = [
    [0, 0, 0],
    [0, 0, 0],
    [0, 0, 0],
  ];
  for (const p of points) {
    const far = Math.hypot(p.x - at.x, p.y - at.y);
    if (far === 0) continue;
    const row = [(p.x - at.x) / far, (p.y - at.y) / far, 1];
    for (let i = 0; i < 3; i++) for (let k = 0; k < 3; k++) n[i]![k]! += row[i]! * row[k]!;
  }
  return n;
}

/** From the inverse of the normal equations; the worse of the two coordinates. */
function centreError(points: readonly Point[], at: At, squares: number): number | undefined {
  const free = points.length - 3;
  if (free <= 0) return undefined;
  const n = normalsOf(points, at);
  const alongX = solve(n, [1, 0, 0])?.[0];
  const alongY = solve(n, [0, 1, 0])?.[1];
  if (alongX === undefined || alongY === undefined) return undefined;
  return Math.sqrt((squares / free) * Math.max(alongX, alongY));
}

/**
 * Algebraic fit: a (x2 + y2) + b1 x + b2 y + c = 0 with a^2 + b1^2 + b2^2 + c^2 = 1 and the least sum of squares: the
 * eigenvector of the least eigenvalue of the 4 by 4 matrix of moments (the paper's section 2). Only a beginning: it
 * errs where points lie on a short arc.
 */
export function algebraicCircle(points: readonly Point[]): Omit<FittedCircle, 'squaresMm2'> | undefined {
  if (points.length < 3) return undefined;
  const m = Array.from({ length: 4 }, () => [0, 0, 0, 0]);
  for (const p of points) {
    const row = [p.x * p.x + p.y * p.y, p.x, p.y, 1];
    for (let i = 0; i < 4; i++) for (let k = 0; k < 4; k++) m[i]![k]! += row[i]! * row[k]!;
  }
  const [a = 0, b1 = 0, b2 = 0, c = 0] = leastEigenvector(m);
  const within = (b1 * b1 + b2 * b2) / (4 * a * a) - c / a;
  if (!Number.isFinite(within) || within <= 0) return undefined;
  return { centre: { x: -b1 / (2 * a), y: -b2 / (2 * a) }, radiusMm: Math.sqrt(within) };
}

/** Of a symmetric matrix, by Jacobi's rotations (Golub and Van Loan, Matrix Computations, section 8.5). */
function leastEigenvector(symmetric: readonly (readonly number[])[]): number[] {
  const size = symmetric.length;
  const a = symmetric.map((row) => [...row]);
  const v = symmetric.map((_, i) => symmetric.map((__, k) => (i === k ? 1 : 0)));
  for (let sweep = 0; sweep < MOST_STEPS; sweep++) {
    let off = 0;
    for (let p = 0; p < size; p++) {
      for (let q = p + 1; q < size; q++) {
        off += Math.abs(a[p]![q]!);
        if (a[p]![q] === 0) continue;
        const theta = (a[q]![q]! - a[p]![p]!) / (2 * a[p]![q]!);
        const t = (theta < 0 ? -1 : 1) / (Math.abs(theta) + Math.sqrt(theta * theta + 1));
        const c = 1 / Math.sqrt(t * t + 1);
        const s = t * c;
        for (let i = 0; i < size; i++) turn(a[i]!, p, q, c, s);
        const [ap, aq] = [a[p]!, a[q]!];
        for (let i = 0; i < size; i++) {
          const [x, y] = [ap[i]!, aq[i]!];
          ap[i] = c * x - s * y;
          aq[i] = s * x + c * y;
        }
        for (let i = 0; i < size; i++) turn(v[i]!, p, q, c, s);
      }
    }
    if (off === 0) break;
  }
  let least = 0;
  for (let i = 1; i < size; i++) if (a[i]![i]! < a[least]![least]!) least = i;
  return v.map((row) => row[least]!);
}

function turn(row: number[], p: number, q: number, c: number, s: number): void {
  const [x, y] = [row[p]!, row[q]!];
  row[p] = c * x - s * y;
  row[q] = s * x + c * y;
}

/** Three equations by Gaussian elimination with row exchange; undefined when they do not decide. */
function solve(matrix: readonly (readonly number[])[], rhs: readonly number[]): number[] | undefined {
  const rows = matrix.map((row, i) => [...row, rhs[i]!]);
  for (let k = 0; k < 3; k++) {
    let pivot = k;
    for (let i = k + 1; i < 3; i++) if (Math.abs(rows[i]![k]!) > Math.abs(rows[pivot]![k]!)) pivot = i;
    [rows[k], rows[pivot]] = [rows[pivot]!, rows[k]!];
    const by = rows[k]![k]!;
    if (!(Math.abs(by) > SETTLED_SHARE)) return undefined;
    for (let i = 0; i < 3; i++) {
      if (i === k) continue;
      const share = rows[i]![k]! / by;
      for (let j = k; j < 4; j++) rows[i]![j]! -= share * rows[k]![j]!;
    }
  }
  return rows.map((row, k) => row[3]! / row[k]!);
}
