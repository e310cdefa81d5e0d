import { describe, expect, test } from 'vitest';
import { FILE_CASES, FONT_CASES, LINK_CASES } from './document-cases.ts';

/** Nobody waits longer for a refusal. */
const LONGEST_MS = 5000;

describe.each([
  ['design file', FILE_CASES],
  ['link', LINK_CASES],
  ['font', FONT_CASES],
] as const)('a hostile %s', (_kind, cases) => {
  test.each(cases.map((c) => [c.name, c.source, c] as const))('%s (%s)', (_name, _source, c) => {
    const started = performance.now();
    const sentence = c.read();
    expect(performance.now() - started).toBeLessThan(LONGEST_MS);
    if (c.says === undefined) expect(sentence).toBeUndefined();
    else {
      expect(sentence).toMatch(c.says);
      expect(sentence).toMatch(/^[A-Z“"].*\.$/s);
      expect(sentence?.length).toBeLessThan(400);
      // signs that turn the reading direction or do nothing visible have no place in our own sentences
      expect(sentence).not.toMatch(/[\u0000-\u001f\u202a-\u202e\u2066-\u2069]/);
    }
    expect(({} as { polluted?: unknown }).polluted).toBeUndefined();
  });
});
