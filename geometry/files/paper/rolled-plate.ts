import { bendStrain } from '../../barrel/bend.ts';
import { surfaceOf } from '../../barrel/surface-of.ts';
import type { SideSurface } from '../../barrel/surface.ts';
import type { Design } from '../../design/schema.ts';
import { INK, type PdfPage } from './pdf-page.ts';
import type { PaperWords } from './paper-words.ts';

/** What the shop must know to roll a plate for the side of a barrel. */
export interface Rolling {
  readonly radiusMm: number;
  /** Strain of the outer fibre, as a share. */
  readonly strain: number;
  /** Which way the axis of the roll lies on the drawing. */
  readonly axis: 'upright' | 'level';
}

/** Undefined for a plate that stays flat, or that can't lie where it is to lie. */
export function findRolling(design: Design, diameterMm: number): Rolling | undefined {
  const lying = surfaceOf(design, diameterMm, design.stock.thicknessMm);
  if ('problem' in lying || lying.surface.kind !== 'side') return undefined;
  const { bilgeRadiusMm, thicknessMm, lines }: SideSurface = lying.surface;
  return {
    radiusMm: bilgeRadiusMm,
    strain: bendStrain(bilgeRadiusMm, thicknessMm),
    axis: lines === 'along-hoops' ? 'upright' : 'level',
  };
}

/** The rolling in three short lines: radius, way, strain. The plate's diameter on the sheet is that of the flat blank. */
export function describeRolling(
  rolled: Rolling,
  words: PaperWords,
): readonly (readonly [label: string, value: string])[] {
  const { say } = words;
  const radius = { radius: words.mm(rolled.radiusMm), inches: words.inches(rolled.radiusMm) };
  return [
    [say('paperSheet.rollTo'), say('paperSheet.rollToRadius', radius)],
    [say('paperSheet.axis'), say(rolled.axis === 'upright' ? 'paperSheet.axisUpright' : 'paperSheet.axisLevel')],
    [say('paperSheet.strain'), say('paperSheet.strainOf', { percent: words.number(100 * rolled.strain, 2) })],
  ];
}

/** The axis of the roll over a drawn plate: a long-dashed line, a little past the rim. */
export function drawRollAxis(page: PdfPage, axis: Rolling['axis'], cx: number, cy: number, radius: number): void {
  const reach = radius + 2.4;
  const [dx, dy] = axis === 'upright' ? [0, reach] : [reach, 0];
  const { doc } = page;
  doc.save();
  doc
    .moveTo(cx - dx, cy - dy)
    .lineTo(cx + dx, cy + dy)
    .dash(6, { space: 1.2 })
    .lineWidth(0.2)
    .strokeColor(INK.copper)
    .stroke();
  doc.undash();
  doc.restore();
}
