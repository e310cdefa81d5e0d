import { describe, expect, it } from 'vitest';
import type { Opening } from '../../geometry/bridges/types.ts';
import { placeLifting } from '../../geometry/checks/place-lifting.ts';
import { FINGER_HOLE_MM } from '../../geometry/layout/lifting.ts';
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

describe('room for finger holes', () => {
  it.each([
    ['the web', 5, 1],
    ['the bridge', 1, 5],
  ])('is kept by the wider of web and bridge: here %s', (_, leastWebMm, leastBridgeMm) => {
    expect(firstDeg(5.5, leastWebMm, leastBridgeMm)).toBe(90);
    expect(firstDeg(4.8, leastWebMm, leastBridgeMm)).toBe(100);
    expect(firstDeg(2, leastWebMm, leastBridgeMm)).toBe(100);
  });
});
