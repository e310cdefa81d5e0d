/**
 * A plate's cut file: DXF AC1015 (release 2000), ASCII, millimetres.
 *
 * Layers OPENINGS and RIM. Every cut of an opening is one closed LWPOLYLINE with bulges, the rim a CIRCLE; entities stand
 * in the order of cutting. Comments (group 999) at the top say what the file is. y up, seen from the painted side, the
 * plate's centre at the origin. True size: no kerf is taken off.
 */
import type { CutPlan, OpeningContour, RimCut } from '../cutplan/cut-plan.ts';
import type { Design } from '../design/schema.ts';
import type { PlateResult } from '../plate.ts';
import { MM_PER_INCH } from '../units.ts';
import { approvalOf } from './approval.ts';
import {
  endSection,
  entity,
  FIRST_ENTITY_HANDLE,
  MODEL_SPACE_HANDLE,
  section,
  writeBlocks,
  writeHeader,
  writeObjects,
  writeTables,
} from './dxf-frame.ts';
import { createTags, type TagWriter } from './dxf-tags.ts';
import { fileNumber } from './numbers.ts';
import { oneLine } from './plain-text.ts';

/** Colour indices 1 red, 5 blue: far apart on a dark and on a light screen, and for the colour-blind. */
const OPENINGS = { name: 'OPENINGS', colour: 1 };
const RIM = { name: 'RIM', colour: 5 };

/** The whole file; throws RangeError when a number is not finite (nothing half-written ever leaves). */
export function writeDxf(design: Design, plate: PlateResult, plan: CutPlan): string {
  const tags = createTags();
  const halfMm = plate.diameterMm / 2;
  for (const line of commentsFor(design, plate)) tags.text(999, line);
  writeHeader(tags, halfMm, FIRST_ENTITY_HANDLE + plan.contours.length);
  writeTables(tags, [OPENINGS, RIM], halfMm);
  writeBlocks(tags);
  section(tags, 'ENTITIES');
  plan.contours.forEach((cut, i) => {
    const handle = (FIRST_ENTITY_HANDLE + i).toString(16).toUpperCase();
    if (cut.kind === 'rim') writeCircle(tags, handle, cut);
    else writePolyline(tags, handle, cut);
  });
  endSection(tags);
  writeObjects(tags);
  tags.text(0, 'EOF');
  return tags.toString();
}

function commentsFor(design: Design, plate: PlateResult): string[] {
  const inches = (plate.diameterMm / MM_PER_INCH).toFixed(3);
  return [
    'Bridgehead cut file',
    `Title: ${oneLine(design.title, 120)}`,
    `Plate: ${oneLine(plate.name, 60)}`,
    `Fingerprint: ${plate.fingerprint}`,
    `Approval: ${approvalOf(design, plate.fingerprint).text}`,
    `Diameter: ${fileNumber(plate.diameterMm)} mm (${inches} in)`,
    'Units: millimetres',
    'True size: kerf not taken off. Seen from the painted side.',
  ];
}

function writeCircle(tags: TagWriter, handle: string, rim: RimCut): void {
  tags.text(0, 'CIRCLE');
  entity(tags, handle, MODEL_SPACE_HANDLE, RIM.name);
  tags.text(100, 'AcDbCircle');
  tags.point3(0, 0);
  tags.length(40, rim.diameterMm / 2);
}

function writePolyline(tags: TagWriter, handle: string, cut: OpeningContour): void {
  tags.text(0, 'LWPOLYLINE');
  entity(tags, handle, MODEL_SPACE_HANDLE, OPENINGS.name);
  tags.text(100, 'AcDbPolyline');
  tags.whole(90, cut.contour.length);
  tags.whole(70, 1);
  for (const { x, y, bulge } of cut.contour) {
    tags.point(x, y);
    if (bulge !== 0) tags.bulge(bulge);
  }
}
