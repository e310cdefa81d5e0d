/**
 * A plate's cut file as SVG: width and height in millimetres and a viewBox to match, so that one user unit is 1 mm
 * (SVG 2, coordinate systems); arcs as A commands, y down, hairlines without fill, in the order of cutting.
 */
import type { CutPlan } from '../../cutplan/cut-plan.ts';
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
  const size = fileNumber(half * 2);
  const openings = plan.contours.flatMap((cut) =>
    cut.kind === 'opening'
      ? [`    <path id="${escapeXml(`cut-${oneLine(cut.id, 200)}`)}" d="${contourPath(cut.contour)}"/>`]
      : [],
  );
  const rims = plan.contours.flatMap((cut) =>
    cut.kind === 'rim' ? [`    <circle cx="0" cy="0" r="${fileNumber(cut.diameterMm / 2)}"/>`] : [],
  );
  const title = escapeXml(`${oneLine(design.title, 120) || 'Stencil'}, ${oneLine(plate.name, 60)}`);
  const about = escapeXml(
    `Bridgehead cut file. Fingerprint ${plate.fingerprint}. ${approvalOf(design, plate.fingerprint).text}. ` +
      `Diameter ${fileNumber(plate.diameterMm)} mm. One unit is one millimetre. True size: kerf not taken off. ` +
      `Seen from the painted side.`,
  );
  const stroke = `fill="none" stroke-width="${fileNumber(HAIRLINE_MM)}"`;
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<svg xmlns="http://www.w3.org/2000/svg" width="${size}mm" height="${size}mm" viewBox="${fileNumber(-half)} ${fileNumber(-half)} ${size} ${size}">`,
    `  <title>${title}</title>`,
    `  <desc>${about}</desc>`,
    `  <g id="openings" ${stroke} stroke="#ff0000">`,
    ...openings,
    '  </g>',
    `  <g id="rim" ${stroke} stroke="#0000ff">`,
    ...rims,
    '  </g>',
    '</svg>',
    '',
  ].join('\n');
}
