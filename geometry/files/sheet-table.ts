import type { Tolerance } from '../stock/tolerances.ts';
import { checksOf, checkText } from './sheet-checks.ts';
import type { PlannedPlate } from './sheet-drawing.ts';
import { INK, type SheetPage, type TextStyle } from './sheet-page.ts';
import { SHRINK_SHARE } from '../units.ts';
import { areaText, inchText, massText, metresText, mmText } from './sheet-words.ts';

type Row = readonly [label: string, value: (p: PlannedPlate) => string];

/**
 * Least bridge and web stand beside the rule they were held to, and by how little they may miss it (SHRINK_SHARE); the
 * stock, and with it the rule, is the same for all plates.
 */
function rowsFor(plates: readonly PlannedPlate[], tolerance: Tolerance | undefined): Row[] {
  const checks = new Map(plates.map((planned) => [planned, checksOf(planned, tolerance)]));
  const rules = plates[0]?.plate.rules;
  const beside = (what: string, rule: number | undefined) =>
    `${what} (${plates.length > MANY_PLATES ? '' : 'rule '}${rule === undefined ? '–' : Number(rule.toFixed(2))} −${Math.round((1 - SHRINK_SHARE) * 100)} %)`;
  return [
    ['Diameter', ({ plate }) => mmText(plate.diameterMm)],
    ['in inches', ({ plate }) => inchText(plate.diameterMm)],
    ['Quantity', ({ plate }) => String(plate.quantity)],
    ['Openings', ({ plate }) => String(plate.measures.openings)],
    ['Loose pieces held', ({ plate }) => String(plate.measures.islands)],
    ['Bridges', ({ plate }) => String(plate.measures.bridges)],
    [beside('Least bridge', rules?.leastBridgeMm), ({ plate }) => mmText(plate.measures.leastBridgeMm, 2)],
    [beside('Least web', rules?.leastWebMm), ({ plate }) => mmText(plate.measures.leastWebMm, 2)],
    ['Cutting length, each', ({ plan }) => metresText(plan.cuttingLengthMm)],
    ['Pierces, each', ({ plan }) => String(plan.pierces)],
    ['Area cut away', ({ plate }) => areaText(plate.measures.openAreaMm2)],
    ['Area of metal', ({ plate }) => areaText(plate.measures.metalAreaMm2)],
    ['Mass, each', ({ plate }) => massText(plate.measures.massKg)],
    ...CHECKS.map((name, i): Row => [`Check ${name}, mm`, (planned) => checkText(checks.get(planned)?.[i])]),
  ];
}

/** As many as checkDimensions gives at most. */
const CHECKS = ['A', 'B', 'C'];
/** From so many plates on columns and labels are narrow. */
const MANY_PLATES = 6;
const ROW_COUNT = 16;
const ROW_MM = 4.1;
export const TABLE_HEIGHT_MM = ROW_MM * (ROW_COUNT + 1);

/** Plates are columns, figures right-aligned under each other; the type shrinks when there are many. */
export function drawTable(
  page: SheetPage,
  plates: readonly PlannedPlate[],
  tolerance: Tolerance | undefined,
  x: number,
  y: number,
  width: number,
): void {
  const rows = rowsFor(plates, tolerance);
  const labelMm = plates.length > MANY_PLATES ? 27 : 43;
  const columnMm = (width - labelMm) / plates.length;
  const size = columnMm >= 18 ? 8.5 : columnMm >= 15 ? 7.5 : 6;
  const label: TextStyle = { size: plates.length > MANY_PLATES ? 7 : 8.5, colour: INK.quiet };
  const value: TextStyle = { size, align: 'right' };
  const head: TextStyle = { size, bold: true, align: 'right' };
  page.line('Plate', x, y, labelMm, { ...label, bold: true, colour: INK.char });
  plates.forEach(({ plate }, i) => page.line(plate.name, x + labelMm + i * columnMm + 1.5, y, columnMm - 1.5, head));
  page.rule(x, y + 1.5, x + width, y + 1.5, 0.25, INK.char);
  rows.forEach(([name, of], k) => {
    const base = y + ROW_MM * (k + 1) + 0.6;
    page.line(name, x, base, labelMm, label);
    plates.forEach((planned, i) =>
      page.line(of(planned), x + labelMm + i * columnMm + 1.5, base, columnMm - 1.5, value),
    );
    if (k < rows.length - 1) page.rule(x, base + 1.35, x + width, base + 1.35, 0.08);
  });
}
