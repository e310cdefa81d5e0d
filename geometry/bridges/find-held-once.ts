import { intersect, offset, ringsOf, subtract, union } from '../adapters/clipper.ts';
import { deepestPoint } from '../adapters/polylabel.ts';
import { regionAreaMm2, signedAreaMm2 } from '../measure/ring.ts';
import type { Point, Region, Ring } from '../shapes.ts';
import { HAIR_MM, SPECK_MM2 } from '../units.ts';

/**
 * Metal of the letter that would fall out if one bar were lost: bars so broad for their letter that they swallow an
 * island can leave it hanging on one of them alone. In: the drawing, its openings with bridges, the bars' outlines.
 * Out: a point in each such piece of metal.
 */
export function findHeldOnce(drawn: readonly Region[], openings: readonly Region[], bars: readonly Ring[]): Point[] {
  const letter = ringsOf(drawn);
  return bars.flatMap((bar) => {
    // Grown by a hair: metal that hangs on less than two of it hangs on nothing.
    const reopened = union([...ringsOf(openings), ...ringsOf(intersect(drawn, [bar]))]);
    return offset(reopened, HAIR_MM)
      .flatMap((r) => r.holes)
      .filter((hole) => Math.abs(signedAreaMm2(hole)) > SPECK_MM2 && isMetalOfLetter(hole, letter))
      .map((hole) => deepestPoint(hole).at);
  });
}

/** Not merely a leftover of the bar or of a tail beside it. */
function isMetalOfLetter(hole: Ring, letter: readonly Ring[]): boolean {
  const asArea = [{ outer: [...hole].reverse(), holes: [] }];
  return subtract(asArea, letter).reduce((sum, r) => sum + regionAreaMm2(r), 0) > SPECK_MM2;
}
