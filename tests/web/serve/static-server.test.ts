import { rmSync, writeFileSync } from 'node:fs';
import { request, type Server } from 'node:http';
import { connect } from 'node:net';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { createStaticServer, listenOnFreePort } from '../../../web/serve/static-server.mjs';
import { ODD_REQUESTS, oddFolder, SECRET, send } from './odd-requests.ts';

let folder: string;
let server: Server;
let port: number;

beforeAll(async () => {
  folder = oddFolder();
  server = createStaticServer(folder);
  port = await listenOnFreePort(server, 4810, false);
});
afterAll(() => {
  server.closeAllConnections();
  server.close();
  rmSync(dirname(folder), { recursive: true });
});

const alive = async (): Promise<boolean> =>
  (await send(port, 'GET / HTTP/1.0\r\nHost: localhost\r\n\r\n')).status === 200;

describe('the server', () => {
  it('is tried with at least 36 kinds of odd requests', () => {
    expect(new Set(ODD_REQUESTS.map(({ sent }) => sent)).size).toBeGreaterThanOrEqual(36);
  });

  it.each(ODD_REQUESTS)('answers $name', async ({ sent, right }) => {
    const { status, came } = await send(port, sent);
    expect(right).toContain(status);
    expect(came).not.toContain(SECRET);
    expect(came).not.toMatch(/^set-cookie/im);
    expect(await alive()).toBe(true);
  });

  it('outlives callers who hang up in the middle, at whatever byte', async () => {
    const whole = 'GET /index.html HTTP/1.1\r\nHost: localhost\r\n\r\n';
    for (let length = 0; length <= whole.length; length++) {
      await new Promise<void>((resolve) => {
        const socket = connect(port, '127.0.0.1', () => {
          socket.write(whole.slice(0, length));
          if (length % 2 === 0) socket.resetAndDestroy();
          else socket.destroy();
          resolve();
        });
        socket.on('error', () => undefined);
      });
    }
    expect(await alive()).toBe(true);
  });

  it('answers others while 200 callers send nothing more, and ends those', async () => {
    const quick = createStaticServer(folder);
    // The limits of every day, only shorter: a test does not wait ten seconds.
    quick.headersTimeout = 300;
    const at = await listenOnFreePort(quick, 4830, false);
    const slow = Array.from({ length: 200 }, () => send(at, 'GET / HTTP/1.1\r\nHost: loc', { patienceMs: 20_000 }));
    const { status } = await send(at, 'GET / HTTP/1.0\r\nHost: localhost\r\n\r\n');
    expect(status).toBe(200);
    const ended = await Promise.all(slow);
    expect(ended.every((one) => one.status === 408)).toBe(true);
    quick.close();
  });

  it('has limits for head, request, silence and number of callers', () => {
    const { headersTimeout, requestTimeout, timeout, maxConnections } = server;
    expect(Math.max(headersTimeout, requestTimeout, timeout)).toBeLessThanOrEqual(30_000);
    expect(Math.min(headersTimeout, requestTimeout, timeout)).toBeGreaterThan(0);
    expect(maxConnections).toBeGreaterThanOrEqual(250);
    expect(maxConnections).toBeLessThanOrEqual(1000);
  });

  it('gives a file that is changed while it is read to its end, or breaks off', async () => {
    const path = join(folder, 'assets', 'long.js');
    writeFileSync(path, 'x'.repeat(8_000_000));
    const came = new Promise<string>((resolve) => {
      request({ port, host: '127.0.0.1', path: '/assets/long.js' }, (answer) => {
        answer.once('data', () => writeFileSync(path, 'short'));
        answer.on('aborted', () => resolve('broken off'));
        answer.on('error', () => undefined);
        answer.on('end', () => resolve('whole'));
      }).end();
    });
    expect(['broken off', 'whole']).toContain(await came);
    expect(await alive()).toBe(true);
  });
});
