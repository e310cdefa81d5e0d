import { writeFileSync } from 'node:fs';
import { afterAll } from 'vitest';

/* What a test file reached, for the map of files to tests; only woven files count (`weaveReach`). */
afterAll(() => {
  const { reached, process } = globalThis as { reached?: Record<string, Uint8Array> } & typeof globalThis;
  const file = process.env['REACH_FILE'];
  if (!file || !reached) return;
  const places = Object.entries(reached).map(([name, at]) => [name, [...at.keys()].filter((i) => at[i])]);
  writeFileSync(file, JSON.stringify(Object.fromEntries(places)));
});
