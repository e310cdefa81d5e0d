import { once, rounded, type Claim } from '../claim.ts';
import { filesOfFirstVisit, MOST_KB, sumOf, type Loaded } from './first-load.ts';
import { servePage } from './serve-page.ts';

const PORT = 4790;

const firstLoad = once(async (): Promise<readonly Loaded[]> => {
  const served = await servePage(PORT);
  if (!served) throw new Error('there is no Chromium here');
  try {
    return await filesOfFirstVisit(await served.browser.newPage({ viewport: { width: 390, height: 844 } }), served);
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
      const sum = sumOf(loaded);
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
