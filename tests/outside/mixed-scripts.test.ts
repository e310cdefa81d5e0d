import { describe, expect, it } from 'vitest';
import { isMixed, scriptsOf } from '../../geometry/checks/lettering/scripts.ts';
import { codesOf, mended } from '../checks/lettering/read.ts';

// Unicode Technical Standard 39, Unicode Security Mechanisms, table 1a (mixed script examples).
describe('words of UTS 39, table 1a', () => {
  it.each([
    ['Circle', false],
    ['\u0421\u0456\u0433\u0441\u04c0\u0435', false],
    ['\u0421ir\u0441l\u0435', true],
    ['Circ1e', false],
    ['C\u{1d5c2}\u{1d5cb}\u{1d5bc}\u{1d5c5}\u{1d5be}', false],
    ['\u{1d5a2}\u{1d5c2}\u{1d5cb}\u{1d5bc}\u{1d5c5}\u{1d5be}', false],
    ['\u3006\u5207', false],
    ['\u306d\u30ac', false],
  ])('%s: mixed %s', (word, mixed) => {
    expect(isMixed(word)).toBe(mixed);
  });
  it('counts Han as what it is mixed with (section 5.1, augmented script sets)', () => {
    expect(scriptsOf('\u5207')).toEqual(new Set(['Han', 'Japanese', 'Korean', 'Han with Bopomofo']));
    expect(isMixed('\ud55c\u6f22')).toBe(false);
  });
});

it('sees the whole-script confusable of UTS 39, section 4 (scope in Cyrillic), among Latin words', () => {
  expect(codesOf('the \u0455\u0441\u043e\u0440\u0435')).toEqual(['look disguised-word']);
  expect(mended('the \u0455\u0441\u043e\u0440\u0435')).toBe('the scope');
});
