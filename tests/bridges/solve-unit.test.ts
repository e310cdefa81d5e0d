import { describe, expect, it } from 'vitest';
import { solveUnit } from '../../geometry/bridges/solve-unit.ts';
import type { SolvedUnit } from '../../geometry/bridges/solved-unit.ts';
import { joinBoxes, regionAreaMm2, ringBox } from '../../geometry/measure/ring.ts';
import type { Region, Ring } from '../../geometry/shapes.ts';
import type { StockRules } from '../../geometry/stock/rules.ts';
import { metalAround } from '../judge/metal.ts';
import { drawnLetter, faceOf } from '../sweep/case.ts';

/** 1.5 mm sheet; the numbers only set the scene. */
const RULES: StockRules = {
  kerfMm: 0.15,
  leastBridgeMm: 1.5,
  leastWebMm: 1.5,
  leastOpeningMm: 0.6,
  leastInsideRadiusMm: 0,
  rimMarginMm: 5,
  longestSpanMm: 150,
  thicknessMm: 1.5,
};
const JUST_UNDER_HALF = 0.98 * (RULES.leastBridgeMm / 2);

function circle(radius: number, x = 0, y = 0): Ring {
  return Array.from({ length: 240 }, (_, i) => {
    const a = (i * Math.PI) / 120;
    return { x: x + radius * Math.cos(a), y: y + radius * Math.sin(a) };
  });
}

function annulus(outer: number, inner: number): Region {
  return { outer: circle(outer), holes: [[...circle(inner)].reverse()] };
}

const letter = async (face: string, char: string, capMm: number) => drawnLetter(await faceOf(face), char, capMm);

/** Judged by another library: one piece, also when shrunk, and still one piece when any one bar is lost. */
function expectHeldTwice(drawn: readonly Region[], solved: SolvedUnit): void {
  const metal = metalAround(solved.openings, 10);
  expect(solved.loose).toEqual([]);
  expect(metal.pieces).toBe(1);
  expect(metal.shrunk(JUST_UNDER_HALF).pieces).toBe(1);
  for (const bar of solved.bars) expect(metal.without(bar.outline, drawn).pieces).toBe(1);
}

describe('solveUnit', () => {
  it('leaves alone what holds by itself', () => {
    const disc = [{ outer: circle(20), holes: [] }];
    expect(solveUnit(disc, RULES, 'hidden')).toMatchObject({ openings: disc, bars: [], islands: [], loose: [] });
  });

  it('holds a ring at top and bottom, one bar the mirror image of the other', () => {
    const drawn = [annulus(20, 14)];
    const solved = solveUnit(drawn, RULES, 'hidden');
    expect(solved.islands).toHaveLength(1);
    expect(solved.bars).toHaveLength(2);
    for (const bar of solved.bars) {
      expect(Math.abs(bar.from.x)).toBeLessThan(0.05);
      expect(Math.abs(bar.to.x)).toBeLessThan(0.05);
    }
    expectHeldTwice(drawn, solved);
  });

  it('takes no more of the opening than width times stroke for each bar', () => {
    const solved = solveUnit([annulus(20, 14)], RULES, 'hidden');
    const before = regionAreaMm2(annulus(20, 14));
    const after = solved.openings.reduce((sum, o) => sum + regionAreaMm2(o), 0);
    // Two bars of 1.5 mm across a stroke of 6 mm; the rounds at its ends make a little difference.
    expect(before - after).toBeGreaterThan(17.8);
    expect(before - after).toBeLessThan(18.3);
  });

  it('holds islands inside islands', () => {
    const rings = [annulus(40, 34), annulus(28, 22), annulus(16, 10)];
    const solved = solveUnit(rings, RULES, 'hidden');
    expect(solved.islands).toHaveLength(3);
    expectHeldTwice(rings, solved);
  });

  it('gives a long edge as many bars as its span asks for, evenly spread', () => {
    const solved = solveUnit([annulus(200, 194)], RULES, 'hidden');
    const angles = solved.bars.map((b) => Math.atan2(b.to.y, b.to.x)).sort((p, q) => p - q);
    expect(angles.length).toBeGreaterThanOrEqual((2 * Math.PI * 194) / RULES.longestSpanMm);
    const gaps = angles.map((a, i) => (i === 0 ? a - angles.at(-1)! + 2 * Math.PI : a - angles[i - 1]!) * 194);
    expect(Math.max(...gaps)).toBeLessThanOrEqual(RULES.longestSpanMm);
    expect(Math.max(...gaps) - Math.min(...gaps)).toBeLessThan(2);
  });

  it('lets an island narrower than a bridge lie on the bar across it', () => {
    const drawn = [annulus(6, 0.6)];
    const solved = solveUnit(drawn, RULES, 'hidden');
    expect(solved.islands).toMatchObject([{ small: true }]);
    expect(solved.bars).toHaveLength(2);
    expectHeldTwice(drawn, solved);
  });

  it('says so when a speck is too small to keep', () => {
    const solved = solveUnit([annulus(6, 0.1)], RULES, 'hidden');
    expect(solved.specks).toHaveLength(1);
    expect(solved.openings[0]?.holes).toEqual([]);
  });

  it("widens a stencil face's own bridges where they are thinner than the rule", async () => {
    const raw = await letter('stardos-stencil-700', 'O', 14);
    expect(metalAround(raw, 10).pieces).toBe(1);
    expect(metalAround(raw, 10).shrunk(JUST_UNDER_HALF).pieces).toBeGreaterThan(1);
    const solved = solveUnit(raw, RULES, 'hidden');
    expect(solved.islands).toEqual([]);
    expect(solved.bars.every((bar) => bar.widens)).toBe(true);
    expectHeldTwice(raw, solved);
  });

  it.each([
    ['playfair-display-700', 'B', 40],
    ['playfair-display-700', '&', 25],
    ['abril-fatface-400', '8', 25],
    ['alfa-slab-one-400', 'R', 14],
    ['alfa-slab-one-400', 'e', 14],
    ['cinzel-700', '@', 50],
    ['unifrakturcook-700', 'G', 30],
    ['great-vibes-400', 'L', 60],
    ['im-fell-english-sc-400', '8', 30],
    ['bebas-neue-400', '%', 30],
    ['saira-stencil-one-400', 'A', 12],
  ])('holds %s %s at %d mm twice over', async (face, char, capMm) => {
    const drawn = await letter(face, char, capMm);
    expectHeldTwice(drawn, solveUnit(drawn, RULES, 'hidden'));
  });

  it.each([
    ['league-gothic-400', 'A'],
    ['bebas-neue-400', 'O'],
    ['bebas-neue-400', '0'],
    ['alfa-slab-one-400', 'O'],
    ['abril-fatface-400', '8'],
  ])('bridges %s %s as its own mirror image', async (face, char) => {
    const raw = await letter(face, char, 50);
    const box = joinBoxes(raw.map((r) => ringBox(r.outer)));
    const middle = (box.minX + box.maxX) / 2;
    const { bars } = solveUnit(raw, RULES, 'hidden');
    const ends = bars.flatMap((b) => [b.from, b.to]);
    for (const end of ends) {
      const image = { x: 2 * middle - end.x, y: end.y };
      const off = Math.min(...ends.map((e) => Math.hypot(e.x - image.x, e.y - image.y)));
      expect(off).toBeLessThan(0.01 * (box.maxX - box.minX));
    }
  });

  it('stands bars upright when asked', async () => {
    const { bars } = solveUnit(await letter('bebas-neue-400', 'D', 50), RULES, 'upright');
    for (const bar of bars) expect(Math.abs(bar.from.x - bar.to.x)).toBeLessThan(0.2);
  });
});
