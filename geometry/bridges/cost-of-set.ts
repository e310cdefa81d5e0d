import type { ChoiceRule } from './bar.ts';
import { barsOf, type Option } from './bar-options.ts';
import type { Pieces } from './find-pieces.ts';
import { anglesApart, attachedTo, outOfLine, twins } from './neighbours.ts';

/**
 * Cost of bars that hold an island from one side only, in costs of the cheapest of them and in widths; bars that go
 * through the letter stand on two sides.
 */
const GATHERED = {
  hidden: { bars: 2, widths: 0.8 },
  upright: { bars: 2.5, widths: 1 },
  band: { bars: 2.5, widths: 1 },
} as const;
/** Cost of two bars close together, likewise. */
const TWINS = { bars: 2, widths: 14 };
/** Cost of an island's two bars that do not lie in one line, in costs of the cheaper. */
const OUT_OF_LINE = 0.6;

/** The bars' own costs, and what it costs that islands are held on one side, by twins or out of line. */
export function costOfSet(set: readonly Option[], pieces: Pieces, rule: ChoiceRule, onlyPiece?: number): number {
  const bars = barsOf(set);
  let sum = set.reduce((total, o) => total + o.cost, 0);
  for (const piece of pieces.pieces) {
    if (piece.id === 0 || piece.small || (onlyPiece !== undefined && piece.id !== onlyPiece)) continue;
    const mine = bars.filter((b) => attachedTo(b, piece.id));
    if (mine.length < 2) continue;
    const least = Math.min(...mine.map((b) => b.cost));
    const one = GATHERED[rule.manner];
    sum += anglesApart(piece, mine) * (one.bars * least + one.widths * rule.widthMm);
    sum += twins(piece, mine) * (TWINS.bars * least + TWINS.widths * rule.widthMm);
    if (mine.length === 2) sum += outOfLine(mine[0]!, mine[1]!) * OUT_OF_LINE * least;
  }
  return sum;
}
