import { describe, expect, it } from 'vitest';
import { seeded } from '../../geometry/sheet/seeded.ts';
import { keepsClusters } from '../../geometry/cutplan/tour/clusters.ts';
import { findTour } from '../../geometry/cutplan/tour/find-tour.ts';
import type { TourGroup } from '../../geometry/cutplan/tour/tour-group.ts';
import { OPTIMA, readInstance, roundedDistance, tsplibFolder } from './tsplib.ts';

const folder = tsplibFolder();
if (!folder) console.warn('TSPLIB checks skipped: no folder beside the project holds data/tsplib');

describe.skipIf(!folder)('published instances (TSPLIB)', () => {
  it.each(OPTIMA)('%s no more than a fiftieth over %i, never below it', (name, optimum) => {
    const points = readInstance(folder!, name);
    const { sequence, lengthMm } = findTour(
      points.map((p) => ({ points: [p] })),
      { distance: roundedDistance },
    );
    expect([...sequence].sort((a, b) => a - b)).toEqual(points.map((_, i) => i));
    expect(lengthMm).toBeGreaterThanOrEqual(optimum);
    expect(lengthMm).toBeLessThanOrEqual(optimum * 1.02);
  });

  // Lengths of the tours 1, 2 ... n: the loader reads every node.
  it.each([
    ['berlin52', 22205],
    ['eil51', 1308],
  ] as const)('the order of the file %s is as long as known', (name, length) => {
    const points = readInstance(folder!, name);
    const sum = points.reduce((mm, p, i) => mm + roundedDistance(p, points[(i + 1) % points.length]!), 0);
    expect(sum).toBe(length);
  });
});

describe('against every order and every choice of points', () => {
  it.each([1, 2, 3, 4, 5, 6])('seed %i', (seed) => {
    const groups = randomGroups(seed, 7, 3);
    const { lengthMm } = findTour(groups);
    expect(lengthMm).toBeCloseTo(leastOfAll(groups), 6);
  });
});

describe('clubs', () => {
  it.each([1, 2, 3, 4])('are visited in one go, and what belongs to none may come between: seed %i', (seed) => {
    const loose = randomGroups(seed, 60, 4);
    const groups = loose.map((g, i): TourGroup => (i % 3 === 0 ? g : { ...g, cluster: `${i % 5}` }));
    const tour = findTour(groups);
    const clubs = groups.map((g) => g.cluster);
    expect(keepsClusters(clubs, tour.sequence)).toBe(true);
    expect(new Set(tour.sequence).size).toBe(60);
    expect(tour.lengthMm).toBeGreaterThanOrEqual(findTour(loose).lengthMm * 0.999);
  });

  it('are told apart from orders that leave and take them up again', () => {
    const groups = ['a', 'b', 'a', 'b'];
    expect(keepsClusters(groups, [0, 2, 1, 3])).toBe(true);
    expect(keepsClusters(groups, [0, 1, 2, 3])).toBe(false);
    expect(keepsClusters(groups, [2, 1, 3, 0])).toBe(true);
  });
});

it('is the same tour every time', () => {
  const groups = randomGroups(9, 40, 3);
  expect(findTour(groups)).toEqual(findTour(groups));
});

function randomGroups(seed: number, count: number, most: number): TourGroup[] {
  const random = seeded(seed);
  return Array.from({ length: count }, () => {
    const [x, y] = [random() * 100, random() * 100];
    const points = Array.from({ length: 1 + Math.floor(random() * most) }, () => ({
      x: x + random() * 20,
      y: y + random() * 20,
    }));
    return { points };
  });
}

/** Each order of the groups from the first on, each choice of points. */
function leastOfAll(groups: readonly TourGroup[]): number {
  let least = Infinity;
  const walk = (order: readonly number[]): void => {
    if (order.length < groups.length) {
      groups.forEach((_, g) => !order.includes(g) && walk([...order, g]));
      return;
    }
    for (const start of groups[0]!.points) {
      let ends = [{ p: start, mm: 0 }];
      for (const g of order.slice(1))
        ends = groups[g]!.points.map((p) => ({
          p,
          mm: Math.min(...ends.map((e) => e.mm + Math.hypot(e.p.x - p.x, e.p.y - p.y))),
        }));
      for (const e of ends) least = Math.min(least, e.mm + Math.hypot(e.p.x - start.x, e.p.y - start.y));
    }
  };
  walk([0]);
  return least;
}
