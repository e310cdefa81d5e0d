import { describe, expect, it } from 'vitest';
import { slugChances } from '../../geometry/cutplan/slugs.ts';
import type { Contour, Point } from '../../geometry/shapes.ts';

const SLATS = { pitchMm: 40, edgeMm: 4 };

function box(width: number, height: number): Contour {
  return [
    { x: 0, y: 0, bulge: 0 },
    { x: width, y: 0, bulge: 0 },
    { x: width, y: height, bulge: 0 },
    { x: 0, y: height, bulge: 0 },
  ];
}

/**
 * A rectangle w wide, narrower than the gap of slats e wide and p apart: it meets no slat at (p - e - w) of p offsets,
 * and one slat is under its middle at e of p; at the rest one side lies on a slat beyond which at most RISE_MM or more
 * of it stands out. Worked out by hand from where the left end of the piece can be.
 */
describe('rectangles, by hand', () => {
  it.each([
    [10, 20],
    [20, 5],
    [30, 30],
  ])('%i by %i mm', (w, h) => {
    const { drops, lies, tips } = slugChances(box(w, h), SLATS);
    const { pitchMm: p, edgeMm: e } = SLATS;
    expect(lies).toBeCloseTo(e / p, 1.5);
    // On each side so long as the slat covers the end only, or comes up to a millimetre in.
    expect(drops).toBeCloseTo((p - e - w + 2 * 1) / p, 1.5);
    expect(drops + lies + tips).toBeCloseTo(1, 9);
  });

  it('wider than pitch and slat together it always lies', () => {
    expect(slugChances(box(90, 30), SLATS).lies).toBe(1);
  });

  it('turned along the slats a strip seldom meets one, across them it lies or tips', () => {
    const along = slugChances(box(4, 60), SLATS);
    const across = slugChances(box(60, 4), SLATS);
    expect(along.drops).toBeGreaterThan(0.75);
    expect(across.drops).toBe(0);
  });

  it('rises no higher than half its width when its own middle lies just off a slat', () => {
    const { riseMm } = slugChances(box(30, 30), SLATS);
    expect(riseMm).toBeGreaterThan(14);
    expect(riseMm).toBeLessThanOrEqual(15);
  });

  it('drops where there are no slats', () => {
    expect(slugChances(box(30, 30), { pitchMm: 0, edgeMm: 0 })).toEqual({ drops: 1, lies: 0, tips: 0, riseMm: 0 });
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
    expect(Math.abs(slugChances(contour, SLATS).lies - liesByDots(shape))).toBeLessThan(0.03);
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
