import { NO_SLOPE, STALLED_SHARE } from '../units.ts';
import { isRound, type Disc, type Container } from './container.ts';

/**
 * Discs that overlap push each other and the walls away until they rest: the sum of squared overlaps made as small as it
 * gets nearby, by the limited-memory method of Broyden, Fletcher, Goldfarb and Shanno (Nocedal and Wright, Numerical
 * Optimization, algorithm 7.4).
 */
export interface Crush {
  /** Radius of each disc at scale 1. */
  readonly radii: readonly number[];
  readonly container: Container;
  /** Discs that do not move; their radius stays whatever the scale. */
  readonly fixed: readonly Disc[];
  /** All moving radii are multiplied by it. */
  readonly scale: number;
}

export interface Rest {
  /** x0, y0, x1, y1 .. */
  readonly at: Float64Array;
  /** Sum of squared overlaps, mm². */
  readonly energy: number;
  /** How the energy grows with the scale. */
  readonly perScale: number;
  /** Squared overlaps of each disc: who is squeezed most. */
  readonly pain: Float64Array;
}

const MEMORY = 8;
/** Of what the slope promises, a step must gain this share (Nocedal and Wright, section 3.1: 0.0001). */
const ENOUGH = 0.0001;

/** Relaxes from `start` in at most `steps` steps; stops sooner when the energy is under `still` (mm²). */
export function relax(crush: Crush, start: Float64Array, steps: number, still: number): Rest {
  const size = start.length;
  let at: Float64Array = start.slice();
  let slope: Float64Array = new Float64Array(size);
  const pain = new Float64Array(size / 2);
  let { energy, perScale } = press(crush, at, slope, pain);
  const past: { s: Float64Array; y: Float64Array; rho: number }[] = [];
  for (let step = 0; step < steps && energy > still; step++) {
    const way = direction(slope, past);
    let drop = dot(way, slope);
    if (drop >= 0) {
      past.length = 0;
      for (let i = 0; i < size; i++) way[i] = -(slope[i] ?? 0);
      drop = -dot(slope, slope);
    }
    if (drop > -NO_SLOPE) break;
    // the first step has no memory to scale it: half the slope settles one pair of squared overlaps
    let reach = past.length === 0 ? 0.25 : 1;
    let found: { energy: number; perScale: number } | undefined;
    const there = new Float64Array(size);
    const slopeThere = new Float64Array(size);
    for (let trial = 0; trial < 20 && !found; trial++) {
      for (let i = 0; i < size; i++) there[i] = (at[i] ?? 0) + reach * (way[i] ?? 0);
      const result = press(crush, there, slopeThere, pain);
      if (result.energy <= energy + ENOUGH * reach * drop) found = result;
      else reach *= 0.4;
    }
    if (!found) break;
    remember(past, at, there, slope, slopeThere);
    const gained = energy - found.energy;
    [at, slope] = [there, slopeThere];
    ({ energy, perScale } = found);
    if (gained < STALLED_SHARE * energy) break;
  }
  ({ energy, perScale } = press(crush, at, slope, pain));
  return { at, energy, perScale, pain };
}

function remember(
  past: { s: Float64Array; y: Float64Array; rho: number }[],
  at: Float64Array,
  there: Float64Array,
  slope: Float64Array,
  slopeThere: Float64Array,
): void {
  const s = there.map((v, i) => v - (at[i] ?? 0));
  const y = slopeThere.map((v, i) => v - (slope[i] ?? 0));
  const sy = dot(s, y);
  if (sy <= STALLED_SHARE * dot(y, y)) return;
  past.push({ s, y, rho: 1 / sy });
  if (past.length > MEMORY) past.shift();
}

/** Against the slope, bent by what earlier steps have told of the curvature. */
function direction(slope: Float64Array, past: readonly { s: Float64Array; y: Float64Array; rho: number }[]) {
  const q = slope.slice();
  const alphas: number[] = [];
  for (let k = past.length - 1; k >= 0; k--) {
    const { s, y, rho } = past[k]!;
    const alpha = rho * dot(s, q);
    alphas.push(alpha);
    for (let i = 0; i < q.length; i++) q[i]! -= alpha * y[i]!;
  }
  const last = past.at(-1);
  if (last) {
    const gamma = 1 / (last.rho * dot(last.y, last.y));
    for (let i = 0; i < q.length; i++) q[i]! *= gamma;
  }
  for (const { s, y, rho } of past) {
    const alpha = alphas.pop()!;
    const beta = rho * dot(y, q);
    for (let i = 0; i < q.length; i++) q[i]! += (alpha - beta) * s[i]!;
  }
  for (let i = 0; i < q.length; i++) q[i] = -q[i]!;
  return q;
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!;
  return sum;
}

/** Energy of a state; its slope and each disc's share are written into the arrays given. */
function press(crush: Crush, at: Float64Array, slope: Float64Array, pain: Float64Array) {
  const { radii, container, fixed, scale } = crush;
  const count = radii.length;
  let [energy, perScale] = [0, 0];
  slope.fill(0);
  pain.fill(0);
  for (let i = 0; i < count; i++) {
    const [x, y, ri] = [at[2 * i]!, at[2 * i + 1]!, radii[i]!];
    const r = scale * ri;
    const push = (depth: number, nx: number, ny: number): void => {
      energy += depth * depth;
      perScale += 2 * depth * ri;
      pain[i]! += depth * depth;
      slope[2 * i]! -= 2 * depth * nx;
      slope[2 * i + 1]! -= 2 * depth * ny;
    };
    if (isRound(container)) {
      const [dx, dy] = [x - container.x, y - container.y];
      const d = Math.sqrt(dx * dx + dy * dy);
      if (d + r > container.radius) push(d + r - container.radius, d > 0 ? -dx / d : 0, d > 0 ? -dy / d : 0);
    } else {
      if (x - r < container.minX) push(container.minX - x + r, 1, 0);
      if (x + r > container.maxX) push(x + r - container.maxX, -1, 0);
      if (y - r < container.minY) push(container.minY - y + r, 0, 1);
      if (y + r > container.maxY) push(y + r - container.maxY, 0, -1);
    }
    for (const other of fixed) {
      const [dx, dy, reach] = [x - other.x, y - other.y, r + other.r];
      const dd = dx * dx + dy * dy;
      if (dd >= reach * reach) continue;
      const d = Math.sqrt(dd);
      push(reach - d, d > 0 ? dx / d : 1, d > 0 ? dy / d : 0);
    }
    for (let j = i + 1; j < count; j++) {
      const rj = radii[j]!;
      const [dx, dy, reach] = [x - at[2 * j]!, y - at[2 * j + 1]!, r + scale * rj];
      if (dx > reach || -dx > reach) continue;
      const dd = dx * dx + dy * dy;
      if (dd >= reach * reach) continue;
      const d = Math.sqrt(dd);
      const depth = reach - d;
      const [nx, ny] = d > 0 ? [dx / d, dy / d] : [1, 0];
      push(depth, nx, ny);
      perScale += 2 * depth * rj;
      pain[j]! += depth * depth;
      slope[2 * j]! += 2 * depth * nx;
      slope[2 * j + 1]! += 2 * depth * ny;
    }
  }
  return { energy, perScale };
}
