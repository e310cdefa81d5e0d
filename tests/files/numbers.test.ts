import { describe, expect, it } from 'vitest';
import { fileBulge, fileNumber } from '../../geometry/files/numbers.ts';

describe('numbers in files', () => {
  it.each([
    [0, '0'],
    [-0, '0'],
    [-0.00001, '0'],
    [0.1 + 0.2, '0.3'],
    [1e-9, '0'],
    [266.7, '266.7'],
    [-1200, '-1200'],
    [1500.00004, '1500'],
    [100, '100'],
    [0.00005, '0.0001'],
  ])('%d becomes %s', (value, text) => expect(fileNumber(value)).toBe(text));

  it.each([NaN, Infinity, -Infinity, 1e21])('refuses %d and names it', (value) => {
    expect(() => fileNumber(value, 'group 40')).toThrow(RangeError);
    expect(() => fileNumber(value, 'group 40')).toThrow(`group 40 for a file is ${value}`);
  });

  it('keeps a bulge to ten places', () => expect(fileBulge(Math.tan(Math.PI / 8))).toBe('0.4142135624'));
});
