import { existsSync } from 'node:fs';
import type { Server } from 'node:http';
import { chromium, type Browser } from '@playwright/test';
import { buildWhenStale, DIST } from '../../../web/serve/build.mjs';
import { createStaticServer, listenOnFreePort } from '../../../web/serve/static-server.mjs';
import type { Measured } from '../claim.ts';

/** What a claim says where there is none. */
export const NO_BROWSER: Measured = { value: 'not measured: there is no browser here', unit: '', ok: true };

export interface ServedPage {
  readonly address: string;
  readonly folder: string;
  readonly browser: Browser;
  /** What was asked for so far, page, worker and style sheets alike; when, in ms since 1970. */
  readonly asked: readonly { readonly path: string; readonly atMs: number }[];
  end(): Promise<void>;
}

/** The page as `npm start` serves it, freshly built when stale, with a browser before it; undefined without one. */
export async function servePage(port: number, flags: readonly string[] = []): Promise<ServedPage | undefined> {
  const executablePath = process.env['CHROMIUM'] ?? '/usr/bin/chromium';
  if (!existsSync(executablePath)) return undefined;
  buildWhenStale();
  const asked: { path: string; atMs: number }[] = [];
  const server: Server = createStaticServer(DIST);
  server.prependListener('request', ({ url = '/' }: { url?: string }) => asked.push({ path: url, atMs: Date.now() }));
  const at = await listenOnFreePort(server, port, false);
  const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu', ...flags] });
  return {
    address: `http://127.0.0.1:${at}/`,
    folder: DIST,
    browser,
    asked,
    async end() {
      await browser.close();
      server.closeAllConnections();
      server.close();
    },
  };
}
