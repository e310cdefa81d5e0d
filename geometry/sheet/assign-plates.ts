import type { FilledSheet, NestTask } from './fill-sheets.ts';
import type { NestedSheet, PlacedPlate } from './sheets.ts';
import { usedShare } from './sheet-use.ts';

/** Gives the packed places to the wishes, in the order of the wishes, and every plate its id. */
export function assignPlates(filled: readonly FilledSheet[], { wishes, sizes }: NestTask): readonly NestedSheet[] {
  const taken = new Set(filled.flatMap(({ kept }) => kept.map(({ id }) => id)));
  const queues = sizes.map((size) => size.wishes.flatMap(({ id, count }) => freeIds(id, count, taken)));
  const given = sizes.map(() => 0);
  return filled.map(({ kind, number, kept, packed }) => {
    const ids = packed.map(({ size }) => queues[size]![given[size]!++]!);
    const added = packed.map(({ size, disc, inside }, i): PlacedPlate => {
      const outer = inside && ('before' in inside ? kept[inside.before]?.id : ids[inside.packed]?.id);
      return {
        ...ids[i]!,
        diameterMm: sizes[size]!.diameterMm,
        x: disc.x,
        y: disc.y,
        turnDeg: 0,
        locked: false,
        ...(outer === undefined ? {} : { inside: outer }),
      };
    });
    const sheet = {
      kind: kind.id,
      number,
      widthMm: kind.widthMm,
      heightMm: kind.heightMm,
      gone: kind.gone ?? [],
      plates: [...kept, ...added],
    };
    return { ...sheet, usedShare: usedShare(sheet, [...wishes.values()]) };
  });
}

function freeIds(wish: string, count: number, taken: ReadonlySet<string>): { id: string; wish: string }[] {
  const ids: { id: string; wish: string }[] = [];
  for (let number = 1; ids.length < count; number++) {
    const id = `${wish}#${number}`;
    if (!taken.has(id)) ids.push({ id, wish });
  }
  return ids;
}
