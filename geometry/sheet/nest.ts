import { areaOfKind, fillSheets, isRemnant, type FilledSheet, type NestTask } from './fill-sheets.ts';
import { assignPlates } from './assign-plates.ts';
import { findLockedPlates, type LockedSheet } from './locked-plates.ts';
import { compactLast, onSmallerKind } from './last-sheet.ts';
import { listMissingPlates, dropUnsoundWishes } from './missing.ts';
import { restOf } from './sheet-use.ts';
import type { Nest, NestedSheet, NestGaps, PlateWish, SheetKind } from './sheets.ts';
import { sizesOf } from './sizes.ts';

/**
 * Plates on sheets: remnants first, then as few sheets as can be found, then as little as possible of the last one, so
 * that a rectangle is left over of it. Lengths in millimetres, in each sheet's frame.
 *
 * 1. Wishes of one size are packed together, whatever is cut into them; locked plates of `kept` stay where they are.
 * 2. Sheet after sheet is filled with the largest first (pack-sheet.ts). A fill that can be had again from what is still
 *    wanted is used again without a new search.
 * 3. Each kind of fresh sheet is tried as the first choice; the fewest sheets, then the least metal wins.
 * 4. The last sheet becomes a smaller kind if one holds its plates, and these are crowded to one end of it.
 *
 * Wishes that make no sense, or find no place, are in `missing` with a sentence each. The same list gives the same nest
 * every time.
 */
export function nest(
  wishes: readonly PlateWish[],
  kinds: readonly SheetKind[],
  gaps: NestGaps,
  kept: readonly NestedSheet[] = [],
): Nest {
  const sound = dropUnsoundWishes(wishes, kinds, gaps);
  const stays = findLockedPlates(kept, sound.wishes).filter((sheet) => sound.kinds.some(({ id }) => id === sheet.kind));
  const there = countPlates(stays);
  const sizes = sizesOf(sound.wishes, there, sound.gaps);
  const task: NestTask = { wishes: new Map(sound.wishes.map((wish) => [wish.id, wish])), sizes, gaps: sound.gaps };

  const remnants = sound.kinds.filter(isRemnant).sort((a, b) => areaOfKind(a) - areaOfKind(b));
  const fresh = sound.kinds.filter((kind) => !isRemnant(kind)).sort((a, b) => areaOfKind(b) - areaOfKind(a));
  const orders = fresh.length > 0 ? fresh.map((lead) => [lead, ...fresh.filter((kind) => kind !== lead)]) : [[]];
  const tries = orders.map((order) => onSmallerKind(fillSheets(task, remnants, order, stays), fresh, task));
  const best = tries.reduce((a, b) => (isBetter(b, a) ? b : a));
  const filled = compactLast(best, task);

  const sheets = assignPlates(filled, task);
  const rest = sheets.length > 0 ? restOf(sheets.at(-1)!, sheets.length - 1, sound.gaps) : undefined;
  return {
    sheets,
    missing: [...sound.missing, ...listMissingPlates(sound, sheets)],
    ...(rest ? { rest } : {}),
  };
}

/** More plates placed, then fewer sheets, then less metal taken from the rack. */
function isBetter(a: readonly FilledSheet[], b: readonly FilledSheet[]): boolean {
  const plates = (sheets: readonly FilledSheet[]) => sheets.reduce((sum, { packed }) => sum + packed.length, 0);
  const metal = (sheets: readonly FilledSheet[]) => sheets.reduce((sum, { kind }) => sum + areaOfKind(kind), 0);
  if (plates(a) !== plates(b)) return plates(a) > plates(b);
  if (a.length !== b.length) return a.length < b.length;
  return metal(a) < metal(b);
}

function countPlates(stays: readonly LockedSheet[]): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const { plates } of stays) for (const { wish } of plates) counts.set(wish, (counts.get(wish) ?? 0) + 1);
  return counts;
}
