import { cutPlacesOf, paperTexts, placesIn } from '../design/places.ts';
import type { Finding } from '../findings.ts';
import { said } from '../sentences/say.ts';
import { aboutPlate } from './about-plate.ts';
import type { CheckInput } from './input.ts';

/**
 * A {column} that no table has filled: cut as it stands it would be metal for nothing. A series checks its filled rows,
 * so its form never comes here to be cut. In title and order it is on paper and in file names only.
 */
export function checkUnfilledPlaces({ design, plate }: CheckInput): Finding[] {
  if (plate.masks !== undefined) return [];
  const cut = cutPlacesOf(design);
  if (cut.length > 0) {
    const elementIds = cut.map(({ id }) => id);
    const values = { places: listed(cut.flatMap(({ places }) => places)) };
    return [{ ...aboutPlate('unfilled-place', 'stop'), elementIds, ...said('findings.unfilledPlace', values) }];
  }
  const paper = paperTexts(design).flatMap(placesIn);
  if (paper.length === 0) return [];
  return [{ ...aboutPlate('unfilled-paper', 'look'), ...said('findings.unfilledPaper', { places: listed(paper) }) }];
}

function listed(places: readonly string[]): string {
  return [...new Set(places)].map((place) => `{${place}}`).join(', ');
}
