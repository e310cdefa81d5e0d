import { chmodSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { request, type IncomingMessage } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { brotliDecompressSync, gunzipSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { builtFiles } from '../../../web/serve/built-files.ts';
import { FRAME_POLICY, PAGE_POLICY } from '../../../web/serve/policy.mjs';
import { precompress } from '../../../web/serve/precompress.ts';
import { COMMON_SERVERS, exampleOf, isInstalled, startServer } from './common-servers.ts';

const HEADERS: Readonly<Record<string, string>> = {
  'content-security-policy': `${PAGE_POLICY}; ${FRAME_POLICY}`,
  'x-content-type-options': 'nosniff',
  'referrer-policy': 'no-referrer',
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-resource-policy': 'same-origin',
};
const TYPES: Readonly<Record<string, RegExp>> = {
  'index.html': /^text\/html; ?charset=utf-8$/i,
  'assets/part-1a2b.js': /^(?:text|application)\/javascript(?:; ?charset=utf-8)?$/i,
  'assets/look-1a2b.css': /^text\/css(?:; ?charset=utf-8)?$/i,
  'stock.json': /^application\/json/,
  'licences.txt': /^text\/plain; ?charset=utf-8$/i,
  'manifest.webmanifest': /^application\/manifest\+json/,
  'favicon.svg': /^image\/svg\+xml/,
  'assets/face-1a2b.woff2': /font\/woff2/,
};
/** Files that must travel compressed: text built, and text that a shop edits. */
const COMPRESSED = ['assets/part-1a2b.js', 'stock.json'];

let dist: string;

beforeAll(async () => {
  dist = mkdtempSync(join(tmpdir(), 'bridgehead-hosted-'));
  chmodSync(dist, 0o755);
  mkdirSync(join(dist, 'assets'));
  for (const file of [...Object.keys(TYPES), 'offline-worker.js'])
    writeFileSync(join(dist, file), `/* ${file} */ `.repeat(300));
  writeFileSync(join(dist, '.hidden'), 'a secret');
  const plugin = precompress() as unknown as {
    configResolved(config: unknown): void;
    closeBundle: { handler(): Promise<void> };
  };
  plugin.configResolved({ root: '/', build: { outDir: dist } });
  await plugin.closeBundle.handler();
});
afterAll(() => rmSync(dist, { recursive: true }));

describe.each(COMMON_SERVERS)('the example for $name', (server) => {
  it('says the policy of the page word for word', () => {
    expect(exampleOf(server)).toContain(`"${PAGE_POLICY}; ${FRAME_POLICY}"`);
  });

  it('serves every file as built, with headers, marks and compression', async (task) => {
    // `npm test` installs nginx where it may.
    if (!isInstalled(server)) task.skip(`${server.name} is not on this machine`);
    const folder = mkdtempSync(join(tmpdir(), 'bridgehead-server-'));
    const { address, end } = await startServer(server, folder, dist);
    try {
      for (const file of builtFiles(dist, ['.hidden'])) {
        for (const accepted of ['identity', 'gzip', 'br, gzip']) {
          const { headers, bytes, status } = await ask(address + file, { 'Accept-Encoding': accepted });
          expect([file, status]).toEqual([file, 200]);
          expect(opened(bytes, headers['content-encoding']).equals(readFileSync(join(dist, file)))).toBe(true);
          expect(accepted).toContain(headers['content-encoding'] ?? '');
          if (accepted !== 'identity' && COMPRESSED.includes(file)) expect(headers['content-encoding']).toBeDefined();
          if (headers['content-encoding'] !== undefined) expect(headers.vary).toMatch(/accept-encoding/i);
          expect(headers).toMatchObject(HEADERS);
          expect(headers['cache-control']).toBe(
            file.startsWith('assets/') ? 'public, max-age=31536000, immutable' : 'no-cache',
          );
          if (TYPES[file]) expect(headers['content-type']).toMatch(TYPES[file]);
        }
      }
      const page = await ask(address);
      expect(page.bytes.equals(readFileSync(join(dist, 'index.html')))).toBe(true);
      expect((await ask(address, { 'If-None-Match': page.headers.etag ?? '' })).status).toBe(304);
      const missing = await ask(`${address}assets/gone-1a2b.js`);
      expect(missing.status).toBe(404);
      expect(missing.headers['cache-control'] ?? '').not.toContain('immutable');
      expect([403, 404]).toContain((await ask(`${address}.hidden`)).status);
      const list = await ask(`${address}assets/`);
      expect([403, 404]).toContain(list.status);
      expect(list.bytes.toString()).not.toContain('part-1a2b');
    } finally {
      await end();
      rmSync(folder, { recursive: true });
    }
  });
});

function opened(bytes: Buffer, coding: string | undefined): Buffer {
  if (coding === 'br') return brotliDecompressSync(bytes);
  return coding === 'gzip' ? gunzipSync(bytes) : bytes;
}

function ask(url: string, headers: Record<string, string> = {}) {
  return new Promise<{ status: number; headers: IncomingMessage['headers']; bytes: Buffer }>((resolve, reject) => {
    request(url, { headers }, (answer) => {
      const pieces: Buffer[] = [];
      answer.on('data', (piece: Buffer) => pieces.push(piece));
      answer.on('end', () =>
        resolve({ status: answer.statusCode ?? 0, headers: answer.headers, bytes: Buffer.concat(pieces) }),
      );
    })
      .on('error', reject)
      .end();
  });
}
