import { placeRing } from '../../measure/place.ts';
import type { PlacedPlate } from '../../sheet/sheets.ts';
import type { Point } from '../../shapes.ts';
import { type SaidKey, said } from '../../sentences/say.ts';
import type { PreparedPlate } from './prepare-plate.ts';
import type { PlanNote } from '../sheet-plan.ts';

const KEYS: Record<PlanNote['kind'], SaidKey> = {
  lost: 'findings.cutLost',
  parted: 'findings.cutParted',
  narrow: 'findings.cutNarrow',
  tight: 'findings.cutTight',
};

/** What could not be done as wished on one plate, in the sheet's frame. */
export function writeNotes(
  plate: PlacedPlate,
  work: PreparedPlate,
  tight: readonly { readonly contour: string; readonly at: Point }[],
): PlanNote[] {
  const note = (kind: PlanNote['kind'], contour: string, at: Point): PlanNote => ({
    kind,
    plate: plate.id,
    contour,
    at: placeRing([at], plate)[0]!,
    ...said(KEYS[kind]),
  });
  return [
    ...work.kerf.troubles.map((t) => note(t.kind, t.opening, t.at)),
    ...tight.map((t) => note('tight', t.contour, t.at)),
  ];
}
