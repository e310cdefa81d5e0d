import { inMm } from '../sentences/say.ts';
import { CUT_EN } from '../sentences/cut-en.ts';
import type { KeyOf } from '../sentences/make-say.ts';
import type { WordValues } from '../sentences/wording.ts';
import { createDiscGrid } from './disc-grid.ts';
import { fillGaps } from './fill-gaps.ts';
import { goneFrom, containerOfSheet, widestIn } from './container.ts';
import type { MissingPlates, NestedSheet, NestGaps, PlateWish, SheetKind } from './sheets.ts';

/** What can be worked with, and what is said of the rest. */
export interface SoundWishes {
  readonly wishes: readonly PlateWish[];
  readonly kinds: readonly SheetKind[];
  readonly gaps: NestGaps;
  readonly missing: readonly MissingPlates[];
}

/** Takes out wishes and sheets whose numbers make no sense; gaps that make none count as nothing. */
export function dropUnsoundWishes(
  wishes: readonly PlateWish[],
  kinds: readonly SheetKind[],
  gaps: NestGaps,
): SoundWishes {
  const seen = new Set<string>();
  const missing: MissingPlates[] = [];
  const sound = wishes.filter((wish) => {
    const { id, diameterMm, quantity } = wish;
    const twice = seen.has(id);
    seen.add(id);
    if (!(diameterMm > 0 && diameterMm < Infinity) || !Number.isInteger(quantity) || quantity < 0) {
      missing.push(missed(wish, 0, 'nesting.nonsense'));
      return false;
    }
    if (twice) missing.push(missed(wish, quantity, 'nesting.twice'));
    return !twice;
  });
  const least = (value: number) => (value > 0 && value < Infinity ? value : 0);
  return {
    wishes: sound,
    kinds: kinds.filter(({ widthMm, heightMm }) => widthMm > 0 && heightMm > 0 && widthMm * heightMm < Infinity),
    gaps: { betweenMm: least(gaps.betweenMm), edgeMm: least(gaps.edgeMm) },
    missing,
  };
}

/** What of the wishes is on no sheet, and why. */
export function listMissingPlates(sound: SoundWishes, sheets: readonly NestedSheet[]): readonly MissingPlates[] {
  const placed = new Map<string, number>();
  for (const { plates } of sheets) for (const { wish } of plates) placed.set(wish, (placed.get(wish) ?? 0) + 1);
  return sound.wishes.flatMap((wish) => {
    const count = wish.quantity - (placed.get(wish.id) ?? 0);
    return count > 0 ? [whyMissing(wish, count, sound)] : [];
  });
}

function whyMissing(wish: PlateWish, count: number, { kinds, gaps }: SoundWishes): MissingPlates {
  const r = (wish.diameterMm + gaps.betweenMm) / 2;
  if (kinds.length === 0) return missed(wish, count, 'nesting.noSheets');
  const widest = Math.max(...kinds.map((kind) => widestIn(containerOfSheet(kind, gaps))));
  if (r > widest) {
    const most = inMm(Math.max(0, 2 * widest - gaps.betweenMm));
    return missed(wish, count, 'nesting.tooLarge', { size: inMm(wish.diameterMm), most });
  }
  const fitsOnEmpty = kinds.some((kind) => {
    const grid = createDiscGrid(containerOfSheet(kind, gaps), goneFrom(kind, gaps));
    return fillGaps(grid, r, 1, 'x').length > 0;
  });
  return fitsOnEmpty
    ? missed(wish, count, 'nesting.usedUp', { count })
    : missed(wish, count, 'nesting.holesInWay', { size: inMm(wish.diameterMm) });
}

function missed(wish: PlateWish, count: number, key: KeyOf<typeof CUT_EN>, values: WordValues = {}): MissingPlates {
  return { wish: wish.id, count, ...CUT_EN.said(key, { plate: wish.id, ...values }) };
}
