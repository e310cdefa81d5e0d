import { describe, expect, it } from 'vitest';
import type { Opening } from '../../geometry/bridges/types.ts';
import { placeLifting } from '../../geometry/checks/place-lifting.ts';
import { FINGER_HOLE_MM } from '../../geometry/layout/lifting.ts';
import { clockPoint } from '../../geometry/measure/clock.ts';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';
import { stockRules } from '../../geometry/stock/stock-rules.ts';

const { rules } = stockRules(
  { material: 'stainless-304', thicknessMm: 1.5, process: 'fibre-laser', use: 'paint' },
  'auto',
  BUILT_IN,
);
const DIAMETER_MM = 400;

/** Where the first hole goes when an opening leaves so much metal beside the place at the right. */
function firstDeg(metalMm: number, leastWebMm: number, leastBridgeMm: number): number | undefined {
  const free = placeLifting({ openings: [], rules, diameterMm: DIAMETER_MM })!;
  const [x, y] = [(free.at * DIAMETER_MM) / 2, FINGER_HOLE_MM / 2 + metalMm];
  const outer = [
    { x: x - 1, y },
    { x: x + 1, y },
    { x: x + 1, y: y + 2 },
    { x: x - 1, y: y + 2 },
  ];
  const opening: Opening = { id: 'o', elementIds: ['name'], word: 'name/0', region: { outer, holes: [] } };
  const lifting = placeLifting({
    openings: [opening],
    rules: { ...rules, leastWebMm, leastBridgeMm },
    diameterMm: DIAMETER_MM,
  });
  return lifting?.firstDeg;
}

/** A round hole in a sheet of openings, about the middle: metal only within it. */
function metalWithin(radiusMm: number): Opening {
  const circle = (r: number) => Array.from({ length: 180 }, (_, i) => clockPoint(r, 2 * i));
  const region = { outer: circle(DIAMETER_MM), holes: [circle(radiusMm).reverse()] };
  return { id: 'o', elementIds: ['name'], word: 'name/0', region };
}

describe('room for finger holes', () => {
  const radiusMm = DIAMETER_MM / 2;
  const farthestMm = radiusMm - rules.rimMarginMm - FINGER_HOLE_MM / 2 - 0.5;
  const needMm = FINGER_HOLE_MM / 2 + 1.05 * Math.max(rules.leastWebMm, rules.leastBridgeMm);

  it('is as far out as the rim allows, left and right, where nothing is in the way', () => {
    const free = placeLifting({ openings: [], rules, diameterMm: DIAMETER_MM });
    expect(free).toMatchObject({ shape: 'holes', count: 2, firstDeg: 90 });
    expect(free!.at * radiusMm).toBeCloseTo(farthestMm, 9);
  });

  it('is looked for further in, and not nearer to the middle than half the radius', () => {
    const within = placeLifting({ openings: [metalWithin(150)], rules, diameterMm: DIAMETER_MM });
    const awayMm = within!.at * radiusMm;
    // The circle is drawn with 180 sides: its sides are nearer by less than 0.03 mm.
    expect(awayMm).toBeLessThanOrEqual(150 - needMm);
    expect(awayMm).toBeGreaterThan(150 - needMm - 6.1);
    expect((farthestMm - awayMm) / 6).toBeCloseTo(Math.round((farthestMm - awayMm) / 6), 9);
    expect(placeLifting({ openings: [metalWithin(105)], rules, diameterMm: DIAMETER_MM })).toBeUndefined();
  });

  it.each([
    ['the web', 5, 1],
    ['the bridge', 1, 5],
  ])('is kept by the wider of web and bridge: here %s', (_, leastWebMm, leastBridgeMm) => {
    expect(firstDeg(5.5, leastWebMm, leastBridgeMm)).toBe(90);
    expect(firstDeg(4.8, leastWebMm, leastBridgeMm)).toBe(100);
    expect(firstDeg(2, leastWebMm, leastBridgeMm)).toBe(100);
  });
});
