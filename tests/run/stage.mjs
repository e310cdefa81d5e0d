import { spawn } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { ROOT } from '../../web/serve/install.mjs';

/** The whole run ends well inside 20 minutes, whatever hangs. */
const WHOLE_RUN_MS = 18 * 60_000;

/**
 * Runs one tool of node_modules from the project's folder and shows what it prints. Gives true when it ended well.
 * A tool that takes longer than its minutes, or than what is left of the whole run's, is ended with all it started,
 * and has failed.
 */
export function runTool(bin, args, { minutes, env = {} }) {
  const allowedMs = Math.max(1000, Math.min(minutes * 60_000, WHOLE_RUN_MS - process.uptime() * 1000));
  return new Promise((resolve) => {
    const child = spawn(process.execPath, [join(ROOT, 'node_modules', bin), ...args], {
      cwd: ROOT,
      stdio: ['ignore', 'inherit', 'inherit'],
      env: { ...process.env, ...env },
      detached: process.platform !== 'win32',
    });
    const end = (signal) => endGroup(child, signal);
    const timer = setTimeout(() => {
      console.log(`Ended after ${(allowedMs / 60_000).toFixed(1)} minutes: that is longer than this stage may take.`);
      end('SIGKILL');
    }, allowedMs);
    const onSignal = () => {
      end('SIGTERM');
      process.exit(130);
    };
    process.once('SIGINT', onSignal).once('SIGTERM', onSignal);
    child.on('exit', (code) => {
      clearTimeout(timer);
      process.off('SIGINT', onSignal).off('SIGTERM', onSignal);
      resolve(code === 0);
    });
  });
}

/** Sums of a report that Vitest wrote as JSON; undefined when it wrote none. */
export function vitestCounts(file) {
  const report = readJson(file);
  if (!report) return undefined;
  // A file that does not even load has no tests to fail, yet has failed.
  const broken = report.testResults.filter((r) => r.status === 'failed' && r.assertionResults.length === 0).length;
  return {
    passed: report.numPassedTests,
    failed: report.numFailedTests + broken,
    skipped: report.numPendingTests + report.numTodoTests,
  };
}

/** Sums of a report that Playwright wrote as JSON; undefined when it wrote none. */
export function playwrightCounts(file) {
  const report = readJson(file);
  if (!report) return undefined;
  const { expected, unexpected, flaky, skipped } = report.stats;
  return { passed: expected, failed: unexpected + flaky + report.errors.length, skipped };
}

function endGroup(child, signal) {
  try {
    if (process.platform === 'win32') child.kill(signal);
    else process.kill(-child.pid, signal);
  } catch {
    // Already gone.
  }
}

function readJson(file) {
  try {
    return JSON.parse(readFileSync(file, 'utf8'));
  } catch {
    return undefined;
  }
}
