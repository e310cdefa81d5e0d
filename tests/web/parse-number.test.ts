import { describe, expect, it } from 'vitest';
import { formatLength, lengthWords } from '../../web/words/say/format-number.ts';
import { parseLengthMm, parseNumber } from '../../web/words/say/parse-number.ts';

describe('numbers as people type them', () => {
  it.each([
    ['12', 12],
    ['12.5', 12.5],
    ['12,5', 12.5],
    [' 12,50 ', 12.5],
    ['+3', 3],
    ['-4', -4],
    ['\u22124', -4],
    ['.5', 0.5],
    ['5.', 5],
    ['0,125', 0.125],
    ['1 234', 1234],
    ['1 234,5', 1234.5],
    ['1,234.5', 1234.5],
    ['1.234,5', 1234.5],
    ['12\u00a0345', 12345],
  ])('%s is %d', (typed, value) => {
    expect(parseNumber(typed)).toEqual({ value });
  });

  it.each([
    ['', 'empty'],
    ['   ', 'empty'],
    ['abc', 'not-a-number'],
    ['12a', 'not-a-number'],
    ['1e5', 'not-a-number'],
    ['Infinity', 'not-a-number'],
    ['NaN', 'not-a-number'],
    ['0x10', 'not-a-number'],
    ['--2', 'not-a-number'],
    ['1.2.3', 'not-a-number'],
    ['1,2,3', 'not-a-number'],
    ['.', 'not-a-number'],
    ['1,250', 'which-comma'],
    ['-12,000', 'which-comma'],
  ])('%j is refused: %s', (typed, problem) => {
    expect(parseNumber(typed)).toEqual({ problem });
  });
});

describe('lengths', () => {
  it.each([
    ['533.4', 'mm', 533.4],
    ['21', 'inch', 533.4],
    ['21 in', 'mm', 533.4],
    ['21"', 'mm', 533.4],
    ['533,4 mm', 'inch', 533.4],
    ['53.34cm', 'inch', 533.4],
    ['20 1/2', 'inch', 520.7],
    ['20-1/2', 'inch', 520.7],
    ['7/16 in', 'mm', 11.1125],
  ] as const)(
    '%s in a field of %s is %d mm (1 in = 25.4 mm exactly, international inch of 1959)',
    (typed, unit, mm) => {
      const parsed = parseLengthMm(typed, unit);
      if (!('value' in parsed)) throw new Error(parsed.problem);
      expect(parsed.value).toBeCloseTo(mm, 9);
    },
  );

  it.each([
    ['1/0', 'not-a-number'],
    ['mm', 'empty'],
    ['5 feet', 'not-a-number'],
  ])('%s is refused: %s', (typed, problem) => {
    expect(parseLengthMm(typed, 'inch')).toEqual({ problem });
  });

  it('are shown without needless noughts, and read back as they were', () => {
    expect(formatLength(520, 'mm')).toBe('520');
    expect(formatLength(520.7, 'inch')).toBe('20.5');
    expect(lengthWords(1.5, 'mm')).toBe('1.5 mm');
    for (const mm of [1.5, 38.1, 256.5, 533.4]) {
      const parsed = parseLengthMm(formatLength(mm, 'inch'), 'inch');
      if (!('value' in parsed)) throw new Error(parsed.problem);
      // three decimals of an inch
      expect(Math.abs(parsed.value - mm)).toBeLessThanOrEqual(0.0005 * 25.4 + 1e-9);
    }
  });
});
