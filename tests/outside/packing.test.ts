import { describe, expect, it } from 'vitest';
import { countBound } from '../../geometry/sheet/count-bound.ts';
import { nest } from '../../geometry/sheet/nest.ts';
import { packEqual } from '../sheet/pack-equal.ts';
import { layRows } from '../../geometry/sheet/rows.ts';
import { SQUARE_RADII } from '../sheet/published-circles.ts';

describe('equal circles in a square against the published table (see published-circles.ts)', () => {
  it.each(SQUARE_RADII.map((radius, i) => [i + 1, radius] as const))('%i circles', (count, radius) => {
    const discs = packEqual(count, 1, 1);
    expect(discs).toHaveLength(count);
    const clear = Math.min(
      ...discs.flatMap((a, i) => [
        Math.min(a.x, a.y, 1 - a.x, 1 - a.y),
        ...discs.slice(i + 1).map((b) => Math.hypot(a.x - b.x, a.y - b.y) / 2),
      ]),
    );
    // what is measured from the centres is what is told, and no more than is possible
    expect(discs[0]?.r).toBeLessThanOrEqual(clear * (1 + 1e-12));
    expect(clear / radius).toBeGreaterThan(1 - 0.005);
    expect(clear / radius).toBeLessThan(1 + 1e-9);
  });

  it('the table itself agrees with its closed forms', () => {
    const forms: Record<number, number> = {
      2: 1 / (2 + Math.SQRT2),
      3: (Math.sqrt(6) - Math.SQRT2) / (2 * (1 + Math.sqrt(6) - Math.SQRT2)),
      5: (Math.SQRT2 - 1) / 2,
      6: Math.sqrt(13) / 6 / (2 * (1 + Math.sqrt(13) / 6)),
      7: 1 / (4 + Math.sqrt(3)),
      8: 1 / (2 + Math.SQRT2 + Math.sqrt(6)),
      9: 1 / 6,
      16: 1 / 8,
    };
    for (const [count, form] of Object.entries(forms)) expect(SQUARE_RADII[Number(count) - 1]).toBeCloseTo(form, 10);
  });

  it.each([5, 7, 10, 13, 17, 19])(
    '%i plates half a per cent smaller lie on one sheet; a little larger, never',
    (count) => {
      const diameterMm = 2 * 1000 * (SQUARE_RADII[count - 1] ?? 0);
      const place = (share: number) =>
        nest(
          [{ id: 'a', diameterMm: diameterMm * share, quantity: count }],
          [{ id: 'square', widthMm: 1000, heightMm: 1000 }],
          { betweenMm: 0, edgeMm: 0 },
        ).sheets.length;
      expect(place(1 - 0.005)).toBe(1);
      expect(place(1 + 1e-5)).toBe(2);
    },
  );
});

describe('upper bound of Groemer (Math. Zeitschrift 73, 1960) and Oler (Acta Mathematica 105, 1961)', () => {
  it('is met by one row of discs and by a rhombus of them, and never beaten by rows', () => {
    expect(countBound({ minX: 0, minY: 0, maxX: 70, maxY: 10 }, 5)).toBe(7);
    for (let i = 0; i < 300; i++) {
      const [w, h, r] = [300 + ((i * 137) % 1900), 300 + ((i * 211) % 2700), 20 + ((i * 17) % 130)];
      const room = { minX: 0, minY: 0, maxX: w, maxY: h };
      const bound = countBound(room, r);
      expect(layRows(room, r)[0]?.length ?? 0).toBeLessThanOrEqual(bound);
    }
  });
  it('is not beaten by the published packings, which lie under it', () => {
    const room = { minX: 0, minY: 0, maxX: 1, maxY: 1 };
    SQUARE_RADII.forEach((radius, i) => expect(countBound(room, radius * (1 - 1e-9))).toBeGreaterThanOrEqual(i + 1));
  });
});
