import type { Design } from '../../design/schema.ts';
import { processIn, type StockBook } from '../../stock/stock-book.ts';
import { SHRINK_SHARE } from '../../units.ts';
import type { PaperWords } from './paper-words.ts';
import { findSpecChecks, checkText } from './spec-checks.ts';
import type { PlannedPlate } from './plate-drawing.ts';
import type { ListArea } from './spec-lists.ts';
import { INK, type TextStyle } from './pdf-page.ts';
import { type PlateEstimate, estimatePlate } from './estimate-plate.ts';

type Row = readonly [label: string, value: (p: PlannedPlate) => string];

/**
 * Least bridge and web stand beside the rule they were held to, and by how little they may miss it (SHRINK_SHARE); the
 * stock, and with it the rule, is the same for all plates.
 */
function rowsFor(design: Design, plates: readonly PlannedPlate[], book: StockBook, words: PaperWords): Row[] {
  const tolerance = processIn(book, design.stock.process)?.tolerance;
  const checks = new Map(plates.map((planned) => [planned, findSpecChecks(planned, tolerance)]));
  const work = new Map(plates.map((planned) => [planned, estimatePlate(planned, design, book)]));
  const rules = plates[0]?.plate.rules;
  const { say, mm, number } = words;
  const beside = (key: 'paperSheet.leastBridge' | 'paperSheet.leastWeb', rule: number | undefined) =>
    say(key, {
      rule: rule === undefined ? '–' : words.plain(Number(rule.toFixed(2))),
      slack: Math.round((1 - SHRINK_SHARE) * 100),
    });
  const kilograms = (kg: number) => (kg < 1 ? `${number(kg * 1000, 0)} g` : `${number(kg, 2)} kg`);
  return [
    [say('paperSheet.diameter'), ({ plate }) => mm(plate.diameterMm)],
    [say('paperSheet.inInches'), ({ plate }) => words.inches(plate.diameterMm)],
    [say('paper.quantity'), ({ plate }) => String(plate.quantity)],
    [say('paperSheet.openings'), ({ plate }) => String(plate.measures.openings)],
    [say('paperSheet.held'), ({ plate }) => String(plate.measures.islands)],
    [say('paperSheet.bridges'), ({ plate }) => String(plate.measures.bridges)],
    [beside('paperSheet.leastBridge', rules?.leastBridgeMm), ({ plate }) => mm(plate.measures.leastBridgeMm, 2)],
    [beside('paperSheet.leastWeb', rules?.leastWebMm), ({ plate }) => mm(plate.measures.leastWebMm, 2)],
    [say('paperSheet.cutting'), ({ plan }) => `${number(plan.cuttingLengthMm / 1000, 2)} m`],
    [say('paperSheet.pierces'), ({ plan }) => String(plan.pierces)],
    [say('paperSheet.time'), (planned) => timeText(work.get(planned), words)],
    [say('paperSheet.sheetShare'), (planned) => shareText(work.get(planned), words)],
    [say('paperSheet.areaCut'), ({ plate }) => `${number(plate.measures.openAreaMm2 / 100, 1)} cm²`],
    [say('paperSheet.areaMetal'), ({ plate }) => `${number(plate.measures.metalAreaMm2 / 100, 1)} cm²`],
    [say('paperSheet.mass'), ({ plate }) => kilograms(plate.measures.massKg)],
    ...CHECKS.map((name, i): Row => [
      say('paperSheet.check', { name }),
      (planned) => checkText(checks.get(planned)?.[i], words),
    ]),
  ];
}

function timeText(work: PlateEstimate | undefined, words: PaperWords): string {
  if (work?.seconds === undefined) return '–';
  const seconds = Math.round(work.seconds);
  return words.say('paperSheet.timeOf', { minutes: Math.floor(seconds / 60), seconds: seconds % 60 });
}

function shareText(work: PlateEstimate | undefined, words: PaperWords): string {
  return work?.sheet ? `${words.number(work.sheet.share * 100, 1)} %` : '–';
}

/** As many as checkDimensions gives at most. */
const CHECKS = ['A', 'B', 'C'];
/** From so many plates on columns and labels are narrow. */
const MANY_PLATES = 6;
const ROW_COUNT = 18;
const ROW_MM = 3.85;
export const TABLE_HEIGHT_MM = ROW_MM * (ROW_COUNT + 1);

/** Plates are columns, figures right-aligned under each other; the type shrinks when there are many. */
export function drawTable(
  { page, words }: ListArea,
  design: Design,
  plates: readonly PlannedPlate[],
  book: StockBook,
  at: { readonly x: number; readonly y: number; readonly width: number },
): void {
  const { x, y, width } = at;
  const rows = rowsFor(design, plates, book, words);
  const labelMm = plates.length > MANY_PLATES ? 30 : 47;
  const columnMm = (width - labelMm) / plates.length;
  const size = columnMm >= 18 ? 8.5 : columnMm >= 15 ? 7.5 : 6;
  const label: TextStyle = { size: plates.length > MANY_PLATES ? 7 : 8.5, colour: INK.quiet, tag: 'TH' };
  const value: TextStyle = { size, align: 'right', tag: 'TD' };
  const head: TextStyle = { size, bold: true, align: 'right', tag: 'TH' };
  page.tags.within('Table', () => {
    page.tags.within('TR', () => {
      page.line(words.say('paper.plate'), x, y, labelMm, { ...label, bold: true, colour: INK.char });
      plates.forEach(({ plate }, i) =>
        page.line(plate.name, x + labelMm + i * columnMm + 1.5, y, columnMm - 1.5, head),
      );
    });
    page.rule(x, y + 1.5, x + width, y + 1.5, 0.25, INK.char);
    rows.forEach(([name, of], k) => {
      const base = y + ROW_MM * (k + 1) + 0.6;
      page.tags.within('TR', () => {
        page.line(name, x, base, labelMm, label);
        plates.forEach((planned, i) => {
          page.line(of(planned), x + labelMm + i * columnMm + 1.5, base, columnMm - 1.5, value);
        });
      });
      if (k < rows.length - 1) page.rule(x, base + 1.25, x + width, base + 1.25, 0.08);
    });
  });
}
