import { mkdtempSync, mkdirSync, readFileSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { request, type IncomingMessage, type Server } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { brotliDecompressSync, gunzipSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { builtFiles } from '../../../web/serve/built-files.ts';
import { precompress } from '../../../web/serve/precompress.ts';
import { createStaticServer, listenOnFreePort } from '../../../web/serve/static-server.mjs';

const SCRIPT = 'export const words = "barrel head";\n'.repeat(200);
let folder: string;
let server: Server;
let port: number;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'bridgehead-packed-'));
  mkdirSync(join(folder, 'assets'));
  writeFileSync(join(folder, 'assets', 'part-1a2b.js'), SCRIPT);
  writeFileSync(join(folder, 'index.html'), '<p>short</p>');
  writeFileSync(join(folder, 'stock.json'), JSON.stringify({ notes: 'a'.repeat(5000) }));
  writeFileSync(join(folder, 'picture.png'), Buffer.alloc(5000));
  await compress(folder);
  server = createStaticServer(folder);
  port = await listenOnFreePort(server, 4870, false);
});
afterAll(() => {
  server.closeAllConnections();
  server.close();
  rmSync(folder, { recursive: true });
});

describe('what the build compresses', () => {
  it('are texts of more than a packet, never what a shop edits in place', () => {
    const copies = ['assets/part-1a2b.js.br', 'assets/part-1a2b.js.gz'];
    expect(copies.map((file) => readFileSync(join(folder, file)).length > 0)).toEqual([true, true]);
    for (const file of ['index.html.br', 'stock.json.br', 'stock.json.gz', 'picture.png.br']) {
      expect(() => readFileSync(join(folder, file))).toThrow();
    }
  });

  it('is not counted among the files of the page', () => {
    expect(builtFiles(folder, ['picture.png'])).toEqual(['assets/part-1a2b.js', 'index.html', 'stock.json']);
  });
});

describe('a server that is asked for what is compressed', () => {
  it.each([
    ['gzip, deflate, br, zstd', 'br'],
    ['gzip', 'gzip'],
    ['gzip;q=1, br;q=0', 'gzip'],
    ['*', 'br'],
    ['*;q=0, gzip', 'gzip'],
    ['BR', 'br'],
    ['identity', undefined],
    ['br;q=0, gzip;q=0.0', undefined],
    ['', undefined],
    [undefined, undefined],
  ])('answers %s with %s, and the same text', async (accepted, coding) => {
    const { answer, bytes } = await ask('/assets/part-1a2b.js', accepted);
    expect(answer.headers['content-encoding']).toBe(coding);
    expect(answer.headers['content-type']).toBe('text/javascript; charset=utf-8');
    expect(answer.headers['vary']).toBe('Accept-Encoding');
    expect(answer.headers['content-length']).toBe(String(bytes.length));
    const open = { br: brotliDecompressSync, gzip: gunzipSync }[coding ?? ''] ?? ((packed: Buffer) => packed);
    expect(open(bytes).toString()).toBe(SCRIPT);
  });

  it('says 304 to whoever has it, each coding for itself', async () => {
    const { answer } = await ask('/assets/part-1a2b.js', 'br');
    const tag = answer.headers.etag!;
    const again = await ask('/assets/part-1a2b.js', 'br', { 'If-None-Match': `"x", ${tag}` });
    expect(again.answer.statusCode).toBe(304);
    expect(again.bytes.length).toBe(0);
    expect(again.answer.headers.etag).toBe(tag);
    expect((await ask('/assets/part-1a2b.js', 'gzip', { 'If-None-Match': tag })).answer.statusCode).toBe(200);
  });

  it('takes no copy that is older than its file', async () => {
    writeFileSync(join(folder, 'assets', 'old.js'), SCRIPT);
    await compress(folder);
    writeFileSync(join(folder, 'assets', 'old.js'), 'export const newer = 1;');
    utimesSync(join(folder, 'assets', 'old.js.br'), new Date(0), new Date(0));
    utimesSync(join(folder, 'assets', 'old.js.gz'), new Date(0), new Date(0));
    const { answer, bytes } = await ask('/assets/old.js', 'br, gzip');
    expect(answer.headers['content-encoding']).toBeUndefined();
    expect(bytes.toString()).toBe('export const newer = 1;');
  });
});

/** Runs the part of the build that lays copies. */
async function compress(outDir: string): Promise<void> {
  const plugin = precompress() as unknown as {
    configResolved(config: unknown): void;
    closeBundle: { handler(): Promise<void> };
  };
  plugin.configResolved({ root: '/', build: { outDir } });
  await plugin.closeBundle.handler();
}

function ask(path: string, accepted: string | undefined, more: Record<string, string> = {}) {
  return new Promise<{ answer: IncomingMessage; bytes: Buffer }>((resolve, reject) => {
    const headers = { ...(accepted !== undefined && { 'Accept-Encoding': accepted }), ...more };
    request({ port, host: '127.0.0.1', path, headers }, (answer) => {
      const pieces: Buffer[] = [];
      answer.on('data', (piece: Buffer) => pieces.push(piece));
      answer.on('end', () => resolve({ answer, bytes: Buffer.concat(pieces) }));
    })
      .on('error', reject)
      .end();
  });
}
