import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { mutantsOf, surfaceNamed, troubleOf } from './fuzz/run-mutants.ts';
import { SURFACES } from './fuzz/surfaces.ts';
import { HOSTILE_INPUTS } from './inputs.ts';

/** Mutants of every thousand that a test run reads; `npm run fuzz` and the figure `guard/fuzz` read many more. */
const PART = 0.5;

test.each(SURFACES.map((s) => [s.name, s] as const))(
  'harmed inputs of %s end with a sentence, or are taken',
  (_, surface) => {
    for (const { bytes, original } of mutantsOf(surface, 7, Math.ceil(surface.share * PART)))
      expect(troubleOf(surface, bytes, original)).toBeUndefined();
  },
  60_000,
);

test('sound inputs are taken', () => {
  for (const surface of SURFACES) {
    if (surface.name === 'picture' || surface.name === 'order') continue;
    for (const seed of surface.seeds) expect(surface.read(seed), surface.name).toHaveProperty('taken');
  }
});

test('the same seed gives the same mutants', () => {
  const [surface] = SURFACES;
  expect(mutantsOf(surface!, 3, 5)).toEqual(mutantsOf(surface!, 3, 5));
  expect(mutantsOf(surface!, 4, 5)).not.toEqual(mutantsOf(surface!, 3, 5));
});

const FOUND = `${import.meta.dirname}/found`;
test.each(existsSync(FOUND) ? readdirSync(FOUND) : [])('what was once found ends well: %s', (file) => {
  const surface = surfaceNamed(file.split('.')[0]!);
  expect(troubleOf(surface, new Uint8Array(readFileSync(`${FOUND}/${file}`)), surface.seeds[0])).toBeUndefined();
});

test('there are at least 400 hostile inputs, each with a name of its own', () => {
  expect(HOSTILE_INPUTS.length).toBeGreaterThanOrEqual(400);
});
