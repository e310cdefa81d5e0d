import type { Page } from '@playwright/test';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { Served } from './serve-page.ts';

/** Packed, until the worker's first plate has been drawn. */
export const MOST_KB = 300;

export interface Loaded {
  readonly path: string;
  readonly kB: number;
}

/**
 * Everything that a browser without any cache asks for until the first plate is in sight (the page sets the mark
 * first-plate after it has been painted), each file as gzip -9 makes it; fonts are packed already and hardly change.
 * Largest first.
 */
export async function filesOfFirstVisit(page: Page, { address, folder, asked }: Served): Promise<readonly Loaded[]> {
  await page.goto(address);
  await page.waitForFunction(() => performance.getEntriesByName('first-plate').length > 0, undefined, {
    timeout: 120_000,
    polling: 20,
  });
  const drawnMs = await page.evaluate(
    () => performance.timeOrigin + (performance.getEntriesByName('first-plate')[0]?.startTime ?? NaN),
  );
  const early = asked.filter(({ atMs }) => atMs <= drawnMs);
  const paths = [...new Set(early.map(({ path }) => (path === '/' ? '/index.html' : path)))];
  return paths
    .map((path) => ({ path, kB: gzipSync(readFileSync(join(folder, path)), { level: 9 }).length / 1000 }))
    .sort((a, b) => b.kB - a.kB);
}

export function sumOf(loaded: readonly Loaded[]): number {
  return loaded.reduce((all, { kB }) => all + kB, 0);
}
