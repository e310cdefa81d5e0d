import { describe, expect, it } from 'vitest';
import { contourAreaMm2, contourLengthMm, contourToRing } from '../../geometry/measure/arc.ts';
import { nearestOnSegment } from '../../geometry/measure/distance.ts';
import { fitArcs } from '../../geometry/measure/fit-arcs.ts';
import { perimeterMm, signedAreaMm2 } from '../../geometry/measure/ring.ts';
import type { Point, Ring } from '../../geometry/shapes.ts';
import { ARC_FIT_ERROR_MM, GRID_MM } from '../../geometry/units.ts';
import { circleRing, halfLetter, letterL, mirrored } from '../files/hand-plate.ts';
import { seeded } from '../judge/seeded.ts';

/** Chords so fine that they stand for the arcs themselves. */
const FINE_MM = 0.0002;

/** Greatest distance from points all along one ring to another ring. */
function farthestMm(from: Ring, to: Ring): number {
  let worst = 0;
  from.forEach((a, i) => {
    const b = from[(i + 1) % from.length]!;
    for (let k = 0; k < 4; k++) {
      const p = { x: a.x + ((b.x - a.x) * k) / 4, y: a.y + ((b.y - a.y) * k) / 4 };
      let least = Infinity;
      to.forEach((c, j) => {
        const q = nearestOnSegment(p, c, to[(j + 1) % to.length]!);
        least = Math.min(least, Math.hypot(q.x - p.x, q.y - p.y));
      });
      worst = Math.max(worst, least);
    }
  });
  return worst;
}

function expectFits(ring: Ring, error = ARC_FIT_ERROR_MM): number {
  const contour = fitArcs(ring, error);
  const back = contourToRing(contour, FINE_MM);
  expect(farthestMm(ring, back)).toBeLessThan(error + 2 * FINE_MM);
  expect(farthestMm(back, ring)).toBeLessThan(error + 2 * FINE_MM);
  expect(Math.sign(contourAreaMm2(contour))).toBe(Math.sign(signedAreaMm2(ring)));
  for (const v of contour) expect([v.x, v.y, v.bulge].every(Number.isFinite) && Math.abs(v.bulge) <= 1).toBe(true);
  return contour.length;
}

const turned = (ring: Ring, rad: number): Ring =>
  ring.map((p) => ({ x: p.x * Math.cos(rad) - p.y * Math.sin(rad), y: p.x * Math.sin(rad) + p.y * Math.cos(rad) }));

describe('fitArcs', () => {
  it.each([0.5, 3, 25, 266.7])('makes a circle of radius %d two half circles of that radius', (radius) => {
    const contour = fitArcs(circleRing(12, -7, radius), ARC_FIT_ERROR_MM);
    expect(contour.map((v) => v.bulge)).toEqual([1, 1]);
    expect(Math.hypot(contour[0]!.x - contour[1]!.x, contour[0]!.y - contour[1]!.y) / 2).toBeCloseTo(radius, 3);
    expect(fitArcs([...circleRing(0, 0, radius)].reverse(), ARC_FIT_ERROR_MM).map((v) => v.bulge)).toEqual([-1, -1]);
  });

  it('leaves straight sides and their corners exactly as they are', () => {
    const l = letterL(3, 4, 40);
    const contour = fitArcs(l, ARC_FIT_ERROR_MM);
    expect(contour.every((v) => v.bulge === 0)).toBe(true);
    const key = (p: Point) => `${p.x},${p.y}`;
    expect(contour.map(key).sort()).toEqual(l.map(key).sort());
  });

  it('keeps a regular hexagon a hexagon', () => {
    const hexagon = Array.from({ length: 6 }, (_, i) => ({
      x: 20 * Math.cos((i * Math.PI) / 3),
      y: 20 * Math.sin((i * Math.PI) / 3),
    }));
    expect(fitArcs(hexagon, ARC_FIT_ERROR_MM).map((v) => v.bulge)).toEqual([0, 0, 0, 0, 0, 0]);
  });

  it.each([10, 40, 200])(
    'holds half a letter O of %d mm both ways within the error, in under a quarter of its points',
    (height) => {
      const ring = halfLetter(5, -3, height);
      expect(expectFits(ring)).toBeLessThan(ring.length / 4);
      expect(expectFits(mirrored(ring))).toBeLessThan(ring.length / 4);
    },
  );

  it('keeps the bars of a bridged letter: its four corners are vertices', () => {
    const ring = halfLetter(0, 0, 60);
    const contour = fitArcs(ring, ARC_FIT_ERROR_MM);
    for (const [x, y] of [
      [0.08, -1],
      [0.08, 1],
      [0.08, 0.86],
      [0.08, -0.86],
    ] as const) {
      const gap = Math.min(...contour.map((v) => Math.hypot(v.x - x * 30, v.y - y * 30)));
      expect(gap).toBeLessThan(2 * GRID_MM);
    }
  });

  it('knows an arc cut short by bars: a ring border between two bridges is two arcs and two lines', () => {
    const points = (r: number, a: number, b: number) =>
      Array.from({ length: 121 }, (_, i) => ({
        x: r * Math.cos(a + ((b - a) * i) / 120),
        y: r * Math.sin(a + ((b - a) * i) / 120),
      }));
    const ring = [...points(200, 0.1, 1.4), ...points(195, 1.4, 0.1)];
    expect(expectFits(ring)).toBe(4);
  });

  it.each([1, 2, 3, 4, 5, 6])('holds wavy outlines with grid noise and tiny edges, seed %d', (seed) => {
    const chance = seeded(seed);
    const random = () => chance.next();
    const [a, b, c] = [random(), random(), random()].map((v) => v * 0.25);
    const raw: Point[] = [];
    for (let i = 0; i < 400; i++) {
      const t = (i / 400) * 2 * Math.PI;
      const r = 15 * (1 + a! * Math.sin(2 * t) + b! * Math.cos(3 * t + 1) + (c! / 3) * Math.sin(5 * t));
      raw.push({ x: r * Math.cos(t), y: r * Math.sin(t) });
      // What boolean operations leave: a second point a grid step or two away.
      if (random() < 0.1) raw.push({ x: r * Math.cos(t) + 2e-4, y: r * Math.sin(t) + 1e-4 });
    }
    const ring = raw.map((p) => ({ x: Math.round(p.x / GRID_MM) * GRID_MM, y: Math.round(p.y / GRID_MM) * GRID_MM }));
    expect(expectFits(ring)).toBeLessThan(60);
  });

  it.each([1, 2, 3, 4])('holds star-shaped polygons of random corners, seed %d', (seed) => {
    const chance = seeded(100 + seed);
    const random = () => chance.next();
    const ring = Array.from({ length: 40 }, (_, i) => {
      const r = 2 + 20 * random();
      return { x: r * Math.cos((i * Math.PI) / 20), y: r * Math.sin((i * Math.PI) / 20) };
    });
    expectFits(ring);
  });

  it('turns with the outline: count and area stay', () => {
    const ring = halfLetter(0, 0, 50);
    const straight = fitArcs(ring, ARC_FIT_ERROR_MM);
    for (const rad of [0.3, 1, 2.5]) {
      const contour = fitArcs(turned(ring, rad), ARC_FIT_ERROR_MM);
      expect(contour.length).toBe(straight.length);
      expect(contourAreaMm2(contour)).toBeCloseTo(contourAreaMm2(straight), 3);
    }
  });

  it('keeps area and length', () => {
    const ring = halfLetter(0, 0, 120);
    const contour = fitArcs(ring, ARC_FIT_ERROR_MM);
    expect(Math.abs(contourAreaMm2(contour) / signedAreaMm2(ring) - 1)).toBeLessThan(1e-3);
    expect(Math.abs(contourLengthMm(contour) / perimeterMm(ring) - 1)).toBeLessThan(1e-3);
  });

  it('gives nothing for what encloses nothing, and refuses what is no number', () => {
    expect(fitArcs([], ARC_FIT_ERROR_MM)).toEqual([]);
    const flat = [
      { x: 0, y: 0 },
      { x: 5, y: 0 },
      { x: 9, y: 0 },
    ];
    expect(fitArcs(flat, ARC_FIT_ERROR_MM)).toEqual([]);
    expect(
      fitArcs(
        Array.from({ length: 9 }, () => ({ x: 1, y: 1 })),
        ARC_FIT_ERROR_MM,
      ),
    ).toEqual([]);
    expect(() => fitArcs([{ x: NaN, y: 0 }, ...flat], ARC_FIT_ERROR_MM)).toThrow(RangeError);
    expect(() => fitArcs(flat, 0)).toThrow(RangeError);
  });
});
