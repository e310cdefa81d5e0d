import { createReadStream, statSync } from 'node:fs';
import { createServer } from 'node:http';
import { extname, join, normalize, sep } from 'node:path';
import { FRAME_POLICY, PAGE_POLICY } from './policy.mjs';

const TYPES = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.mjs': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.ico': 'image/x-icon',
  '.woff': 'font/woff',
  '.woff2': 'font/woff2',
  '.txt': 'text/plain; charset=utf-8',
  '.map': 'application/json; charset=utf-8',
  '.wasm': 'application/wasm',
  '.webmanifest': 'application/manifest+json; charset=utf-8',
};

/**
 * A server of the files in one folder, for this machine only: reads, never writes. A path that is a key of instead is
 * answered with that file of elsewhere.
 */
export function createStaticServer(folder, instead = {}) {
  return createServer((request, response) => {
    if (request.method !== 'GET' && request.method !== 'HEAD') return fail(response, 405);
    const file = fileFor(folder, request.url ?? '/', instead);
    if (!file) return fail(response, 404);
    response.writeHead(200, {
      'Content-Type': TYPES[extname(file.path)] ?? 'application/octet-stream',
      'Content-Length': file.size,
      // Built files carry their content's mark in the name; the page and its offline worker must always be the newest.
      'Cache-Control': file.path.includes(`${sep}assets${sep}`) ? 'public, max-age=31536000, immutable' : 'no-cache',
      'X-Content-Type-Options': 'nosniff',
      'Content-Security-Policy': `${PAGE_POLICY}; ${FRAME_POLICY}`,
      'Referrer-Policy': 'no-referrer',
      'Cross-Origin-Opener-Policy': 'same-origin',
    });
    if (request.method === 'HEAD') return response.end();
    createReadStream(file.path)
      .on('error', () => response.destroy())
      .pipe(response);
  });
}

/** The first of the given port and the 20 after it that is free; with strict, the given one or an error. */
export async function listenOnFreePort(server, port, strict) {
  for (let candidate = port; ; candidate++) {
    try {
      await listen(server, candidate);
      return candidate;
    } catch (error) {
      if (error.code !== 'EADDRINUSE' || strict || candidate >= port + 20) throw error;
    }
  }
}

function listen(server, port) {
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, '127.0.0.1', () => {
      server.off('error', reject);
      resolve();
    });
  });
}

function fileFor(folder, url, instead) {
  let path;
  try {
    path = decodeURIComponent(new URL(url, 'http://localhost').pathname);
  } catch {
    return undefined;
  }
  const full = Object.hasOwn(instead, path)
    ? instead[path]
    : normalize(join(folder, path.endsWith('/') ? `${path}index.html` : path));
  // Nothing outside the folder, whatever dots the address holds.
  if (full.includes('\0') || !(Object.hasOwn(instead, path) || full.startsWith(folder + sep))) return undefined;
  const stat = statSync(full, { throwIfNoEntry: false });
  return stat?.isFile() ? { path: full, size: stat.size } : undefined;
}

function fail(response, status) {
  response.writeHead(status, { 'Content-Type': 'text/plain; charset=utf-8' });
  response.end(status === 404 ? 'There is no such file.\n' : 'This server only reads.\n');
}
