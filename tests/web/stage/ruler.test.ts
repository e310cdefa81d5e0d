import { describe, expect, it } from 'vitest';
import { isBare, radiusTicks } from '../../../web/design/stage/canvas/ruler.ts';

describe('the scale along the radius', () => {
  it('puts round millimetres at least 7 px apart and figures at least 44 px apart, at any zoom', () => {
    for (const pxPerMm of [0.3, 0.7, 1, 2.5, 6, 20]) {
      const ticks = radiusTicks(250, 'mm', pxPerMm);
      const step = (ticks[1]?.mm ?? 0) - (ticks[0]?.mm ?? 0);
      expect(step * pxPerMm).toBeGreaterThanOrEqual(7);
      const figures = ticks.filter((t) => t.label !== undefined);
      for (const t of figures) expect(Number(t.label)).toBe(t.mm);
      const first = figures[0];
      if (first) expect(first.mm * pxPerMm).toBeGreaterThanOrEqual(44);
      expect(ticks.every((t) => t.mm <= 250)).toBe(true);
    }
  });

  // International inch of 1959 (exactly 25.4 mm): NIST Special Publication 811, appendix B.
  it('puts the figure 2 of an inch scale at 50.8 mm', () => {
    const two = radiusTicks(250, 'inch', 1).find((t) => t.label === '2');
    expect(two?.mm).toBeCloseTo(50.8, 12);
  });

  it('keeps figures off the openings', () => {
    const outer = [
      { x: 40, y: -5 },
      { x: 60, y: -5 },
      { x: 60, y: 5 },
      { x: 40, y: 5 },
    ];
    const openings = [{ id: 'a/0', elementIds: ['a'], word: 'a/0', region: { outer, holes: [] } }];
    expect(isBare(openings, 50, 4, 3)).toBe(false);
    expect(isBare(openings, 37, 4, 3)).toBe(false);
    expect(isBare(openings, 30, 4, 3)).toBe(true);
  });
});
