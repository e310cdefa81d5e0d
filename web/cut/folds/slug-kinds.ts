import type { SheetPlan, Slug } from '../../../geometry/cutplan/sheet-plan.ts';
import { TIP_LIMIT } from '../../../geometry/cutplan/sheet/slugs.ts';
import type { NestedSheet, PlacedPlate } from '../../../geometry/sheet/sheets.ts';

/** The same piece of all plates of the order that are of one kind and lie turned alike. */
export interface SlugKind {
  /** Of the sheet that is seen, the likeliest of them to tip. */
  readonly slug: Slug;
  readonly plate: PlacedPlate;
  readonly word: string;
  /** On all sheets, this one too. */
  readonly plates: readonly string[];
  /** Held one by one, not by the wish for all. */
  readonly isHeld: boolean;
}

/** Pieces that may tip, and those held one by one, the likeliest to tip first. */
export function slugKinds(
  plan: SheetPlan,
  at: number,
  sheets: readonly NestedSheet[],
  held: readonly string[],
): readonly SlugKind[] {
  const own = new Set(held);
  const placed = new Map(sheets[at]?.plates.map((p) => [p.id, p]));
  const words = new Map(plan.passes.map((p) => [p.id, p.word]));
  const alike = new Map<string, string[]>();
  for (const plate of sheets.flatMap(({ plates }) => plates)) {
    const key = lieOf(plate);
    alike.set(key, [...(alike.get(key) ?? []), plate.id]);
  }
  const kinds = new Map<string, SlugKind>();
  for (const slug of plan.slugs) {
    const isHeld = own.has(slug.pass);
    if (!isHeld && (slug.tips <= TIP_LIMIT || slug.isTabbed)) continue;
    const plate = placed.get(slug.plate);
    if (!plate) continue;
    const key = `${lieOf(plate)}${contourOf(slug)}`;
    if (kinds.has(key)) continue;
    const plates = alike.get(lieOf(plate)) ?? [plate.id];
    kinds.set(key, { slug, plate, word: words.get(slug.pass) ?? '', plates, isHeld });
  }
  return [...kinds.values()];
}

/** After the plate's name: `/opening7`. */
export function contourOf({ pass, plate }: Pick<Slug, 'pass' | 'plate'>): string {
  return pass.slice(plate.length);
}

/** What chances depend on: half a turn changes nothing over slats. */
function lieOf({ wish, turnDeg }: PlacedPlate): string {
  return `${wish} ${(((turnDeg % 180) + 180) % 180).toFixed(3)}`;
}

export function withIds(list: readonly string[], ids: readonly string[], on: boolean): readonly string[] {
  const rest = list.filter((id) => !ids.includes(id));
  return on ? [...rest, ...ids] : rest;
}
