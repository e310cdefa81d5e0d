import { lockedDiscs, lockedWastes, type LockedSheet } from './locked-plates.ts';
import { packSheet, type Packed, type PackTask } from './pack-sheet.ts';
import { goneFrom, containerOfSheet } from './container.ts';
import type { NestGaps, PlacedPlate, PlateWish, SheetKind } from './sheets.ts';
import type { PlateSize } from './sizes.ts';

/** One sheet before places are given names. */
export interface FilledSheet {
  readonly kind: SheetKind;
  readonly number: number;
  /** What was there before: locked plates. */
  readonly kept: readonly PlacedPlate[];
  readonly packed: readonly Packed[];
}

/** What all fills of one nest share. */
export interface NestTask {
  readonly wishes: ReadonlyMap<string, PlateWish>;
  readonly sizes: readonly PlateSize[];
  readonly gaps: NestGaps;
}

/**
 * Sheet after sheet, in this order of kinds, until every plate has its place or the rack is empty. Sheets that hold
 * locked plates are in use whatever comes, so they are filled before fresh ones. A fill that what is left asks for again
 * is used again.
 */
export function fillSheets(
  task: NestTask,
  remnants: readonly SheetKind[],
  fresh: readonly SheetKind[],
  stays: readonly LockedSheet[],
): readonly FilledSheet[] {
  const left = task.sizes.map(({ count }) => count);
  const sheets: FilledSheet[] = [];
  const add = (sheet: FilledSheet): void => {
    sheets.push(sheet);
    for (const { size } of sheet.packed) left[size]!--;
  };
  const fill = (kind: SheetKind, number: number, kept: readonly PlacedPlate[]): FilledSheet => {
    return { kind, number, kept, packed: packSheet(packTask(task, kind, kept, left, true)) };
  };
  const fillInUse = (kinds: readonly SheetKind[]): void => {
    for (const kind of kinds) for (const s of stays) if (s.kind === kind.id) add(fill(kind, s.number, s.plates));
  };
  const fillNew = (kind: SheetKind): void => {
    const inUse = stays.filter((sheet) => sheet.kind === kind.id).map(({ number }) => number);
    let free = (kind.count ?? Infinity) - inUse.length;
    for (let number = 1; free > 0 && left.some((count) => count > 0);) {
      while (inUse.includes(number)) number++;
      const sheet = fill(kind, number, []);
      if (sheet.packed.length === 0) return;
      const counts = countsOf(sheet.packed, task);
      const times = counts.map((count, size) => (count > 0 ? Math.floor(left[size]! / count) : Infinity));
      for (let again = Math.min(free, ...times); again > 0; again--, free--) {
        while (inUse.includes(number)) number++;
        add({ ...sheet, number });
        number++;
      }
    }
  };
  fillInUse(remnants);
  remnants.forEach(fillNew);
  fillInUse(fresh);
  fresh.forEach(fillNew);
  return sheets;
}

/** Left over from earlier work: to be used before whole sheets. */
export function isRemnant(kind: SheetKind): boolean {
  return kind.remnant === true || (kind.gone?.length ?? 0) > 0;
}

export function packTask(
  task: NestTask,
  kind: SheetKind,
  kept: readonly PlacedPlate[],
  counts: readonly number[],
  search: boolean,
): PackTask {
  return {
    container: containerOfSheet(kind, task.gaps),
    fixed: [...goneFrom(kind, task.gaps), ...lockedDiscs(kept, task.gaps)],
    wastes: lockedWastes(kept, task.wishes, task.gaps),
    sizes: task.sizes.map((size, i) => ({ ...size, count: counts[i] ?? 0 })),
    search,
  };
}

/** How many of each size were packed. */
export function countsOf(packed: readonly Packed[], { sizes }: NestTask): number[] {
  const counts = sizes.map(() => 0);
  for (const { size } of packed) counts[size]!++;
  return counts;
}

export function areaOfKind({ widthMm, heightMm }: SheetKind): number {
  return widthMm * heightMm;
}
