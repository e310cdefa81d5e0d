import { freeScale, pressLarge, type Pressed } from '../../geometry/sheet/press-in.ts';
import type { BoxContainer, Disc } from '../../geometry/sheet/container.ts';
import { layRows } from '../../geometry/sheet/rows.ts';

/** Up to so many discs a search is worth its time; more are laid in rows alone. */
const MOST_SEARCHED = 40;

/**
 * `count` equal discs in a box, as large as can be found: in rows, and for small counts by search. The discs given never
 * overlap and lie in the box; that no larger ones are possible is not proven.
 */
export function packEqual(count: number, widthMm: number, heightMm: number): readonly Disc[] {
  if (!(count >= 1) || !(widthMm > 0) || !(heightMm > 0)) return [];
  const container: BoxContainer = { minX: 0, minY: 0, maxX: widthMm, maxY: heightMm };
  const radii = Array.from({ length: Math.floor(count) }, () => 1);
  const rows = Float64Array.from(inRows(radii.length, container).flatMap(({ x, y }) => [x, y]));
  const start = { radii, container, fixed: [] };
  let best: Pressed = { scale: freeScale(rows, start), at: rows };
  if (radii.length > 1 && radii.length <= MOST_SEARCHED) {
    const found = pressLarge({ ...start, from: rows, starts: 8, hops: 10 });
    if (found.scale > best.scale) best = found;
  }
  return radii.map((_, i) => ({ x: best.at[2 * i]!, y: best.at[2 * i + 1]!, r: best.scale }));
}

/** Rows that hold so many, at the largest radius at which some rows do. */
function inRows(count: number, container: BoxContainer): readonly Disc[] {
  const enough = (r: number) => layRows(container, r).find((discs) => discs.length >= count);
  let [low, high] = [0, Math.min(container.maxX, container.maxY) / 2];
  let discs = enough(high);
  if (discs) return discs.slice(0, count);
  // halving to the last digit of a number
  for (let i = 0; i < 50; i++) {
    const middle = (low + high) / 2;
    const found = enough(middle);
    if (found) [low, discs] = [middle, found];
    else high = middle;
  }
  return (discs ?? []).slice(0, count);
}
