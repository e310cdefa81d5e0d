import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { once, rounded, type Claim } from '../claim.ts';
import { servePage } from './serve-page.ts';

const MOST_KB = 300;
const PORT = 4790;

interface Loaded {
  readonly path: string;
  readonly kB: number;
}

/**
 * Everything that a browser without any cache asks for until the first plate is in sight (the page sets the mark
 * first-plate after it has been painted), each file as gzip -9 makes it; fonts are packed already and hardly change.
 */
const firstLoad = once(async (): Promise<readonly Loaded[]> => {
  const served = await servePage(PORT);
  if (!served) throw new Error('there is no Chromium here');
  try {
    const page = await served.browser.newPage({ viewport: { width: 390, height: 844 } });
    await page.goto(served.address);
    await page.waitForFunction(() => performance.getEntriesByName('first-plate').length > 0, undefined, {
      timeout: 120_000,
      polling: 20,
    });
    const drawnMs = await page.evaluate(
      () => performance.timeOrigin + (performance.getEntriesByName('first-plate')[0]?.startTime ?? NaN),
    );
    const early = served.asked.filter(({ atMs }) => atMs <= drawnMs);
    const paths = [...new Set(early.map(({ path }) => (path === '/' ? '/index.html' : path)))];
    return paths
      .map((path) => ({ path, kB: gzipSync(readFileSync(join(served.folder, path)), { level: 9 }).length / 1000 }))
      .sort((a, b) => b.kB - a.kB);
  } finally {
    await served.end();
  }
});

/** What the first visit costs. */
export const BUNDLE_CLAIMS: readonly Claim[] = [
  {
    name: 'first-load',
    wanted: `at most ${MOST_KB} KB gzip until the first plate is in sight`,
    async measure() {
      const loaded = await firstLoad();
      for (const { path, kB } of loaded) console.log(`  ${kB.toFixed(1).padStart(6)} KB  ${path}`);
      const sum = loaded.reduce((all, { kB }) => all + kB, 0);
      return { value: rounded(sum), unit: `KB in ${loaded.length} files`, ok: sum <= MOST_KB };
    },
  },
  {
    name: 'first-load-without-heavy-parts',
    wanted: '0 of: PDF writer, barrel drawn flat or in three dimensions, zip, stage, other languages, artwork import',
    async measure() {
      const heavy = /spec-sheet|BarrelPlace|BarrelView|make-files|PlateStage|words-(?:de|fr|es)|artwork|pack-design/i;
      const early = (await firstLoad()).filter(({ path }) => heavy.test(path));
      return { value: early.length, unit: early.map(({ path }) => path).join(' '), ok: early.length === 0 };
    },
  },
];
