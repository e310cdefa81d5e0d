/**
 * The cuts of one plate, in order.
 *
 * In: a finished plate; its openings are rings of points in mm, outer ones counter-clockwise. Out: the same openings as
 * lines and arcs within ARC_FIT_ERROR_MM, in the order in which they are cut, and the rim as a true circle, last.
 * Not done here: kerf, lead-ins, heat.
 *
 * 1. Fit lines and arcs to every opening; a hole in an opening is a contour too and comes before what is around it.
 * 2. Order by words and nearness from the lower left, where the head of most machines rests.
 * 3. Add up length and pierces.
 */
import { contourLengthMm } from '../../measure/arc.ts';
import { fitArcs } from '../../measure/fit-arcs.ts';
import type { PlateResult } from '../../plate/plate.ts';
import type { Ring } from '../../shapes.ts';
import { ARC_FIT_ERROR_MM } from '../../units.ts';
import type { CutPlan, OpeningContour, RimCut } from '../cut-plan.ts';
import { sequenceOpenings } from './cutting-sequence.ts';

/** Labels of what is set from a face (layout/set-letters.ts). */
const LETTERED = /^(letter|figure|sign) /;

/** Cut plan of a plate; openings too small to have an area are left out. */
export function planCuts(plate: PlateResult): CutPlan {
  const openings: OpeningContour[][] = [];
  const lettered = new Set(plate.layout.shapes.filter((s) => LETTERED.test(s.label)).map((s) => s.elementId));
  for (const { id, elementIds, word, region } of plate.openings) {
    const contours: OpeningContour[] = [];
    const loose = elementIds.some((element) => lettered.has(element)) ? {} : { isLoose: true };
    const add = (contourId: string, ring: Ring) => {
      const contour = fitArcs(ring, ARC_FIT_ERROR_MM);
      if (contour.length > 0) contours.push({ kind: 'opening', id: contourId, elementIds, word, ...loose, contour });
    };
    region.holes.forEach((hole, i) => add(`${id}/hole${i + 1}`, hole));
    add(id, region.outer);
    if (contours.length > 0) openings.push(contours);
  }
  const radius = plate.diameterMm / 2;
  const rim: RimCut = { kind: 'rim', id: 'rim', elementIds: [], diameterMm: plate.diameterMm };
  const ordered = sequenceOpenings(openings, { x: -radius, y: -radius });
  const openingsMm = ordered.reduce((sum, c) => sum + contourLengthMm(c.contour), 0);
  return {
    contours: [...ordered, rim],
    cuttingLengthMm: openingsMm + Math.PI * plate.diameterMm,
    pierces: ordered.length + 1,
  };
}
