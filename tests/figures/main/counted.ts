import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Claim } from '../claim.ts';

const ROOT = fileURLToPath(new URL('../../..', import.meta.url));

/** What can only be counted by running the tests themselves. */
export const COUNTED_CLAIMS: readonly Claim[] = [
  {
    name: 'outside-checks',
    wanted: 'at least 10, none failing',
    measure() {
      const report = runWithReport('vitest/vitest.mjs', (file) => [
        ...['run', '--config', 'tests/vitest.config.ts', 'tests/outside'],
        ...['--reporter=json', `--outputFile=${file}`],
      ]) as { numPassedTests: number; numFailedTests: number; numFailedTestSuites: number };
      const { numPassedTests: passed, numFailedTests: failed } = report;
      const ok = passed >= 10 && failed === 0 && report.numFailedTestSuites === 0;
      return Promise.resolve({ value: passed, unit: `checks passed, ${failed} failed`, ok });
    },
  },
  {
    name: 'axe-serious-or-critical-faults',
    wanted: '0 on every step, by day and by night',
    measure() {
      const report = runWithReport(
        '@playwright/test/cli.js',
        () => ['test', '--config', 'e2e/playwright.config.ts', 'accessible'],
        'PLAYWRIGHT_JSON_OUTPUT_NAME',
      ) as JourneyReport;
      const faults = axeNotes(report.suites).map((note) => Number.parseInt(note, 10));
      const sum = faults.reduce((total, n) => total + n, 0);
      const { unexpected, flaky } = report.stats;
      // Four questions, by day and by night.
      const ok = faults.length === 8 && sum === 0 && unexpected + flaky === 0;
      return Promise.resolve({ value: sum, unit: `faults on ${faults.length} screens`, ok });
    },
  },
];

interface Suite {
  readonly suites?: readonly Suite[];
  readonly specs: readonly {
    readonly tests: readonly {
      readonly annotations: readonly { readonly type: string; readonly description?: string }[];
    }[];
  }[];
}

interface JourneyReport {
  readonly stats: { readonly unexpected: number; readonly flaky: number };
  readonly suites: readonly Suite[];
}

/** What the journeys noted of axe, `faults of rules`, once for each screen. */
function axeNotes(suites: readonly Suite[]): string[] {
  return suites.flatMap((suite) => [
    ...axeNotes(suite.suites ?? []),
    ...suite.specs.flatMap(({ tests }) =>
      tests.flatMap(({ annotations }) =>
        annotations.filter(({ type }) => type === 'axe').map((a) => a.description ?? ''),
      ),
    ),
  ]);
}

/** Runs a tool of node_modules that writes a JSON report, to a file or to one named in the environment. */
function runWithReport(bin: string, args: (file: string) => string[], variable?: string): unknown {
  const folder = mkdtempSync(join(tmpdir(), 'bridgehead-figures-'));
  const file = join(folder, 'report.json');
  try {
    const done = spawnSync(process.execPath, [join(ROOT, 'node_modules', bin), ...args(file)], {
      cwd: ROOT,
      stdio: ['ignore', 'ignore', 'pipe'],
      encoding: 'utf8',
      env: { ...process.env, ...(variable ? { [variable]: file } : {}) },
      timeout: 10 * 60_000,
    });
    try {
      return JSON.parse(readFileSync(file, 'utf8'));
    } catch {
      throw new Error(`no report was written: ${done.stderr.trim().split('\n')[0] ?? ''}`);
    }
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
