import { describe, expect, it } from 'vitest';
import { loadFace } from '../../fonts/node-faces.ts';
import { canonicalUnit } from '../../geometry/bridges/canonical-unit.ts';
import { type HandEdits, NO_EDITS } from '../../geometry/bridges/hand-edits.ts';
import { solveUnit } from '../../geometry/bridges/solve-unit.ts';
import type { Point, Region, Ring } from '../../geometry/shapes.ts';
import { stockRules } from '../../geometry/stock/stock-rules.ts';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';
import { drawnLetter } from '../sweep/case.ts';

const { rules } = stockRules(
  { material: 'stainless-304', thicknessMm: 1.5, process: 'fibre-laser', use: 'paint' },
  'auto',
  BUILT_IN,
);

const shift = (p: Point) => ({ x: p.x - 41.30127, y: p.y + 9.77773 });
const flip = (p: Point) => ({ x: 7.5 - p.x, y: p.y });

function moved(regions: readonly Region[], move: (p: Point) => Point): Region[] {
  return regions.map((r) => ({ outer: r.outer.map(move), holes: r.holes.map((h) => h.map(move)) }));
}

function mirrored(regions: readonly Region[]): Region[] {
  return moved(regions, flip).map((r) => ({
    outer: [...r.outer].reverse(),
    holes: r.holes.map((h) => [...h].reverse()),
  }));
}

function reordered(regions: readonly Region[]): Region[] {
  const later = (ring: Ring) => [...ring.slice(5), ...ring.slice(0, 5)];
  return [...regions].reverse().map((r) => ({ outer: later(r.outer), holes: r.holes.map(later).reverse() }));
}

async function letter(face: string, char: string): Promise<Region[]> {
  const loaded = await loadFace(face);
  if ('problem' in loaded) throw new Error(loaded.problem);
  return drawnLetter(loaded.face, char, 50);
}

describe.each([
  ['libre-caslon-text-700', '8'],
  ['cinzel-700', 'A'],
  ['limelight-400', '%'],
  ['bebas-neue-400', 'O'],
])('canonical form of %s %s', (face, char) => {
  it('is the very same for the drawing shifted, mirrored or listed in another order', async () => {
    const drawn = await letter(face, char);
    const { regions } = canonicalUnit(drawn, NO_EDITS);
    for (const other of [moved(drawn, shift), mirrored(drawn), reordered(drawn), mirrored(moved(drawn, shift))]) {
      expect(canonicalUnit(other, NO_EDITS).regions).toEqual(regions);
    }
  });

  it('leads home: to the drawing it was made from, to its grid', async () => {
    const drawn = await letter(face, char);
    for (const given of [drawn, mirrored(drawn)]) {
      const { regions, home } = canonicalUnit(given, NO_EDITS);
      const points = (rings: readonly Ring[]) =>
        rings
          .flat()
          .map(({ x, y }) => `${x.toFixed(4)} ${y.toFixed(4)}`)
          .sort();
      const rings = (of: readonly Region[]) => of.flatMap((r) => [r.outer, ...r.holes]);
      expect(points(rings(regions).map(home.ring))).toEqual(points(rings(given)));
    }
  });
});

it('a bridge by hand lands at its mirror image in the mirrored drawing', async () => {
  const drawn = await letter('alfa-slab-one-400', 'R');
  const keep = { editId: 'e', from: { x: 22, y: 34 }, to: { x: 22, y: 50 }, widthShare: 1.4, shape: 0 };
  const barred = solveUnit(drawn, rules, 'hidden').bars[0]!;
  const at = { x: (barred.from.x + barred.to.x) / 2, y: (barred.from.y + barred.to.y) / 2 };
  const edits: HandEdits = { keeps: [keep], drops: [{ editId: 'd', at }] };
  const image: HandEdits = {
    keeps: [{ ...keep, from: flip(keep.from), to: flip(keep.to) }],
    drops: [{ editId: 'd', at: flip(at) }],
  };
  const [one, other] = [solveUnit(drawn, rules, 'hidden', edits), solveUnit(mirrored(drawn), rules, 'hidden', image)];
  expect(one.bars.some((b) => b.editId === 'e')).toBe(true);
  expect(other.bars).toHaveLength(one.bars.length);
  one.bars.forEach((bar, i) => {
    const like = other.bars[i]!;
    expect(like.editId).toBe(bar.editId);
    for (const end of ['from', 'to'] as const) {
      expect(like[end].x).toBeCloseTo(flip(bar[end]).x, 6);
      expect(like[end].y).toBeCloseTo(bar[end].y, 6);
    }
  });
});
