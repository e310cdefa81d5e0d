import { JSDOM } from 'jsdom';
import { describe, expect, test } from 'vitest';
import { compose } from '../../geometry/artwork/compose.ts';
import type { Painted } from '../../geometry/artwork/painted.ts';
import { readSvg } from '../../web/design/artwork/read-svg.ts';
import artwork from '../../web/words/en/work/artwork.json';
import { SVG_CASES } from './svg-cases.ts';

/** A browser that would run scripts and load what it is told to: nothing may reach either. */
const asked: string[] = [];
const dom = new JSDOM('', { runScripts: 'dangerously', url: 'http://page.invalid/' });
const window = dom.window as unknown as typeof globalThis & { ran?: unknown };
window.alert = () => asked.push('alert');
window.fetch = ((url: string) => {
  asked.push(url);
  return Promise.reject(new Error('no network'));
}) as typeof fetch;

describe.each(SVG_CASES.map((c) => [c.name, c] as const))('%s', (_, c) => {
  test(`ends as ${c.ends} (${c.source})`, { timeout: 20_000 }, () => {
    const before = window.document.documentElement.outerHTML;
    const started = performance.now();
    const read = readSvg(new TextEncoder().encode(c.file), window);
    const took = performance.now() - started;
    if ('refused' in read) {
      expect(read.refused).toBe(c.ends);
      const sentence = artwork.refused[read.refused];
      expect(sentence.length).toBeGreaterThan(30);
    } else {
      expect(c.ends).toBe('clean');
      // What is left is the square, and plain data: nothing of the file's text goes further.
      const made = compose(read.shapes.filter(drawsSomething), 'dark');
      if ('trouble' in made) throw new Error(made.trouble);
      expect(made).toMatchObject({ openings: 1, width: 1, height: 80 });
      expect(made.path).toMatch(/^[MLQCZ0-9., -]+$/);
      expect(JSON.stringify(read.shapes)).not.toMatch(/script|http|alert|url/i);
    }
    // Swamping is refused before it swamps.
    expect(took).toBeLessThan(10_000);
    expect(asked).toEqual([]);
    expect(window.ran).toBeUndefined();
    expect(window.document.documentElement.outerHTML).toBe(before);
  });
});

/** Shapes of no area are dropped by compose; this only keeps the count honest where a case draws a stray point. */
function drawsSomething(shape: Painted): boolean {
  return shape.outline.length > 0;
}

test('every case names its source, and there are at least twenty', () => {
  expect(SVG_CASES.length).toBeGreaterThanOrEqual(20);
  expect(new Set(SVG_CASES.map((c) => c.name)).size).toBe(SVG_CASES.length);
  expect(SVG_CASES.every((c) => c.source.length > 3)).toBe(true);
});
