import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { installWhatIsMissing } from '../../web/serve/install.mjs';
import { findBrowser, installJudges } from './machine.mjs';
import { playwrightCounts, runTool, vitestCounts } from './stage.mjs';

// `npm test`: everything, in order. `node tests/run/test.mjs STAGE ...`: only the stages named.
// Every stage runs even after one failed, so that one look shows all there is to mend.

const reports = mkdtempSync(join(tmpdir(), 'bridgehead-test-'));
const unitReport = join(reports, 'unit.json');
const journeyReport = join(reports, 'journeys.json');

const STAGES = {
  types: () => runTool('typescript/bin/tsc', ['--noEmit', '-p', '.'], { minutes: 3 }),
  lint: () => runTool('eslint/bin/eslint.js', ['--config', 'tests/eslint.config.js', '.'], { minutes: 4 }),
  format: () => runTool('prettier/bin/prettier.cjs', ['--check', '--log-level', 'warn', '.'], { minutes: 2 }),
  unit: () =>
    runTool(
      'vitest/vitest.mjs',
      // prettier-ignore
      ['run', '--config', 'tests/vitest.config.ts', '--reporter=default', '--reporter=json', `--outputFile.json=${unitReport}`],
      { minutes: 9 },
    ),
  build: () => runTool('vite/bin/vite.js', ['build', '--config', 'web/vite.config.ts'], { minutes: 4 }),
  journeys: runJourneys,
};
const COUNTS = { unit: () => vitestCounts(unitReport), journeys: () => playwrightCounts(journeyReport) };

const wanted = process.argv.slice(2);
const unknown = wanted.find((name) => !(name in STAGES));
if (unknown) {
  console.error(`There is no stage ${unknown}; there are ${Object.keys(STAGES).join(', ')}.`);
  process.exit(1);
}
const names = Object.keys(STAGES).filter((name) => wanted.length === 0 || wanted.includes(name));
const browserWanted = names.includes('journeys');
installWhatIsMissing();
if (browserWanted || names.includes('unit')) installJudges({ browser: browserWanted });

const sum = { passed: 0, failed: 0, skipped: 0 };
const lines = [];
const done = new Set();
for (const name of names) {
  console.log(`\n== ${name}`);
  const start = process.hrtime.bigint();
  const ok = await STAGES[name]();
  if (ok) done.add(name);
  const counts = COUNTS[name]?.() ?? { passed: 0, failed: 0, skipped: 0 };
  // Types, lint, format and build have no tests to count: each is one thing that can fail.
  if (!ok && counts.failed === 0) counts.failed = 1;
  for (const key of Object.keys(sum)) sum[key] += counts[key];
  const seconds = Number(process.hrtime.bigint() - start) / 1e9;
  lines.push(`${name.padEnd(9)} ${counts.failed === 0 ? 'ok    ' : 'FAILED'} ${seconds.toFixed(1).padStart(6)} s`);
}
rmSync(reports, { recursive: true, force: true });

console.log(`\n${lines.join('\n')}\n`);
console.log(`${sum.passed} passed, ${sum.failed} failed${sum.skipped > 0 ? `, ${sum.skipped} skipped` : ''}`);
process.exit(sum.failed > 0 ? 1 : 0);

async function runJourneys() {
  if (names.includes('build') && !done.has('build')) {
    console.log('Not run: there is no freshly built page to walk through.');
    return false;
  }
  const browser = findBrowser();
  if (!browser) {
    console.log('No Chromium was found and none could be installed: name one in CHROMIUM=/path/to/chromium.');
    return false;
  }
  return runTool('@playwright/test/cli.js', ['test', '--config', 'e2e/playwright.config.ts'], {
    minutes: 12,
    env: { CHROMIUM: browser, PLAYWRIGHT_JSON_OUTPUT_NAME: journeyReport },
  });
}
