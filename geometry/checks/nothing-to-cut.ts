import type { Finding } from '../findings.ts';
import { isElementId } from '../layout/no-element.ts';
import { said } from '../sentences/say.ts';
import { aboutPlate } from './about-plate.ts';
import type { CheckInput } from './input.ts';

/** A plate without a single opening, but those to lift it by, is a round of metal; what a ring lacks, its layout says. */
export function checkNothingToCut({ plate, openings }: CheckInput): Finding[] {
  if (openings.some((o) => o.elementIds.some(isElementId)) || plate.masks !== undefined) return [];
  return [{ ...aboutPlate('nothing-to-cut', 'look'), ...said('findings.nothingToCut') }];
}
