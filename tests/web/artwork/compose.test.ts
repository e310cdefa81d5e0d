import { expect, test } from 'vitest';
import { compose } from '../../../geometry/artwork/compose.ts';
import type { Painted } from '../../../geometry/artwork/painted.ts';
import { countSteps } from '../../../geometry/measure/counted-work.ts';

const square = (x: number, y: number, size: number, tone: 'dark' | 'light' = 'dark'): Painted => ({
  outline: [
    { type: 'M', x, y },
    { type: 'L', x: x + size, y },
    { type: 'L', x: x + size, y: y + size },
    { type: 'L', x, y: y + size },
    { type: 'Z' },
  ],
  matrix: [1, 0, 0, 1, 0, 0],
  fill: { tone, rule: 'nonzero' },
});

test('many shapes are united in one run', () => {
  const grid = (n: number) => Array.from({ length: n * n }, (_, i) => square((i % n) * 2, Math.floor(i / n) * 2, 1));
  const few = countSteps(() => compose(grid(16), 'dark'));
  const many = countSteps(() => compose(grid(32), 'dark'));
  expect(many.result).toMatchObject({ openings: 1024 });
  // Four times the shapes in lines of a sweep twice as wide; united one after the other it would be 32 times.
  expect(many.steps).toBeLessThan(16 * few.steps);
});

test('light over dark over light, many times, is what painting one after the other gives', () => {
  // rings within rings: each is smaller than the last and of the other tone
  const shapes = Array.from({ length: 21 }, (_, i) => square(i, i, 100 - 2 * i, i % 2 ? 'light' : 'dark'));
  const made = compose(shapes, 'dark');
  expect(made).toMatchObject({ openings: 11, height: 100 });
});

test('a drawing of a million crossings ends with a word instead of running on', () => {
  const bars = Array.from({ length: 600 }, (_, i): Painted[] => [
    { ...square(0, 0, 1), matrix: [1000, 0, 0, 0.4, 0, i] },
    { ...square(0, 0, 1), matrix: [0.4, 0, 0, 1000, i, 0] },
  ]).flat();
  expect(compose(bars, 'dark')).toEqual({ trouble: 'tooDetailed' });
});
