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
      ) as { stats: { expected: number; unexpected: number; flaky: number } };
      const notes = JSON.stringify(report).matchAll(/"type":"axe","description":"(\d+) of (\d+)"/g);
      const pages = [...notes].map(([, faults]) => Number(faults));
      const faults = pages.reduce((sum, n) => sum + n, 0);
      const ok = pages.length >= 8 && faults === 0 && report.stats.unexpected + report.stats.flaky === 0;
      return Promise.resolve({ value: faults, unit: `faults on ${pages.length} screens`, ok });
    },
  },
];

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
