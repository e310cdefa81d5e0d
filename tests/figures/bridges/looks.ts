import { FACES } from '../../../fonts/catalogue.ts';
import { exclusive, intersect, ringsOf } from '../../../geometry/adapters/clipper.ts';
import { solveUnit } from '../../../geometry/bridges/solve-unit.ts';
import type { BuiltBar } from '../../../geometry/bridges/solved-unit.ts';
import { nearestOnSegment } from '../../../geometry/measure/distance.ts';
import { joinBoxes, regionAreaMm2, ringBox } from '../../../geometry/measure/ring.ts';
import type { Point, Region, Ring } from '../../../geometry/shapes.ts';
import { stockRules } from '../../../geometry/stock/stock-rules.ts';
import { BUILT_IN } from '../../../geometry/stock/built-in-stock.ts';
import { median } from '../../bench/timing.ts';
import { mirrored } from '../../laws/moves.ts';
import { drawnLetter, faceOf } from '../../sweep/case.ts';
import { type Claim, once, rounded } from '../claim.ts';

const CAP_MM = 50;
const MIRRORED = [...'AOQ08HIM'];
const LETTERS = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789'];
/** A letter is its own mirror image when less than this share of it differs from that. */
const LIKENESS = 0.012;
/** Of the letter's width. */
const MOST_OFF_PERCENT = 1;
/** What a bridge takes of the letter is not seen below this (0.1 mm square): it fills a notch of the drawing's neck. */
const SEEN_MM2 = 0.01;
const MOST_AREA_PERCENT = 6;

const { rules } = stockRules(
  { material: 'stainless-304', thicknessMm: 1.5, process: 'fibre-laser', use: 'paint' },
  'auto',
  BUILT_IN,
);

/** What bridges do to the letter: hidden manner, capitals of 50 mm, 1.5 mm stainless. */
export const LOOKS_CLAIMS: readonly Claim[] = [
  {
    name: 'mirrored-letters-bridges-off-their-mirror-image',
    wanted: `at most ${MOST_OFF_PERCENT} % of the letter's width`,
    async measure() {
      const measured = await mirrorErrors();
      const worst = measured.reduce((a, b) => (b.percent > a.percent ? b : a), { name: 'none', percent: 0 });
      const over = measured
        .filter(({ percent }) => percent > MOST_OFF_PERCENT)
        .map((m) => `${m.name} ${rounded(m.percent)}`);
      return {
        value: rounded(worst.percent),
        unit: `% at worst (${worst.name}) of ${measured.length} mirrored letters with bridges${over.length > 0 ? `; over: ${over.join(', ')}` : ''}`,
        ok: measured.length > 20 && over.length === 0,
      };
    },
  },
  {
    name: 'area-taken-by-bridges',
    wanted: `median below ${MOST_AREA_PERCENT} % of the letter's opening`,
    async measure() {
      const all = [...(await areaShares()).values()].flat();
      const middle = median(all);
      return {
        value: rounded(middle),
        unit: `% (median of ${all.length} letters with bridges in ${FACES.length} faces)`,
        ok: all.length > 0 && middle < MOST_AREA_PERCENT,
      };
    },
  },
  ...FACES.map(({ id }): Claim => ({
    name: `area-taken-by-bridges-${id}`,
    wanted: 'for information',
    async measure() {
      const shares = (await areaShares()).get(id) ?? [];
      if (shares.length === 0) return { value: 0, unit: '%: no letter needs a bridge', ok: true };
      return { value: rounded(median(shares)), unit: `% (median of ${shares.length} letters)`, ok: true };
    },
  })),
];

const mirrorErrors = once(async () => {
  const out: { name: string; percent: number }[] = [];
  for (const { id } of FACES) {
    for (const char of MIRRORED) {
      const drawn = await drawnOf(id, char);
      if (drawn.length === 0) continue;
      const box = joinBoxes(drawn.map((r) => ringBox(r.outer)));
      const axis = (box.minX + box.maxX) / 2;
      const off = exclusive(drawn, imageOf(drawn, axis));
      if (areaOf(off) >= LIKENESS * areaOf(drawn)) continue;
      const { bars } = solveUnit(drawn, rules, 'hidden');
      const taken = takenBy(bars, drawn);
      if (taken.length === 0) continue;
      const farthest = farthestApart(ringsOf(taken), ringsOf(imageOf(taken, axis)));
      out.push({ name: `${id} ${char}`, percent: (100 * farthest) / (box.maxX - box.minX) });
    }
  }
  return out;
});

/** Share of the opening that bridges take, in percent, of each letter that has any; by face. */
const areaShares = once(async () => {
  const out = new Map<string, number[]>();
  for (const { id } of FACES) {
    const shares: number[] = [];
    for (const char of LETTERS) {
      const drawn = await drawnOf(id, char);
      if (drawn.length === 0) continue;
      const { bars } = solveUnit(drawn, rules, 'hidden');
      const taken = areaOf(takenBy(bars, drawn));
      if (taken > 0) shares.push((100 * taken) / areaOf(drawn));
    }
    out.set(id, shares);
  }
  return out;
});

/** What bars leave standing of the drawn opening, as far as it is seen. */
function takenBy(bars: readonly BuiltBar[], drawn: readonly Region[]): Region[] {
  const outlines = bars.map((bar) => bar.outline);
  return intersect(drawn, outlines).filter((part) => regionAreaMm2(part) > SEEN_MM2);
}

async function drawnOf(faceId: string, char: string): Promise<Region[]> {
  return drawnLetter(await faceOf(faceId), char, CAP_MM);
}

function imageOf(regions: readonly Region[], axis: number): Region[] {
  return mirrored(regions, (p) => ({ x: 2 * axis - p.x, y: p.y }));
}

function areaOf(regions: readonly Region[]): number {
  return regions.reduce((sum, r) => sum + regionAreaMm2(r), 0);
}

/** Farthest that a corner of either lies from the edges of the other (their Hausdorff distance, at corners). */
function farthestApart(a: readonly Ring[], b: readonly Ring[]): number {
  const gap = (p: Point, q: Point) => Math.hypot(p.x - q.x, p.y - q.y);
  const from = (p: Point, rings: readonly Ring[]) =>
    Math.min(...rings.flatMap((ring) => ring.map((q, i) => gap(p, nearestOnSegment(p, ring.at(i - 1)!, q)))));
  return Math.max(...a.flat().map((p) => from(p, b)), ...b.flat().map((p) => from(p, a)));
}
