/** Middle of several timings of one thing, in milliseconds. */
export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = Math.floor(sorted.length / 2);
  const upper = sorted[middle] ?? NaN;
  return sorted.length % 2 === 1 ? upper : (upper + (sorted[middle - 1] ?? NaN)) / 2;
}

/**
 * Times several things in turns (a, b, c, a, b, c, ...), so that a busy moment of the machine hits all alike, and
 * gives the median of each in milliseconds. The first round only warms up. What is taken is the processor's time in all
 * threads of this process, its collector's and compiler's with it: what other programs do meanwhile does not count.
 */
export async function timeInTurns(rounds: number, works: readonly (() => unknown)[]): Promise<number[]> {
  const times: number[][] = works.map(() => []);
  for (let round = 0; round <= rounds; round++) {
    for (const [i, work] of works.entries()) {
      const start = process.cpuUsage();
      await work();
      const { user, system } = process.cpuUsage(start);
      if (round > 0) times[i]?.push((user + system) / 1000);
    }
  }
  return times.map(median);
}
