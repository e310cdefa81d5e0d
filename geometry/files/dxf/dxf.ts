/**
 * A plate's cut file: DXF AC1015 (release 2000), ASCII, millimetres.
 *
 * Layers OPENINGS and RIM. Every cut of an opening is one closed LWPOLYLINE with bulges, the rim a CIRCLE; entities stand
 * in the order of cutting. Comments (group 999) at the top say what the file is. y up, seen from the painted side, the
 * plate's centre at the origin. True size: no kerf is taken off.
 */
import type { CutPlan } from '../../cutplan/cut-plan.ts';
import { showFingerprint } from '../../design/show-fingerprint.ts';
import type { Design } from '../../design/schema.ts';
import type { PlateResult } from '../../plate/plate.ts';
import { MM_PER_INCH } from '../../units.ts';
import { approvalOf } from '../approval.ts';
import { writeCircle, writePolyline } from './entities.ts';
import { writeDxfFile } from './frame.ts';
import { fileNumber } from '../numbers.ts';
import { oneLine } from '../plain-text.ts';

/** Colour indices 1 red, 5 blue: far apart on a dark and on a light screen, and for the colour-blind. */
const OPENINGS = { name: 'OPENINGS', colour: 1 };
const RIM = { name: 'RIM', colour: 5 };

/** The whole file; throws RangeError when a number is not finite (nothing half-written ever leaves). */
export function writeDxf(design: Design, plate: PlateResult, plan: CutPlan): string {
  const half = plate.diameterMm / 2;
  const extent = { minX: -half, minY: -half, maxX: half, maxY: half };
  return writeDxfFile(commentsFor(design, plate), [OPENINGS, RIM], extent, plan.contours, (tags, handle, cut) => {
    if (cut.kind === 'rim') writeCircle(tags, handle, RIM.name, { x: 0, y: 0 }, cut.diameterMm / 2);
    else writePolyline(tags, handle, OPENINGS.name, cut.contour, true);
  });
}

function commentsFor(design: Design, plate: PlateResult): string[] {
  const inches = (plate.diameterMm / MM_PER_INCH).toFixed(3);
  return [
    'Bridgehead cut file',
    `Title: ${oneLine(design.title, 120)}`,
    `Plate: ${oneLine(plate.name, 60)}`,
    `Fingerprint: ${showFingerprint(plate.fingerprint)}`,
    `Whole: ${plate.fingerprint}`,
    `Approval: ${approvalOf(design, plate.fingerprint).text}`,
    `Diameter: ${fileNumber(plate.diameterMm)} mm (${inches} in)`,
    'Units: millimetres',
    'True size: kerf not taken off. Seen from the painted side.',
  ];
}
