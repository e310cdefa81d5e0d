import type { PackSize } from './pack-sheet.ts';
import { containerOfWaste } from './container.ts';
import type { NestGaps, PlateWish } from './sheets.ts';

/** Plates of one size, of whatever design: they are packed alike and told apart only when places are given out. */
export interface PlateSize extends PackSize {
  readonly diameterMm: number;
  /** Whose they are, in the order in which they get their places. */
  readonly wishes: readonly { readonly id: string; readonly count: number }[];
}

/** Wishes, less what is there already, as sizes: largest first. */
export function sizesOf(
  wishes: readonly PlateWish[],
  there: ReadonlyMap<string, number>,
  gaps: NestGaps,
): readonly PlateSize[] {
  const groups = new Map<string, PlateWish[]>();
  for (const wish of wishes) {
    const key = JSON.stringify([wish.diameterMm, wish.waste?.map(({ x, y, radiusMm }) => [x, y, radiusMm]) ?? []]);
    groups.set(key, [...(groups.get(key) ?? []), wish]);
  }
  const sizes = [...groups.entries()].flatMap(([key, [first, ...others]]) => {
    if (!first) return [];
    const counted = [first, ...others].map(({ id, quantity }) => ({
      id,
      count: Math.max(0, quantity - (there.get(id) ?? 0)),
    }));
    return {
      key,
      diameterMm: first.diameterMm,
      r: (first.diameterMm + gaps.betweenMm) / 2,
      count: counted.reduce((sum, { count }) => sum + count, 0),
      wastes: (first.waste ?? []).map((waste) => containerOfWaste(waste, gaps)),
      wishes: counted,
    };
  });
  // of equal plates those that have space inside come first, so that it is there when smaller ones follow
  return sizes.sort((a, b) => b.r - a.r || b.wastes.length - a.wastes.length || (a.key < b.key ? -1 : 1));
}
