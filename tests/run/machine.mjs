import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync } from 'node:fs';
import { homedir } from 'node:os';
import { delimiter, join } from 'node:path';

// What the tests use of the machine itself: a Chromium, and Debian's packages as outside judges and as a static server.

/** Path of a Chromium to drive, or undefined: the one named by CHROMIUM, the system's, or Playwright's own. */
export function findBrowser() {
  const named = process.env.CHROMIUM;
  if (named && existsSync(named)) return named;
  for (const name of ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable']) {
    const path = onPath(name);
    if (path) return path;
  }
  const mac = '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome';
  return existsSync(mac) ? mac : playwrightsOwn();
}

/**
 * Installs Debian's chromium, python3-ezdxf, poppler-utils and nginx where they are missing and we may (root, or sudo
 * without a password, on a machine with apt-get). Says what it does; what stays missing is said by the tests.
 */
export function installJudges({ browser }) {
  const missing = [
    ...(browser && !findBrowser() ? ['chromium'] : []),
    ...(hasEzdxf() ? [] : ['python3-ezdxf']),
    ...(onPath('pdftoppm') ? [] : ['poppler-utils']),
    ...(onPath('nginx') || existsSync('/usr/sbin/nginx') ? [] : ['nginx']),
  ];
  if (missing.length === 0) return;
  const apt = aptCommand();
  if (!apt) {
    console.log(`Not on this machine, and not allowed to install: ${missing.join(', ')}.`);
    return;
  }
  console.log(`Installing from Debian: ${missing.join(', ')} ...`);
  quietly(apt, ['update']);
  // One by one: the failure of one must not cost the others.
  for (const name of missing) {
    if (!quietly(apt, ['install', '-y', '--no-install-recommends', name])) console.log(`Could not install ${name}.`);
    else if (name === 'nginx') endService(apt.slice(0, -1), name);
  }
}

/** Debian starts what it installs; a test starts its own, and nobody asked for a server on port 80. */
function endService(asRoot, name) {
  for (const command of [
    ['systemctl', 'disable', '--now', name],
    ['service', name, 'stop'],
  ]) {
    const [program, ...args] = [...asRoot, ...command];
    spawnSync(program, args, { stdio: 'ignore', timeout: 30_000 });
  }
}

function hasEzdxf() {
  // Debian's own interpreter: another python3 earlier on PATH does not see Debian's packages.
  return spawnSync('/usr/bin/python3', ['-c', 'import ezdxf'], { stdio: 'ignore' }).status === 0;
}

function aptCommand() {
  if (process.platform !== 'linux' || !onPath('apt-get')) return undefined;
  if (process.getuid?.() === 0) return ['apt-get'];
  return spawnSync('sudo', ['-n', 'true'], { stdio: 'ignore' }).status === 0 ? ['sudo', '-n', 'apt-get'] : undefined;
}

function quietly([command, ...before], args) {
  const done = spawnSync(command, [...before, ...args], {
    stdio: ['ignore', 'pipe', 'pipe'],
    env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
    timeout: 5 * 60_000,
    maxBuffer: 64 * 1024 * 1024,
  });
  if (done.status !== 0)
    console.log(
      String(done.stderr ?? '')
        .split('\n')
        .slice(-5)
        .join('\n'),
    );
  return done.status === 0;
}

function onPath(name) {
  return (process.env.PATH ?? '')
    .split(delimiter)
    .map((folder) => join(folder, name))
    .find((path) => existsSync(path));
}

function playwrightsOwn() {
  const folder = process.env.PLAYWRIGHT_BROWSERS_PATH ?? join(homedir(), '.cache', 'ms-playwright');
  if (!existsSync(folder)) return undefined;
  return readdirSync(folder)
    .filter((name) => name.startsWith('chromium-'))
    .flatMap((name) => ['chrome-linux64', 'chrome-linux'].map((inner) => join(folder, name, inner, 'chrome')))
    .find((path) => existsSync(path));
}
