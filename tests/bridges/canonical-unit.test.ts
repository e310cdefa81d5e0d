import { describe, expect, it } from 'vitest';
import { canonicalUnit } from '../../geometry/bridges/canonical-unit.ts';
import { type HandEdits, NO_EDITS } from '../../geometry/bridges/hand-edits.ts';
import { solveUnit } from '../../geometry/bridges/solve-unit.ts';
import type { Point, Region, Ring } from '../../geometry/shapes.ts';
import { stockRules } from '../../geometry/stock/stock-rules.ts';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';
import { mirrored, moved, reordered } from '../laws/moves.ts';
import { drawnLetter, faceOf } from '../sweep/case.ts';

const { rules } = stockRules(
  { material: 'stainless-304', thicknessMm: 1.5, process: 'fibre-laser', use: 'paint' },
  'auto',
  BUILT_IN,
);

const shift = (p: Point) => ({ x: p.x - 41.30127, y: p.y + 9.77773 });
const flip = (p: Point) => ({ x: 7.5 - p.x, y: p.y });

const letter = async (face: string, char: string) => drawnLetter(await faceOf(face), char, 50);

describe.each([
  ['libre-caslon-text-700', '8'],
  ['cinzel-700', 'A'],
  ['limelight-400', '%'],
  ['bebas-neue-400', 'O'],
])('canonical form of %s %s', (face, char) => {
  it('is the very same for the drawing shifted, mirrored or listed in another order', async () => {
    const drawn = await letter(face, char);
    const { regions } = canonicalUnit(drawn, NO_EDITS);
    for (const other of [
      moved(drawn, shift),
      mirrored(drawn, flip),
      reordered(drawn),
      mirrored(moved(drawn, shift), flip),
    ]) {
      expect(canonicalUnit(other, NO_EDITS).regions).toEqual(regions);
    }
  });

  it('leads home: to the drawing it was made from, to its grid', async () => {
    const drawn = await letter(face, char);
    for (const given of [drawn, mirrored(drawn, flip)]) {
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
  const [one, other] = [
    solveUnit(drawn, rules, 'hidden', edits),
    solveUnit(mirrored(drawn, flip), rules, 'hidden', image),
  ];
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
