import { describe, expect, it } from 'vitest';
import type { Lead } from '../../geometry/cutplan/plate/lead-ins.ts';
import { AROUND_SHARE, createGapMeasure } from '../../geometry/cutplan/sheet/opening-gap.ts';
import type { PreparedOpening } from '../../geometry/cutplan/sheet/prepared-opening.ts';
import { listVisitOptions } from '../../geometry/cutplan/sheet/visit-options.ts';

/** A square opening of 10 mm about a middle, cut counter-clockwise from the middle of its lower side. */
function square(id: string, x: number, y: number, word = id): { opening: PreparedOpening; lead: Lead } {
  const path = [
    { x: x - 5, y: y - 5, bulge: 0 },
    { x: x + 5, y: y - 5, bulge: 0 },
    { x: x + 5, y: y + 5, bulge: 0 },
    { x: x - 5, y: y + 5, bulge: 0 },
  ];
  const at = { x, y: y - 5 };
  const pierce = { x, y: y - 3 };
  const lead = { pierce, run: [], start: { side: 0, share: 0.5, at, along: { x: 1, y: 0 } }, cost: 0 };
  const outer = { id, net: path, path, leads: [lead], lengthMm: 40 };
  return { opening: { id, word, isLoose: false, inset: { outer: path, holes: [] }, inner: [], outer }, lead };
}

describe('the way from one opening to the next', () => {
  const [first, above, below] = [square('a', 0, 0), square('b', 0, 40), square('c', 0, -40)];
  const gap = createGapMeasure([first.opening, above.opening, below.opening]);

  it('is straight away from the piece just cut', () => expect(gap(0, 0, 2, 0)).toBeCloseTo(38, 9));
  it('is longer by a share of what it would pass over that piece', () => {
    // From y -5 to y 37, of which 10 mm are the piece, less the 0.2 mm that the ray begins inside it.
    const over = 10 - 0.2;
    expect(gap(0, 0, 1, 0)).toBeCloseTo(42 + AROUND_SHARE * over, 6);
  });
  it('is nothing where the next is pierced where the last one ended', () => {
    const here = { ...first.lead, pierce: first.lead.start.at };
    const there = { ...above.opening, outer: { ...above.opening.outer, leads: [here] } };
    expect(createGapMeasure([first.opening, there])(0, 0, 1, 0)).toBe(0);
  });
});

describe('a round, begun at each of its words', () => {
  const parts = [square('a', 0, 0, 'one'), square('b', 20, 0, 'one'), square('c', 60, 0, 'two')];
  const plate = {
    plate: { id: 'p#1' },
    prepared: { openings: parts.map((p) => p.opening) },
    rounds: [{ sequence: [0, 1, 2] }],
    leads: [parts.map((p) => p.lead)],
  };
  const options = (last: readonly string[] = []) => listVisitOptions(plate, 0, (p) => p, new Set(last));

  it('is as long as the ways between its openings add up to', () => {
    const mm = (dx: number) => Math.hypot(dx, 2);
    expect(options().map((o) => o.sequence)).toEqual([
      [0, 1, 2],
      [2, 0, 1],
    ]);
    expect(options().map((o) => o.lengthMm)).toEqual([mm(20) + mm(40), mm(60) + mm(20)]);
  });
  it('leaves words that come last for its end', () => {
    expect(options(['p#1/one']).map((o) => o.sequence)).toEqual([
      [2, 0, 1],
      [2, 0, 1],
    ]);
  });
});
