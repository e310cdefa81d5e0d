import { isText } from './kinds.ts';
import type { Design } from './schema.ts';

/** A place that a cell of a table fills: the name of its column in braces. */
export const PLACE = /\{([^{}\n]{1,80})\}/g;

/** The names of the places in a text, in their order, without braces. */
export function placesIn(text: string): string[] {
  return [...text.matchAll(PLACE)].map((m) => m[1] ?? '');
}

/** What a design says beside its plates that a row may fill: its title and the order. */
export function paperTexts({ title, order }: Pick<Design, 'title' | 'order'>): string[] {
  const { who, reference, neededBy, notes } = order;
  return [title, who, reference, neededBy, notes];
}

/** Texts that are cut and have places, with the names of these. */
export function cutPlacesOf({ elements }: Design): { readonly id: string; readonly places: string[] }[] {
  return elements.flatMap((e) => {
    const places = isText(e) ? placesIn(e.text) : [];
    return places.length > 0 ? [{ id: e.id, places }] : [];
  });
}

/** All places of a design: in what is cut, in its title, in the order. */
export function placesOf(design: Design): string[] {
  return [...cutPlacesOf(design).flatMap(({ places }) => places), ...paperTexts(design).flatMap(placesIn)];
}
