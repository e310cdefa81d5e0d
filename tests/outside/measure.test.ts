import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import GeometryFactory from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
import DistanceOp from 'jsts/org/locationtech/jts/operation/distance/DistanceOp.js';
import { offset } from '../../geometry/adapters/clipper.ts';
import { clockAngleDeg, clockPoint, placePoint, turnPoint, unplacePoint } from '../../geometry/measure/clock.ts';
import { nearestOnSegment, ringsGap, segmentGap } from '../../geometry/measure/distance.ts';
import { flattenOutline } from '../../geometry/measure/flatten.ts';
import { perimeterMm, regionAreaMm2, regionHolds, ringHolds, signedAreaMm2 } from '../../geometry/measure/ring.ts';
import type { Outline, Point, Ring } from '../../geometry/shapes.ts';
import { MM_PER_INCH } from '../../geometry/units.ts';

const SEED = 20271;
const SQUARE: Ring = [
  { x: 0, y: 0 },
  { x: 1, y: 0 },
  { x: 1, y: 1 },
  { x: 0, y: 1 },
];
const TRIANGLE: Ring = [
  { x: 0, y: 0 },
  { x: 3, y: 0 },
  { x: 0, y: 4 },
];
const point = fc.record({
  x: fc.double({ min: -300, max: 300, noNaN: true }),
  y: fc.double({ min: -300, max: 300, noNaN: true }),
});

/** A star-shaped ring about a middle: never crosses itself. */
const star = fc
  .tuple(point, fc.array(fc.double({ min: 1, max: 60, noNaN: true }), { minLength: 3, maxLength: 14 }))
  .map(([middle, radii]): Ring =>
    radii.map((r, i) => {
      const a = (2 * Math.PI * i) / radii.length;
      return { x: middle.x + r * Math.cos(a), y: middle.y + r * Math.sin(a) };
    }),
  );

describe('units', () => {
  // International yard and pound agreement, 1959: 1 in = 25.4 mm exactly. CSS Values and Units: 1 in = 96 px = 72 pt.
  it('the inch is 25.4 mm, 96 px and 72 pt', () => {
    expect(MM_PER_INCH).toBe(25.4);
    expect(96 / MM_PER_INCH).toBeCloseTo(3.7795275591, 10);
    expect(72 / MM_PER_INCH).toBeCloseTo(2.834645669, 9);
  });
});

describe('area and length', () => {
  it('shoelace: unit square and 3-4-5 triangle, sign by direction (Euclid)', () => {
    expect(signedAreaMm2(SQUARE)).toBe(1);
    expect(signedAreaMm2(TRIANGLE)).toBe(6);
    expect(signedAreaMm2([...TRIANGLE].reverse())).toBe(-6);
    expect(perimeterMm(TRIANGLE)).toBe(12);
    expect(signedAreaMm2([])).toBe(0);
  });

  // Isoperimetric inequality: 4 pi A <= P^2, with equality for the circle only.
  it('no ring encloses more than a circle of its length', () => {
    fc.assert(
      fc.property(star, (ring) => {
        expect(4 * Math.PI * Math.abs(signedAreaMm2(ring))).toBeLessThanOrEqual(perimeterMm(ring) ** 2 * (1 + 1e-12));
      }),
      { seed: SEED },
    );
    const circle = Array.from({ length: 3600 }, (_, i) => clockPoint(100, -i / 10));
    expect((4 * Math.PI * signedAreaMm2(circle)) / perimeterMm(circle) ** 2).toBeCloseTo(1, 5);
  });

  it('a point in a hole is not in the region', () => {
    const hole = SQUARE.map((p) => ({ x: 0.4 + p.x / 5, y: 0.4 + p.y / 5 }));
    expect(regionHolds({ outer: SQUARE, holes: [hole] }, { x: 0.5, y: 0.5 })).toBe(false);
    expect(regionHolds({ outer: SQUARE, holes: [hole] }, { x: 0.2, y: 0.5 })).toBe(true);
    expect(ringHolds(SQUARE, { x: 1.2, y: 0.5 })).toBe(false);
    expect(regionAreaMm2({ outer: SQUARE, holes: [hole] })).toBeCloseTo(0.96, 12);
  });
});

describe('offset by Steiner', () => {
  // Steiner's formula for convex bodies: A' = A + P r + pi r^2, P' = P + 2 pi r (university notes). Round joins made of
  // chords fall short by no more than the arc tolerance along the round part.
  it.each<[string, Ring, number, number, number]>([
    ['unit square by 1', SQUARE, 1, 8.141592654, 10.283185307],
    ['3-4-5 triangle by 2', TRIANGLE, 2, 42.566370614, 24.566370614],
  ])('%s', (_, ring, r, area, length) => {
    const grown = offset([{ outer: ring, holes: [] }], r);
    expect(grown).toHaveLength(1);
    const outer = grown[0]?.outer ?? [];
    const short = 2 * Math.PI * r * 0.0025;
    expect(area - signedAreaMm2(outer)).toBeGreaterThan(0);
    expect(area - signedAreaMm2(outer)).toBeLessThan(short);
    expect(length - perimeterMm(outer)).toBeGreaterThan(0);
    expect(length - perimeterMm(outer)).toBeLessThan(0.02);
  });

  // Elementary: a square of side a shrunk by r is a square of side a - 2r.
  it('a shrunk square', () => {
    const big = SQUARE.map((p) => ({ x: p.x * 10, y: p.y * 10 }));
    const shrunk = offset([{ outer: big, holes: [] }], -1.5);
    expect(regionAreaMm2(shrunk[0] ?? { outer: [], holes: [] })).toBeCloseTo(49, 3);
    expect(offset([{ outer: big, holes: [] }], -5.01)).toEqual([]);
  });
});

describe('flattening', () => {
  /** Quarter circle about the origin as one cubic with the given handle length. */
  const quarter = (r: number, k: number): Outline => [
    { type: 'M', x: r, y: 0 },
    { type: 'C', x1: r, y1: k * r, x2: k * r, y2: r, x: 0, y: r },
    { type: 'L', x: 0, y: 0 },
    { type: 'Z' },
  ];

  // Published note on circles by cubics: handles of 4 (sqrt 2 - 1) / 3 = 0.5522847498 err by at most 2.72530e-4 r,
  // always outside; handles of 0.551915024494 by at most 1.9608e-4 r.
  it.each([
    [(4 * (Math.SQRT2 - 1)) / 3, 2.7253e-4],
    [0.551915024494, 1.9608e-4],
  ])('handles of %f bring a quarter circle within %f of its radius', (k, published) => {
    const ring = flattenOutline(quarter(1000, k), 1e-5)[0] ?? [];
    const errors = ring.filter((p) => p.x !== 0 || p.y !== 0).map((p) => Math.hypot(p.x, p.y) / 1000 - 1);
    expect(Math.abs(Math.max(...errors.map(Math.abs)) - published)).toBeLessThanOrEqual(1e-7);
  });

  // n = ceil(sqrt(0.75 M / tolerance)) from |B''| <= 6 M: r = 100, tolerance 0.01 gives M = 45.976 and n = 59. The
  // first side is the worst: there B'' stands off the curve by 6 r (1 - k), so the error is 6 r (1 - k) / (8 n^2).
  it('a quarter circle of 100 mm at 0.01 mm takes 59 sides, none farther than 0.01 mm from the curve', () => {
    const k = (4 * (Math.SQRT2 - 1)) / 3;
    const ring = flattenOutline(quarter(100, k), 0.01)[0] ?? [];
    expect(ring).toHaveLength(59 + 2);
    const fine = flattenOutline(quarter(100, k), 1e-7)[0] ?? [];
    let worst = 0;
    for (const p of fine) {
      let nearest = Infinity;
      ring.forEach((a, i) => {
        const q = nearestOnSegment(p, a, ring[(i + 1) % ring.length] ?? a);
        nearest = Math.min(nearest, Math.hypot(p.x - q.x, p.y - q.y));
      });
      worst = Math.max(worst, nearest);
    }
    expect(worst).toBeLessThan(0.01);
    expect(worst).toBeCloseTo((6 * 100 * (1 - k)) / (8 * 59 * 59), 4);
  });

  // A quadratic raised to a cubic is the same curve (Farin, degree elevation, from memory).
  it('a quadratic and the cubic of the same curve enclose the same area', () => {
    const area = (outline: Outline) => signedAreaMm2(flattenOutline(outline, 1e-4)[0] ?? []);
    const start = { type: 'M', x: 0, y: 0 } as const;
    const q = area([start, { type: 'Q', x1: 30, y1: 60, x: 90, y: 0 }, { type: 'Z' }]);
    const c = area([start, { type: 'C', x1: 20, y1: 40, x2: 50, y2: 40, x: 90, y: 0 }, { type: 'Z' }]);
    expect(q).toBeCloseTo(c, 1);
    // Area between a quadratic arc and its chord is two thirds of the control triangle (Archimedes).
    expect(Math.abs(q)).toBeCloseTo(((2 / 3) * (90 * 60)) / 2, 1);
  });
});

describe('clock angles', () => {
  it('three o’clock lies to the right, and a turn goes with the clock', () => {
    expect(clockPoint(10, 90)).toEqual({ x: 10, y: expect.closeTo(0, 12) as number });
    expect(clockAngleDeg({ x: -5, y: 0 })).toBe(270);
    expect(turnPoint({ x: 0, y: 1 }, 90)).toEqual({ x: 1, y: expect.closeTo(0, 12) as number });
  });

  it('placing and taking back returns the point, angles and lengths are kept', () => {
    const placement = fc.record({
      x: fc.integer({ min: -300, max: 300 }),
      y: fc.integer({ min: -300, max: 300 }),
      turnDeg: fc.integer({ min: -360, max: 360 }),
    });
    fc.assert(
      fc.property(point, placement, (p, at) => {
        const back = unplacePoint(placePoint(p, at), at);
        expect(Math.hypot(back.x - p.x, back.y - p.y)).toBeLessThan(1e-9);
        expect(Math.hypot(turnPoint(p, at.turnDeg).x, turnPoint(p, at.turnDeg).y)).toBeCloseTo(Math.hypot(p.x, p.y), 9);
      }),
      { seed: SEED },
    );
  });
});

describe('distance against a second library (jsts, the port of JTS)', () => {
  const factory = new GeometryFactory();
  const line = (points: readonly Point[]): unknown =>
    factory.createLineString(points.map((p) => new Coordinate(p.x, p.y)));
  const distance = (a: readonly Point[], b: readonly Point[]) => DistanceOp.distance(line(a), line(b)) as number;
  const closed = (ring: Ring) => [...ring, ...ring.slice(0, 1)];
  /** Eighths of a millimetre: many segments cross, touch or run along each other, none has no length. */
  const eighth = fc.integer({ min: -40, max: 40 }).map((n) => n / 8);
  const segment = fc
    .tuple(eighth, eighth, eighth, eighth)
    .filter(([ax, ay, bx, by]) => ax !== bx || ay !== by)
    .map(([ax, ay, bx, by]): [Point, Point] => [
      { x: ax, y: ay },
      { x: bx, y: by },
    ]);

  it('two segments', () => {
    fc.assert(
      fc.property(segment, segment, ([a, b], [c, d]) => {
        expect(segmentGap(a, b, c, d).mm).toBeCloseTo(distance([a, b], [c, d]), 9);
      }),
      { seed: SEED, numRuns: 2000 },
    );
  });

  it('two rings, and the connection found is as long as it says', () => {
    let near = 0;
    fc.assert(
      fc.property(star, star, (a, b) => {
        const truth = distance(closed(a), closed(b));
        const gap = ringsGap([a], [b], 50);
        if (truth < 50) near++;
        if (truth >= 50) expect(gap).toBeUndefined();
        else {
          expect(gap?.mm).toBeCloseTo(truth, 9);
          if (gap) expect(Math.hypot(gap.from.x - gap.to.x, gap.from.y - gap.to.y)).toBeCloseTo(gap.mm, 9);
        }
      }),
      { seed: SEED, numRuns: 600 },
    );
    expect(near).toBeGreaterThan(30);
  });
});
