import { describe, expect, it } from 'vitest';
import type { Extent } from '../../geometry/layout/placed.ts';
import { freePlace } from '../../web/state/actions/elements/free-place.ts';

const RADIUS_MM = 250;

const box = (x: number, y: number, widthMm: number, heightMm: number): Extent => ({
  kind: 'box',
  elementId: 'line',
  x,
  y,
  widthMm,
  heightMm,
  turnDeg: 0,
});
const sector = (startDeg: number, endDeg: number, innerMm: number, outerMm: number): Extent => ({
  kind: 'sector',
  elementId: 'ring',
  startDeg,
  endDeg,
  innerMm,
  outerMm,
});

/** Points all over a drawing of that place, mm. */
function points({ x, y, size }: { x: number; y: number; size: number }, width: number): { x: number; y: number }[] {
  const shares = Array.from({ length: 21 }, (_, i) => i / 20 - 0.5);
  return shares.flatMap((u) =>
    shares.map((v) => ({ x: (x + u * size * width) * RADIUS_MM, y: (y + v * size) * RADIUS_MM })),
  );
}

describe('a free place for a drawing', () => {
  it('is the middle of an empty plate, at the size asked for', () => {
    expect(freePlace([], RADIUS_MM, 0.5, 1)).toEqual({ x: 0, y: 0, size: 0.5 });
  });
  it.each([0.4, 1, 2.5])('%f times as wide as high: clear of a line in the middle and of ring texts', (width) => {
    const extents = [box(0, 10, 220, 60), sector(-80, 80, 180, 225), sector(210, 150, 180, 225)];
    const place = freePlace(extents, RADIUS_MM, 0.5, width);
    expect(place.size).toBeGreaterThan(0.12);
    for (const p of points(place, width)) {
      expect(Math.abs(p.x) > 110 || Math.abs(p.y - 10) > 30).toBe(true);
      const away = Math.hypot(p.x, p.y);
      expect(away).toBeLessThan(RADIUS_MM * 0.95);
      const deg = (Math.atan2(p.x, p.y) * 180) / Math.PI;
      if (away >= 180 && away <= 225) expect(Math.abs(deg) > 80 && Math.abs(deg) < 150).toBe(true);
    }
  });
  it('is on the upright through the middle where that is as good', () => {
    expect(freePlace([box(0, 60, 300, 80)], RADIUS_MM, 0.3, 1).x).toBe(0);
  });
  it('keeps away from a whole ring, wherever its count of degrees begins', () => {
    const place = freePlace([sector(90, 450, 60, 240)], RADIUS_MM, 0.5, 1);
    expect(Math.hypot(place.x, place.y) + place.size / 2).toBeLessThan(60 / RADIUS_MM);
  });
  it('is the middle all the same where everything is taken', () => {
    expect(freePlace([box(0, 0, 500, 500)], RADIUS_MM, 0.5, 1)).toEqual({ x: 0, y: 0, size: 0.5 });
  });
});
