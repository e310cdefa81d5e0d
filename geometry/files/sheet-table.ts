import type { PlannedPlate } from './sheet-drawing.ts';
import { INK, type SheetPage, type TextStyle } from './sheet-page.ts';
import { areaText, inchText, massText, metresText, mmText } from './sheet-words.ts';

type Row = readonly [label: string, value: (p: PlannedPlate) => string];

/** Least bridge and web stand beside the rule they were held to; the stock, and with it the rule, is the same for all plates. */
function rowsFor(plates: readonly PlannedPlate[]): Row[] {
  const rules = plates[0]?.plate.rules;
  const beside = (what: string, rule: number | undefined) =>
    `${what} (rule ${rule === undefined ? '–' : Number(rule.toFixed(2))})`;
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
  ];
}

const ROW_COUNT = 13;
const ROW_MM = 4.7;
export const TABLE_HEIGHT_MM = ROW_MM * (ROW_COUNT + 1);

/** Plates are columns, figures right-aligned under each other; the type shrinks when there are many. */
export function drawTable(page: SheetPage, plates: readonly PlannedPlate[], x: number, y: number, width: number): void {
  const rows = rowsFor(plates);
  const labelMm = plates.length > 6 ? 27 : 34;
  const columnMm = (width - labelMm) / plates.length;
  const size = columnMm >= 18 ? 8.5 : columnMm >= 15 ? 7.5 : 6;
  const label: TextStyle = { size: plates.length > 6 ? 7 : 8.5, colour: INK.quiet };
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
