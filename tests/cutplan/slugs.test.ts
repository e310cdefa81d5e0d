import { describe, expect, it } from 'vitest';
import { computeLeaningMm, computeSlugChances } from '../../geometry/cutplan/sheet/slugs.ts';
import type { Contour, Point } from '../../geometry/shapes.ts';
import { barContour, discContour, highestBySlopes, symmetricByHand } from './slugs-by-hand.ts';

const SLATS = { pitchMm: 40, edgeMm: 4 };

function contourOf(points: readonly (readonly [number, number])[]): Contour {
  return points.map(([x, y]) => ({ x, y, bulge: 0 }));
}

describe('discs and bars, by hand', () => {
  const { pitchMm: p, edgeMm: e } = SLATS;
  const g = p - e;

  it.each([
    ['bar', 10, barContour(10, 20)],
    ['bar', 30, barContour(30, 5)],
    ['disc', 20, discContour(20)],
    ['disc', 36, discContour(36)],
  ])('%s, %i mm wide, no wider than the gap: it drops unless a slat is under its middle', (_, w, piece) => {
    const { drops, lies, tips, riseMm } = computeSlugChances(piece, SLATS);
    expect(lies).toBeCloseTo(symmetricByHand(w, SLATS).lies, 2);
    expect(lies).toBeCloseTo(e / p, 2);
    expect(drops).toBeCloseTo(1 - e / p, 2);
    expect([tips, riseMm]).toEqual([0, 0]);
  });

  it.each([
    ['bar', 50, barContour(50, 6)],
    ['bar', 60, barContour(60, 30)],
    ['disc', 44, discContour(44)],
    ['disc', 66, discContour(66)],
  ])('%s, %i mm wide, wider than the gap: it tips where it reaches one slat only', (_, w, piece) => {
    const { drops, lies, tips, riseMm } = computeSlugChances(piece, SLATS);
    const want = symmetricByHand(w, SLATS);
    expect(lies).toBeCloseTo(want.lies, 2);
    expect(tips).toBeCloseTo(want.tips, 2);
    expect(drops).toBeCloseTo(want.drops, 2);
    expect(riseMm).toBeCloseTo(highestBySlopes(w, g), 3);
  });

  it.each([['bar', barContour(2 * g + 0.5, 6)] as const, ['disc', discContour(120)] as const])(
    'a %s of two gaps and more always lies',
    (_, piece) => expect(computeSlugChances(piece, SLATS).lies).toBeCloseTo(1, 2),
  );

  it('is in nobody’s way where the end that comes up stays under the head', () => {
    // 38.5 mm over a gap of 36: (11.40 - 10.90)^1.5 = 0.35 mm.
    expect(computeLeaningMm(38.5, g)).toBeCloseTo(0.35, 1);
    expect(computeSlugChances(barContour(38.5, 10), SLATS).tips).toBe(0);
  });

  it('hangs from a bar that slats carry at both ends when its weight hangs beside it', () => {
    // A bar 80 by 4 with a block 10 by 30 under its middle: the centre is 6.2 mm under the bar's lower edge. A slat
    // under the block (10 + 4 of 40 offsets) carries it; else it hangs from the lower edge, the bar stands 4 mm up.
    const piece = contourOf([
      [0, 0],
      [35, 0],
      [35, -30],
      [45, -30],
      [45, 0],
      [80, 0],
      [80, 4],
      [0, 4],
    ]);
    const { lies, tips, riseMm } = computeSlugChances(piece, SLATS);
    expect(lies).toBeCloseTo((10 + e) / p, 2);
    expect(tips).toBeCloseTo(1 - (10 + e) / p, 2);
    expect(riseMm).toBeCloseTo(4, 6);
  });

  it('drops where there are no slats', () => {
    expect(computeSlugChances(barContour(30, 30), { pitchMm: 0, edgeMm: 0 })).toEqual({
      drops: 1,
      lies: 0,
      tips: 0,
      riseMm: 0,
    });
  });
});

/** The same model worked out another way: the piece as thousands of dots, what carries it as their convex hull. */
describe('odd shapes, as dots', () => {
  const hook: Point[] = [
    [0, 0],
    [50, 0],
    [50, 8],
    [12, 8],
    [12, 40],
    [0, 40],
  ].map(([x, y]) => ({ x: x!, y: y! }));
  const wedge: Point[] = [
    [0, 0],
    [36, 4],
    [10, 25],
  ].map(([x, y]) => ({ x: x!, y: y! }));
  it.each([
    ['hook', hook],
    ['wedge', wedge],
  ])('%s lies as often', (_, shape) => {
    const contour = shape.map((p) => ({ ...p, bulge: 0 }));
    expect(Math.abs(computeSlugChances(contour, SLATS).lies - liesByDots(shape))).toBeLessThan(0.03);
  });
});

function liesByDots(shape: readonly Point[]): number {
  const dots: Point[] = [];
  for (let x = 0.25; x < 60; x += 0.5)
    for (let y = 0.25; y < 60; y += 0.5) if (inside(shape, x, y)) dots.push({ x, y });
  const centre = {
    x: dots.reduce((s, d) => s + d.x, 0) / dots.length,
    y: dots.reduce((s, d) => s + d.y, 0) / dots.length,
  };
  const { pitchMm, edgeMm } = SLATS;
  let lies = 0;
  for (let i = 0; i < 80; i++) {
    const offset = ((i + 0.5) / 80) * pitchMm;
    const carried = dots.filter((d) => {
      const m = (((d.x - offset + edgeMm / 2) % pitchMm) + pitchMm) % pitchMm;
      return m <= edgeMm;
    });
    // In the hull when in no direction all that carries lies on one side of the centre.
    const held = Array.from({ length: 180 }, (_, k) => (k * 2 * Math.PI) / 180).every((rad) =>
      carried.some((d) => (d.x - centre.x) * Math.cos(rad) + (d.y - centre.y) * Math.sin(rad) >= 0),
    );
    if (held && carried.length > 0) lies++;
  }
  return lies / 80;
}

function inside(shape: readonly Point[], x: number, y: number): boolean {
  let odd = false;
  shape.forEach((a, i) => {
    const b = shape[(i + 1) % shape.length]!;
    if (a.y > y !== b.y > y && x < ((b.x - a.x) * (y - a.y)) / (b.y - a.y) + a.x) odd = !odd;
  });
  return odd;
}
