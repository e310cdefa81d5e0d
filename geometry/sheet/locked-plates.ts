import { discOf, containerOfWaste, type Disc } from './container.ts';
import type { Circle, NestedSheet, NestGaps, PlacedPlate, PlateWish } from './sheets.ts';
import type { WasteContainer } from './pack-sheet.ts';
import { wasteInPlace } from './place-waste.ts';

/** What stays on a sheet because a person locked it. */
export interface LockedSheet {
  readonly kind: string;
  readonly number: number;
  readonly plates: readonly PlacedPlate[];
}

/**
 * The locked plates of an earlier nest that are still wanted, at most as many of a wish as it wants. A plate that holds
 * a locked one inside it stays with it, locked as well.
 */
export function findLockedPlates(kept: readonly NestedSheet[], wishes: readonly PlateWish[]): readonly LockedSheet[] {
  const wanted = new Map(wishes.map((wish) => [wish.id, { left: wish.quantity, diameterMm: wish.diameterMm }]));
  return kept.flatMap(({ kind, number, plates }) => {
    const byId = new Map(plates.map((plate) => [plate.id, plate]));
    const stay = new Set<PlacedPlate>();
    const hold = (plate: PlacedPlate): void => {
      const outer = plate.inside === undefined ? undefined : byId.get(plate.inside);
      if (outer) hold(outer);
      stay.add(plate);
    };
    for (const plate of plates) if (plate.locked) hold(plate);
    const gone = new Set<string>();
    const found: PlacedPlate[] = [];
    for (const plate of stay) {
      const wish = wanted.get(plate.wish);
      const held = plate.inside === undefined || !gone.has(plate.inside);
      if (wish && wish.left > 0 && wish.diameterMm === plate.diameterMm && held) {
        wish.left--;
        found.push({ ...plate, locked: true });
      } else gone.add(plate.id);
    }
    return found.length > 0 ? [{ kind, number, plates: found }] : [];
  });
}

/** Plates that stay, as discs in the sheet's container. */
export function lockedDiscs(plates: readonly PlacedPlate[], gaps: NestGaps): readonly Disc[] {
  return plates.filter((p) => p.inside === undefined).map((p) => discOf(circleOf(p), gaps));
}

/** The round waste of plates that stay, with what stays in it. */
export function lockedWastes(
  plates: readonly PlacedPlate[],
  wishes: ReadonlyMap<string, PlateWish>,
  gaps: NestGaps,
): readonly WasteContainer[] {
  return plates.flatMap((plate, before) =>
    (wishes.get(plate.wish)?.waste ?? []).map((waste) => ({
      container: containerOfWaste(wasteInPlace(waste, plate), gaps),
      discs: plates.filter((p) => p.inside === plate.id).map((p) => discOf(circleOf(p), gaps)),
      owner: { before },
    })),
  );
}

function circleOf({ x, y, diameterMm }: PlacedPlate): Circle {
  return { x, y, radiusMm: diameterMm / 2 };
}
