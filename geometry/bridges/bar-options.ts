import type { Bar, ChoiceRule } from './bar.ts';
import type { Pieces } from './find-pieces.ts';
import { mirroredBar, ontoAxis } from './mirror.ts';
import { attachedTo, middlesApart, sideBySide } from './neighbours.ts';

/** Bars chosen together: one, or a bar and its mirror image. */
export interface Option {
  readonly bars: readonly Bar[];
  readonly cost: number;
}

/** Single bars, or bars with their mirror images where the letter is its own. */
export function listOptions(
  bars: readonly Bar[],
  pieces: Pieces,
  rule: ChoiceRule,
  axis: number | undefined,
): Option[] {
  if (axis === undefined) return bars.map(single);
  const options: Option[] = [];
  const used: Bar[] = [];
  for (const one of bars) {
    if (used.some((u) => sameBar(u, one, 0.5 * rule.widthMm))) continue;
    const bar = ontoAxis(one, axis, pieces, rule.widthMm) ?? one;
    const image = mirroredBar(bar, axis, pieces, rule.widthMm);
    if (!image) continue;
    if (image === bar) {
      options.push(single(bar));
      used.push(bar);
    } else if (!sideBySide(bar, image, rule.widthMm + rule.leastOpeningMm)) {
      options.push({ bars: [bar, image], cost: 2 * bar.cost });
      used.push(image);
    }
  }
  return options;
}

/** A bar as an option by itself. */
export function single(bar: Bar): Option {
  return { bars: [bar], cost: bar.cost };
}

export function barsOf(set: readonly Option[]): Bar[] {
  return set.flatMap((o) => o.bars);
}

export function clash(p: Option, q: Option, rule: ChoiceRule): boolean {
  return p.bars.some((a) => q.bars.some((b) => sideBySide(a, b, rule.widthMm + rule.leastOpeningMm)));
}

export function sharePiece(p: Option, q: Option): boolean {
  return p.bars.some((b) =>
    [b.a, b.b, b.carries?.piece].some((id) => id !== undefined && id > 0 && q.bars.some((c) => attachedTo(c, id))),
  );
}

/**
 * Cheapest of bars that stand at nearly the same place; of those between the same two pieces at most so many on each
 * side of the island, or a long thin stroke would leave no place elsewhere to choose from.
 */
export function keepDistinct(bars: readonly Bar[], pieces: Pieces, rule: ChoiceRule): Bar[] {
  const kept: Bar[] = [];
  const count = new Map<string, number>();
  for (const bar of bars) {
    const pair = bar.carries ? `over ${bar.carries.piece}` : [bar.a, bar.b].sort((p, q) => p - q).join('-');
    const group = bar.carries ? pair : `${pair} ${sideOf(bar, pieces)}`;
    const n = count.get(group) ?? 0;
    if (n >= (bar.carries ? 4 : 1) * MOST_OF_A_SIDE) continue;
    if (kept.some((k) => k.carries?.piece === bar.carries?.piece && sameBar(k, bar, 0.4 * rule.widthMm))) continue;
    kept.push(bar);
    count.set(group, n + 1);
  }
  return kept;
}

const MOST_OF_A_SIDE = 10;

/** Above, below, left or right of the middle of the island it starts from (of two, the one named first). */
function sideOf(bar: Bar, pieces: Pieces): string {
  const [id, foot] = bar.a > 0 ? [bar.a, bar.from] : [bar.b, bar.to];
  const { at } = pieces.pieces[id]!;
  const [x, y] = [foot.x - at.x, foot.y - at.y];
  if (Math.abs(x) > Math.abs(y)) return x > 0 ? 'right' : 'left';
  return y > 0 ? 'above' : 'below';
}

function sameBar(p: Bar, q: Bar, mm: number): boolean {
  const d = (ax: number, ay: number, bx: number, by: number) => Math.hypot(ax - bx, ay - by) < mm;
  return (
    (d(p.from.x, p.from.y, q.from.x, q.from.y) && d(p.to.x, p.to.y, q.to.x, q.to.y)) ||
    (d(p.from.x, p.from.y, q.to.x, q.to.y) && d(p.to.x, p.to.y, q.from.x, q.from.y))
  );
}

/** Of the bars that widen the same neck, the cheapest. */
export function keepBestOfNecks(bars: readonly Bar[], rule: ChoiceRule): Bar[] {
  const kept: Bar[] = [];
  for (const bar of bars) {
    if (!bar.widens) continue;
    const known = kept.some((k) => {
      const pair = (k.a === bar.a && k.b === bar.b) || (k.a === bar.b && k.b === bar.a);
      return pair && middlesApart(k, bar) < 1.5 * rule.widthMm;
    });
    if (!known) kept.push(bar);
  }
  return kept;
}
