import { spawnSync } from 'node:child_process';
import { readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { ROOT } from './install.mjs';

export const DIST = join(ROOT, 'dist');

const SOURCES = ['web', 'geometry', 'fonts', 'package.json', 'package-lock.json', 'tsconfig.json'];

/** Builds dist/ when it is absent or older than anything it is made of. Ends the process when the build fails. */
export function buildWhenStale() {
  const built = timeOf(join(DIST, 'index.html'));
  if (built !== undefined && built >= Math.max(...SOURCES.map((name) => newestIn(join(ROOT, name))))) return;
  console.error('Building the page ...');
  const vite = join(ROOT, 'node_modules', 'vite', 'bin', 'vite.js');
  const done = spawnSync(process.execPath, [vite, 'build', '--config', 'web/vite.config.ts', '--logLevel', 'warn'], {
    cwd: ROOT,
    stdio: ['ignore', 2, 2],
  });
  if (done.status === 0) return;
  console.error('The page could not be built; the lines above say where.');
  process.exit(1);
}

function newestIn(path) {
  const here = statSync(path, { throwIfNoEntry: false });
  if (!here) return 0;
  if (!here.isDirectory()) return here.mtimeMs;
  // The folder's own time tells of files taken away.
  return Math.max(here.mtimeMs, ...readdirSync(path).map((name) => newestIn(join(path, name))));
}

function timeOf(path) {
  return statSync(path, { throwIfNoEntry: false })?.mtimeMs;
}
