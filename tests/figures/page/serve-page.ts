import { existsSync } from 'node:fs';
import type { Server } from 'node:http';
import { chromium, type Browser } from '@playwright/test';
import { buildWhenStale, DIST } from '../../../web/serve/build.mjs';
import { createStaticServer, listenOnFreePort } from '../../../web/serve/static-server.mjs';
import type { Measured } from '../claim.ts';

/** What a claim says where there is none. */
export const NO_BROWSER: Measured = { value: 'not measured: there is no browser here', unit: '', ok: true };

/** The page as `npm start` serves it. */
export interface Served {
  readonly address: string;
  readonly folder: string;
  /** What was asked for so far, page, worker and style sheets alike; when, in ms since 1970. */
  readonly asked: readonly { readonly path: string; readonly atMs: number }[];
  end(): Promise<void>;
}

export interface ServedPage extends Served {
  readonly browser: Browser;
}

/** Freshly built when stale. */
export async function serveBuilt(port: number): Promise<Served> {
  buildWhenStale();
  const asked: { path: string; atMs: number }[] = [];
  const server: Server = createStaticServer(DIST);
  server.prependListener('request', ({ url = '/' }: { url?: string }) => asked.push({ path: url, atMs: Date.now() }));
  const at = await listenOnFreePort(server, port, false);
  return {
    address: `http://127.0.0.1:${at}/`,
    folder: DIST,
    asked,
    end() {
      server.closeAllConnections();
      server.close();
      return Promise.resolve();
    },
  };
}

/** The same with a browser before it; undefined without one. */
export async function servePage(port: number, flags: readonly string[] = []): Promise<ServedPage | undefined> {
  const executablePath = process.env['CHROMIUM'] ?? '/usr/bin/chromium';
  if (!existsSync(executablePath)) return undefined;
  const served = await serveBuilt(port);
  const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu', ...flags] });
  return {
    ...served,
    browser,
    async end() {
      await browser.close();
      await served.end();
    },
  };
}
