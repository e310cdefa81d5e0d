/**
 * A plate's cut file as SVG: width and height in millimetres and a viewBox to match, so that one user unit is 1 mm
 * (SVG 2, coordinate systems); arcs as A commands, y down, hairlines without fill, in the order of cutting.
 */
import type { CutPlan } from '../../cutplan/cut-plan.ts';
import { showFingerprint } from '../../design/show-fingerprint.ts';
import type { Design } from '../../design/schema.ts';
import type { PlateResult } from '../../plate/plate.ts';
import { approvalOf } from '../approval.ts';
import { fileNumber } from '../numbers.ts';
import { oneLine } from '../plain-text.ts';
import { contourPath } from './svg-path.ts';
import { escapeXml } from '../xml.ts';
import { HAIRLINE_MM } from '../../units.ts';

/** The whole file; throws RangeError when a number is not finite. */
export function writeSvg(design: Design, plate: PlateResult, plan: CutPlan): string {
  // The rim's hairline is half outside the circle: half a millimetre of air keeps it whole.
  const half = plate.diameterMm / 2 + 0.5;
  const openings = plan.contours.flatMap((cut) =>
    cut.kind === 'opening'
      ? [`    <path id="${escapeXml(`cut-${oneLine(cut.id, 200)}`)}" d="${contourPath(cut.contour)}"/>`]
      : [],
  );
  const rims = plan.contours.flatMap((cut) =>
    cut.kind === 'rim' ? [`    <circle cx="0" cy="0" r="${fileNumber(cut.diameterMm / 2)}"/>`] : [],
  );
  const title = `${oneLine(design.title, 120) || 'Stencil'}, ${oneLine(plate.name, 60)}`;
  const about =
    `Bridgehead cut file. Fingerprint ${showFingerprint(plate.fingerprint)}, whole ${plate.fingerprint}. ` +
    `${approvalOf(design, plate.fingerprint).text}. ` +
    `Diameter ${fileNumber(plate.diameterMm)} mm. One unit is one millimetre. True size: kerf not taken off. ` +
    `Seen from the painted side.`;
  return writeSvgFile({ left: -half, top: -half, width: half * 2, height: half * 2 }, title, about, [
    `  <g id="openings" ${STROKE} stroke="#ff0000">`,
    ...openings,
    '  </g>',
    `  <g id="rim" ${STROKE} stroke="#0000ff">`,
    ...rims,
    '  </g>',
  ]);
}

/** Lines without fill, so thin that drivers take them for cutting lines. */
export const STROKE = `fill="none" stroke-width="${fileNumber(HAIRLINE_MM)}"`;

/** A whole SVG file in millimetres about its lines; title and about are plain text. */
export function writeSvgFile(
  box: { readonly left: number; readonly top: number; readonly width: number; readonly height: number },
  title: string,
  about: string,
  lines: readonly string[],
): string {
  const [left, top, width, height] = [box.left, box.top, box.width, box.height].map((mm) => fileNumber(mm));
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="${left} ${top} ${width} ${height}">`,
    `  <title>${escapeXml(title)}</title>`,
    `  <desc>${escapeXml(about)}</desc>`,
    ...lines,
    '</svg>',
    '',
  ].join('\n');
}
