import { expect, test } from 'vitest';
import { readFace } from '../../geometry/adapters/opentype.ts';
import { doublingGlyphs, doublingSubroutines, overlappingCharacters, overlappingIndex } from './font-bombs.ts';

/** What becomes of the letter A, and how long that took. */
function letterOf(font: Uint8Array): string {
  const read = readFace('own:0', font);
  if ('problem' in read) return read.problem;
  return String(read.face.glyph('A')?.outline.length ?? 'none');
}

test('small glyphs of glyphs and subroutines draw as they should: the makers of these fonts are right', () => {
  expect(letterOf(doublingGlyphs(3))).toBe(String(8 * 5));
  expect(Number(letterOf(doublingSubroutines(3)))).toBeGreaterThan(4);
});

test.each([
  ['glyphs made of two glyphs, 30 times', doublingGlyphs(30)],
  ['glyphs made of 60 glyphs, 8 times', doublingGlyphs(8, 60)],
  ['subroutines that call two, 60 times', doublingSubroutines(60)],
  ['subroutines that call 50, 9 times', doublingSubroutines(9, 50)],
  ['8,000 segments of all characters', overlappingCharacters(8000)],
  ['an index that holds its table 30,000 times', overlappingIndex(60_000)],
])('%s: refused in a moment', (_, font) => {
  const started = performance.now();
  expect(letterOf(font)).toMatch(/damaged|no letters|letter/i);
  expect(performance.now() - started).toBeLessThan(5000);
});
