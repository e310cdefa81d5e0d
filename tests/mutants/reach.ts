import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Host } from './ask-host.ts';
import type { Mutant } from './changes.ts';
import { hashOf, ROOT, testFiles } from './sources.ts';

/** What one test file costs and reaches; made once and again only where a file of it changed. */
interface Reached {
  readonly hash: string;
  /** ms of the processor; undefined for a test that failed by itself or cost more than any may. */
  readonly costMs?: number;
  /** Of each file the functions that ran, and the hash of the file then. */
  readonly files: Readonly<Record<string, { readonly hash: string; readonly places: readonly number[] }>>;
}

export const CACHE = join(ROOT, '.cache/mutants');
const MAP = join(CACHE, 'reach.json');

/** Tests that cost more than this, in ms of the processor, are left to `npm test`. */
const DEAREST_MS = 20_000;

/** A test may cost so many times what it costs by itself, and some more, before it counts as one that does not end. */
const TIMES = 4;
const AT_LEAST_MS = 15_000;

export class Reach {
  readonly #map: Record<string, Reached> = existsSync(MAP)
    ? (JSON.parse(readFileSync(MAP, 'utf8')) as Record<string, Reached>)
    : {};

  /** Runs every test with `by` in its path whose entry is missing or old; kept after each one, so that it can be broken off. */
  async bringUpToDate(host: Host, by: string, tell: (line: string) => void): Promise<void> {
    mkdirSync(CACHE, { recursive: true });
    const stale = testFiles().filter((test) => test.includes(by) && !this.#isFresh(test));
    for (const [i, test] of stale.entries()) {
      rmSync(host.reachFile, { force: true });
      const came = await host.ask({ reach: true, tests: [{ path: test, mostMs: DEAREST_MS }] });
      const places = existsSync(host.reachFile)
        ? (JSON.parse(readFileSync(host.reachFile, 'utf8')) as Record<string, number[]>)
        : {};
      const files = Object.fromEntries(
        Object.entries(places).map(([file, list]) => [file, { hash: hashOf(file), places: list }]),
      );
      const usable = came !== 'out of work' && came.failed === undefined;
      this.#map[test] = { hash: hashOf(test), files, ...(usable && { costMs: Math.round(came.costMs) }) };
      writeFileSync(MAP, JSON.stringify(this.#map));
      const what = came === 'out of work' ? came : (came.message ?? `${Math.round(came.costMs)} ms`);
      tell(`map ${i + 1} of ${stale.length}: ${test} ${what}`);
    }
  }

  /** The tests that run the mutant's function, the cheapest first, as many as the budget holds. */
  testsOf({ file, place }: Mutant, by: string, budgetMs: number): readonly { path: string; mostMs: number }[] {
    let sum = 0;
    return Object.entries(this.#map)
      .filter(
        ([path, { costMs, files }]) => path.includes(by) && costMs !== undefined && files[file]?.places.includes(place),
      )
      .map(([path, { costMs }]) => ({ path, costMs: costMs! }))
      .sort((a, b) => a.costMs - b.costMs || (a.path < b.path ? -1 : 1))
      .filter(({ costMs }) => (sum += costMs) <= budgetMs)
      .map(({ path, costMs }) => ({ path, mostMs: TIMES * costMs + AT_LEAST_MS }));
  }

  #isFresh(test: string): boolean {
    const entry = this.#map[test];
    return (
      entry?.hash === hashOf(test) && Object.entries(entry.files).every(([file, { hash }]) => hash === hashOf(file))
    );
  }
}
