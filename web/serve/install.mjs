import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The project's folder; everything runs from there, wherever the command was typed. */
export const ROOT = fileURLToPath(new URL('../..', import.meta.url));

/**
 * Installs the packages of the lock file when they are missing or others. Says so on stderr, so that a command's
 * own output stays clean. Ends the process with a sentence when it cannot. Node built-ins only: nothing is
 * installed yet when this runs.
 */
export function installWhatIsMissing() {
  if (installedAsLocked()) return;
  console.error('Installing the packages of package-lock.json ...');
  const done = spawnSync('npm', ['ci', '--include=dev', '--no-audit', '--no-fund'], {
    cwd: ROOT,
    stdio: ['ignore', 2, 2],
    shell: process.platform === 'win32',
  });
  if (done.status === 0) return;
  console.error('The packages could not be installed: is the package registry within reach? Then run `npm ci`.');
  process.exit(1);
}

/** npm keeps a second lock inside node_modules; what is there is right when both name the same versions. */
function installedAsLocked() {
  const wanted = packagesOf(join(ROOT, 'package-lock.json'));
  const present = packagesOf(join(ROOT, 'node_modules', '.package-lock.json'));
  if (!wanted || !present) return false;
  return Object.entries(wanted).every(([path, entry]) => {
    if (path === '') return true;
    const there = present[path];
    // Packages for other machines are left out by npm itself.
    return there ? there.version === entry.version : entry.optional === true;
  });
}

function packagesOf(lockFile) {
  try {
    return JSON.parse(readFileSync(lockFile, 'utf8')).packages;
  } catch {
    return undefined;
  }
}
