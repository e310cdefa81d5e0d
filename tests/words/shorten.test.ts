import { describe, expect, it } from 'vitest';
import { callElement } from '../../geometry/checks/words.ts';
import { newRingText } from '../../geometry/design/defaults.ts';
import { visible } from '../../geometry/design/visible.ts';
import { oneLine } from '../../geometry/files/plain-text.ts';
import { beginningOf, shorten, shortText } from '../../geometry/sentences/shorten.ts';

/** Texts whose signs are several code points or UTF-16 units long. */
const TEXTS = [
  'PERRY & PERRY, MARROW LANE, 1888',
  '\u{1f942}'.repeat(12),
  'Cafe\u0301 cre\u0300me bru\u0302le\u0301e a\u0300 la carte',
  '\u{1f1eb}\u{1f1f7}\u{1f1e9}\u{1f1ea}\u{1f1ea}\u{1f1f8}'.repeat(3),
  '\u{1f468}\u200d\u{1f469}\u200d\u{1f467}\u200d\u{1f466} '.repeat(4),
  '\u{1f44d}\u{1f3fd}\u{1f44d}\u{1f3ff}'.repeat(5),
  '\u{1f3f4}\u{e0067}\u{e0062}\u{e0073}\u{e0063}\u{e0074}\u{e007f}'.repeat(3),
  '1\ufe0f\u20e32\ufe0f\u20e3'.repeat(6),
  '\u1112\u1161\u11ab\u1100\u1173\u11af'.repeat(6),
  'Z\u0351\u036b\u0343\u036a\u0302\u036b\u033d\u034f\u0334\u0319a\u0301lgo'.repeat(3),
  'line\r\nline\r\nline\r\nline\r\nline',
];

describe('the beginning of a text', () => {
  it.each(TEXTS)('of %j ends where a sign ends, at every length', (text) => {
    // judge: Intl.Segmenter, that is Unicode Standard Annex 29 as ICU has it
    const signs = [...new Intl.Segmenter('en', { granularity: 'grapheme' }).segment(text)];
    const ends = new Set([0, ...signs.map(({ index, segment }) => index + segment.length)]);
    for (let most = 0; most <= text.length; most++) {
      const longest = Math.max(...[...ends].filter((end) => end <= most));
      expect(beginningOf(text, most)).toBe(text.slice(0, longest));
    }
  });
  it('leaves a short text alone and ends a long one with an ellipsis within the limit', () => {
    expect(shorten('PERRY', 5)).toBe('PERRY');
    expect(shorten('PERRY & SONS', 7)).toBe('PERRY\u2026');
    expect(shorten('PERRY & SONS', 8, '...')).toBe('PERRY...');
    expect(shortText('  MARROW \n LANE  ')).toBe('MARROW LANE');
    for (const text of TEXTS) expect(shorten(text, 20).length).toBeLessThanOrEqual(20);
  });
  it('is what sentences, quotes and files show: no half of a pair of surrogates', () => {
    const text = `x${'\u{1f942}'.repeat(200)}`;
    const element = { ...newRingText('a', 'stardos-stencil-400'), text };
    const said = [callElement([element], 'a').english, visible(text), oneLine(text, 60), shortText(text)];
    for (const one of said) expect(one).not.toMatch(/\p{Cs}/u);
  });
});
