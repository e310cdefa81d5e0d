import { describe, expect, it } from 'vitest';
import { register } from '../../geometry/cutplan/drift/registration.ts';
import { limitDeviationMm } from '../../geometry/stock/tolerances.ts';
import { UMEYAMA } from './registration-published.ts';

describe('Umeyama 1991', () => {
  it('is reproduced with scale, exactly', () => {
    const fit = register(UMEYAMA.marks, { scaled: true })!;
    const rad = (fit.turnDeg * Math.PI) / 180;
    expect(Math.cos(rad)).toBeCloseTo(3 / Math.sqrt(13), 12);
    expect(-Math.sin(rad)).toBeCloseTo(2 / Math.sqrt(13), 12);
    expect(fit.scale).toBeCloseTo(Math.sqrt(13) / 5, 12);
    expect(fit.meanSquareMm2).toBeCloseTo(8 / 15, 12);
    expect(fit.shift.x).toBeCloseTo(-0.8, 12);
    expect(fit.shift.y).toBeCloseTo(0.4, 12);
  });
  it('is the same turn without scale (the paper, worked out with numpy.linalg.svd of numpy 2.4)', () => {
    const fit = register(UMEYAMA.marks)!;
    expect(fit.shift.x).toBeCloseTo(-0.980484, 6);
    expect(fit.shift.y).toBeCloseTo(0.296867, 6);
    expect(fit.meanSquareMm2).toBeCloseTo(0.619755, 6);
  });
});

describe('limit deviations', () => {
  // ISO 9013:2017 class 1, sheet over 1 up to 3.15 mm, by a fabricator's reproduction.
  it.each([
    [2, 0.1],
    [20, 0.2],
    [100, 0.25],
    [533.4, 0.35],
  ])('of ISO 9013 class 1 in 1.5 mm: %d mm +-%d mm', (size, limit) => {
    expect(limitDeviationMm({ standard: 'ISO 9013', class: '1' }, size, 1.5)).toBe(limit);
  });
  // ISO 2768-1:1989 table 1; an upper end belongs to its band.
  it.each([
    ['f', 533.4, 0.3],
    ['m', 533.4, 0.8],
    ['c', 533.4, 2],
    ['c', 3, 0.2],
    ['m', 30, 0.2],
    ['m', 30.01, 0.3],
  ] as const)('of ISO 2768-1 %s: %d mm +-%d mm', (of, size, limit) => {
    expect(limitDeviationMm({ standard: 'ISO 2768', class: of }, size, 1.5)).toBe(limit);
  });
  it('are not guessed where the tables end', () => {
    expect(limitDeviationMm({ standard: 'ISO 9013', class: '1' }, 2, 8)).toBeUndefined();
    expect(limitDeviationMm({ standard: 'ISO 9013', class: '2' }, 100, 12)).toBeUndefined();
    expect(limitDeviationMm({ standard: 'ISO 2768', class: 'v' }, 2, 1)).toBeUndefined();
    expect(limitDeviationMm({ standard: 'ISO 2768', class: 'm' }, 0.3, 1)).toBeUndefined();
    expect(limitDeviationMm({ standard: 'ISO 2768', class: 'm' }, NaN, 1)).toBeUndefined();
  });
});
