import { spawn, spawnSync, type ChildProcess } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { createServer, type AddressInfo } from 'node:net';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

// Starts the commonest static servers with our example settings, each for a test and in a folder of its own.

const EXAMPLES = fileURLToPath(new URL('../../../web/serve/hosting/', import.meta.url));
const MODULES = '/usr/lib/apache2/modules';

export interface CommonServer {
  readonly name: string;
  /** Our example, a file of web/serve/hosting/. */
  readonly example: string;
  readonly program: string;
  /** Writes what the program needs around the example into folder, and gives its arguments. */
  prepare(folder: string, site: string): readonly string[];
  /** How the example says where it listens, for a port of this machine only. */
  listenOn(site: string, port: number): string;
}

export const COMMON_SERVERS: readonly CommonServer[] = [
  {
    name: 'nginx',
    example: 'nginx.conf',
    program: '/usr/sbin/nginx',
    listenOn: (site, port) => site.replace('listen 80;', `listen 127.0.0.1:${port};`).replace('stencils.example', '_'),
    prepare(folder, site) {
      const own = ['client_body', 'proxy', 'fastcgi', 'uwsgi', 'scgi'].map(
        (part) => `${part}_temp_path ${join(folder, part)};`,
      );
      writeFileSync(
        join(folder, 'nginx.conf'),
        `daemon off; master_process off; pid ${join(folder, 'pid')}; error_log ${join(folder, 'error.log')};
events {} http { include /etc/nginx/mime.types; default_type application/octet-stream; access_log off;
${own.join('\n')}\n${site}\n}`,
      );
      return ['-p', folder, '-c', join(folder, 'nginx.conf'), '-e', join(folder, 'error.log')];
    },
  },
  {
    name: 'Apache',
    example: 'apache.conf',
    program: '/usr/sbin/apache2',
    listenOn: (site, port) => `Listen 127.0.0.1:${port}\n${site.replace('*:80', `127.0.0.1:${port}`)}`,
    prepare(folder, site) {
      const modules = ['mpm_event', 'authz_core', 'mime', 'dir', 'filter', 'headers', 'deflate', 'brotli'].map(
        (name) => `LoadModule ${name}_module ${join(MODULES, `mod_${name}.so`)}`,
      );
      const user = process.getuid?.() === 0 ? 'User www-data\nGroup www-data' : '';
      writeFileSync(
        join(folder, 'apache.conf'),
        `${modules.join('\n')}\n${user}
ServerRoot ${folder}\nServerName localhost\nPidFile ${join(folder, 'pid')}\nDefaultRuntimeDir ${folder}
ErrorLog ${join(folder, 'error.log')}\nTypesConfig /etc/mime.types\nDirectoryIndex index.html\n${site}`,
      );
      return ['-X', '-f', join(folder, 'apache.conf')];
    },
  },
  {
    name: 'Caddy',
    example: 'Caddyfile',
    program: '/usr/bin/caddy',
    listenOn: (site, port) =>
      `{\nadmin off\nauto_https off\n}\n${site.replace('stencils.example', `http://127.0.0.1:${port}`)}`,
    prepare(folder, site) {
      writeFileSync(join(folder, 'Caddyfile'), site);
      return ['run', '--config', join(folder, 'Caddyfile'), '--adapter', 'caddyfile'];
    },
  },
];

export function exampleOf({ example }: CommonServer): string {
  return readFileSync(join(EXAMPLES, example), 'utf8');
}

export function isInstalled({ program }: CommonServer): boolean {
  return existsSync(program) && spawnSync(program, ['--help'], { stdio: 'ignore' }).error === undefined;
}

/** The program with our example for the page in dist, answering on a free port of this machine. Throws with what it said. */
export async function startServer(
  server: CommonServer,
  folder: string,
  dist: string,
): Promise<{ readonly address: string; readonly end: () => Promise<void> }> {
  mkdirSync(folder, { recursive: true });
  const port = await freePort();
  const site = server.listenOn(exampleOf(server), port).replaceAll('/srv/bridgehead/dist', dist);
  const env = { ...process.env, HOME: folder, XDG_DATA_HOME: folder, XDG_CONFIG_HOME: folder };
  const child = spawn(server.program, server.prepare(folder, site), { stdio: ['ignore', 'pipe', 'pipe'], env });
  let said = '';
  for (const stream of [child.stdout, child.stderr]) stream.on('data', (piece: Buffer) => (said += piece.toString()));
  const address = `http://127.0.0.1:${port}/`;
  for (let wait = 0; wait < 100; wait++) {
    if (child.exitCode !== null) break;
    const answer = await fetch(address).catch(() => undefined);
    if (answer) return { address, end: () => end(child) };
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  child.kill('SIGKILL');
  const log = join(folder, 'error.log');
  throw new Error(`${server.name} did not start: ${said}${existsSync(log) ? readFileSync(log, 'utf8') : ''}`);
}

function freePort(): Promise<number> {
  return new Promise((resolve) => {
    const probe = createServer().listen(0, '127.0.0.1', () => {
      const { port } = probe.address() as AddressInfo;
      probe.close(() => resolve(port));
    });
  });
}

function end(child: ChildProcess): Promise<void> {
  return new Promise((resolve) => {
    if (child.exitCode !== null) return resolve();
    child.on('exit', () => resolve());
    child.kill('SIGTERM');
    setTimeout(() => child.kill('SIGKILL'), 3000).unref();
  });
}
