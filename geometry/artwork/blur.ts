import type { Grey } from './grey.ts';

/**
 * A picture's values after a Gaussian blur of the given standard deviation in pixels; what lies outside is as its edge.
 * The kernel reaches three standard deviations.
 */
export function blurred({ width, height, values }: Grey, sigma: number): number[] {
  const reach = Math.ceil(3 * sigma);
  const kernel = Array.from({ length: 2 * reach + 1 }, (_, i) => Math.exp(-((i - reach) ** 2) / (2 * sigma * sigma)));
  const whole = kernel.reduce((sum, k) => sum + k, 0);
  const weights = kernel.map((k) => k / whole);
  const across = pass(values, width, height, weights, 1, width);
  return Array.from(pass(across, height, width, weights, width, 1));
}

/** One direction: `count` values each `step` apart, in `lines` lines each `line` apart. */
function pass(
  from: ArrayLike<number>,
  count: number,
  lines: number,
  weights: readonly number[],
  step: number,
  line: number,
): Float64Array {
  const out = new Float64Array(from.length);
  const reach = weights.length >> 1;
  for (let l = 0; l < lines; l++) {
    for (let i = 0; i < count; i++) {
      let sum = 0;
      for (let k = -reach; k <= reach; k++) {
        const at = Math.min(count - 1, Math.max(0, i + k));
        sum += weights[k + reach]! * from[l * line + at * step]!;
      }
      out[l * line + i * step] = sum;
    }
  }
  return out;
}
