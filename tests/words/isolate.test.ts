import { expect, test } from 'vitest';
import { isolate, withoutIsolates } from '../../geometry/sentences/isolate.ts';
import { t } from '../../web/words/t.ts';

// Unicode Standard Annex 9, 3.1: an isolate has no effect on the text around it; a PDI ends what was opened inside.

test('plain text, also with accents, stays as it is', () => {
  for (const text of ['Marrow Lane', 'Ærø 1999', '梅酒', '']) expect(isolate(text)).toBe(text);
});

test.each([
  ['an override that never ends', 'A\u202eB', '\u2068AB\u2069'],
  ['an end that would close ours', 'A\u2069B', '\u2068AB\u2069'],
  ['an isolate that never ends', 'A\u2067B', '\u2068A\u2067B\u2069\u2069'],
  ['Hebrew', '\u05d0\u05d1', '\u2068\u05d0\u05d1\u2069'],
  ['a quote within a quote', 'x \u2068\u05d0\u2069 y', '\u2068x \u2068\u05d0\u2069 y\u2069'],
])('%s', (_, text, isolated) => {
  expect(isolate(text)).toBe(isolated);
  expect(withoutIsolates(isolate(text))).not.toMatch(/[\u202a-\u202e\u2066-\u2069]/);
});

test('a title in a sentence of the page cannot turn the sentence round', () => {
  const said = t('begin.opened', { title: 'A\u202eliar' });
  expect(said).toBe('Opened “\u2068Aliar\u2069”. Undo brings back what was here.');
});
