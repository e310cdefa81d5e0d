/**
 * The spec sheet: one A4 page, vector, that goes with the plates of a design through the shop.
 *
 * In: a design, its plates with their cut plans (one at least), and the two faces to set it in. Out: the bytes of a PDF;
 * the same input gives the same bytes. Everything fits one page: texts that are too long end in an ellipsis, findings
 * that find no room are counted.
 *
 * 1. Heading: title, verdict, fingerprint, approval.
 * 2. From the bottom up: print check, cautions, findings; what is left in the middle goes to drawing and table.
 */
import type { Design } from '../design/schema.ts';
import { BUILT_IN } from '../stock/built-in-stock.ts';
import { materialIn, processIn, type StockBook } from '../stock/stock-book.ts';
import { ARC_FIT_ERROR_MM } from '../units.ts';
import { approvalOf } from './approval.ts';
import { cautionsFor } from './cautions.ts';
import { drawingHeightMm, drawPlates, type PlannedPlate } from './sheet-drawing.ts';
import { gatherFindings, type SheetFinding, verdictSentence } from './sheet-findings.ts';
import { PAPERS } from './page-size.ts';
import { createPage, INK, pageBytes, type SheetFonts, type SheetPage, type TextStyle } from './sheet-page.ts';
import { rolledFacts, rolledOf } from './sheet-rolled.ts';
import { drawTable, TABLE_HEIGHT_MM } from './sheet-table.ts';
import { inchText, mmText } from './sheet-words.ts';
import { oneLine } from './plain-text.ts';

const PAGE = PAPERS.a4;
const LEFT = PAGE.marginMm;
const WIDTH = PAGE.widthMm - 2 * PAGE.marginMm;
const HEAD: TextStyle = { size: 7, bold: true, colour: INK.copper, spacing: 0.9 };
const SMALL: TextStyle = { size: 7.5 };
const SMALL_LEADING_MM = 3.35;
/** The line above the drawing that says its scale. */
const CAPTION_MM = 5;
/** So high the drawing stays however many findings there are: lower when some of them ask for action. */
const LEAST_DRAWING_MM = { notes: 106, faults: 88 };
/** Beside the table there is room for stock and order up to so many plates. */
const NARROW_TABLE_PLATES = 4;

export async function writeSpecSheet(
  design: Design,
  plates: readonly PlannedPlate[],
  font: SheetFonts,
  book: StockBook = BUILT_IN,
): Promise<Uint8Array> {
  const fingerprint = plates[0]?.plate.fingerprint ?? '';
  const title = oneLine(design.title, 120) || 'Stencil';
  const page = createPage({ title: `${title}, spec sheet`, subject: `Fingerprint ${fingerprint}`, fonts: font });
  const findings = gatherFindings(plates);
  const top = drawHeading(page, design, title, fingerprint, findings);
  const cautionsTop = drawCautions(page, cautionsFor(design.stock, book), drawFooter(page, fingerprint));
  const tolerance = processIn(book, design.stock.process)?.tolerance;
  const wide = plates.length > NARROW_TABLE_PLATES;
  const facts = factsOf(design, plates, book);
  const factsHigh = wide ? (facts.rolled.length > 0 ? 31 : 22) : 0;
  const tableHigh = TABLE_HEIGHT_MM + factsHigh;
  // Findings may grow upwards until the drawing would have to shrink.
  const faults = findings.some((f) => f.severity !== 'note');
  const drawingHigh = drawingHeightMm(plates, WIDTH, faults ? LEAST_DRAWING_MM.faults : LEAST_DRAWING_MM.notes);
  const findingsTop = drawFindings(page, findings, cautionsTop - 4, top + CAPTION_MM + drawingHigh + tableHigh + 12);
  const tableTop = findingsTop - tableHigh - 5;
  drawDrawing(page, design, plates, top, tableTop - 7);
  if (wide) {
    drawFactsAcross(page, facts, tableTop);
    drawTable(page, plates, tolerance, LEFT, tableTop + factsHigh, WIDTH);
  } else {
    const tableWide = plates.length < 3 ? 110 : 120;
    drawTable(page, plates, tolerance, LEFT, tableTop, tableWide);
    drawFactsBeside(page, facts, LEFT + tableWide + 9, tableTop, WIDTH - tableWide - 9);
  }
  return pageBytes(page);
}

/** Returns where the drawing may begin. */
function drawHeading(
  page: SheetPage,
  design: Design,
  title: string,
  fingerprint: string,
  findings: readonly SheetFinding[],
): number {
  const right = 46;
  page.line('SPEC SHEET', LEFT, 19, 60, HEAD);
  const room = WIDTH - right - 6;
  const size = [24, 20, 17, 14].find((s) => page.widthOf(title, { size: s, bold: true }) <= room) ?? 14;
  page.line(title, LEFT, 28.5, room, { size, bold: true });
  page.line(verdictSentence(findings), LEFT, 35, room, { size: 10 });
  const x = LEFT + WIDTH - right;
  page.line('FINGERPRINT', x, 19, right, { ...HEAD, align: 'right' });
  page.line(fingerprint, x, 28.5, right, { size: 18, bold: true, align: 'right' });
  const approval = approvalOf(design, fingerprint);
  if (!approval.loud) {
    page.line(approval.text, x - 20, 35, right + 20, { size: 8.5, colour: INK.quiet, align: 'right' });
    page.rule(LEFT, 39, LEFT + WIDTH, 39, 0.35, INK.char);
    return 43;
  }
  page.rule(LEFT, 39, LEFT + WIDTH, 39, 0.35, INK.char);
  page.doc.rect(LEFT, 41, WIDTH, 7).fillColor(INK.char).fill();
  page.line(approval.text, LEFT + 3, 45.6, WIDTH - 6, { size: 9, bold: true, colour: INK.paper, align: 'centre' });
  return 51;
}

/** Returns where what stands above it must end. */
function drawFooter(page: SheetPage, fingerprint: string): number {
  const y = PAGE.heightMm - 13;
  page.rule(LEFT, y - 5, LEFT + WIDTH, y - 5);
  const quiet = { size: 7, colour: INK.quiet } as const;
  // Printers that scale to fit are found out with a rule.
  page.rule(LEFT, y - 1, LEFT + 50, y - 1, 0.2, INK.char);
  for (let i = 0; i <= 5; i++)
    page.rule(LEFT + i * 10, y - 1, LEFT + i * 10, y - (i % 5 === 0 ? 2.6 : 1.9), 0.15, INK.char);
  page.line('Print check: this line is 50 mm long when printed at full size', LEFT + 53, y - 1, 80, quiet);
  page.line(
    `Sizes in mm as cut, kerf not taken off; curves within ${ARC_FIT_ERROR_MM} mm of the points they stand for`,
    LEFT + 53,
    y + 2,
    90,
    quiet,
  );
  page.line(`Bridgehead  ·  ${fingerprint}  ·  page 1 of 1`, LEFT + WIDTH - 50, y - 1, 50, {
    ...quiet,
    align: 'right',
  });
  return y - 8;
}

/** Two columns, upwards from the bottom; returns their top. */
function drawCautions(page: SheetPage, cautions: readonly string[], bottom: number): number {
  const column = (WIDTH - 8) / 2;
  const style = { ...SMALL, size: 7 };
  const rows = cautions.map((text) => page.rows(text, column - 3, style));
  const total = rows.reduce((sum, n) => sum + n, 0);
  // The first column takes at least half of the lines.
  let split = 0;
  let first = 0;
  while (split < rows.length && first < total / 2) first += rows[split++]!;
  const high = Math.max(first, total - first) * SMALL_LEADING_MM;
  const top = bottom - high;
  page.line('TAKE CARE', LEFT, top - 1.5, 60, HEAD);
  let y = top + 2.6;
  cautions.forEach((text, i) => {
    if (i === split) y = top + 2.6;
    const x = LEFT + (i < split ? 0 : column + 8);
    page.line('–', x, y, 3, style);
    page.block(text, x + 3, y, column - 3, rows[i]!, SMALL_LEADING_MM, style);
    y += rows[i]! * SMALL_LEADING_MM;
  });
  return top - 4;
}

/** Worst first, upwards from bottom, never above highest; returns their top. */
function drawFindings(page: SheetPage, findings: readonly SheetFinding[], bottom: number, highest: number): number {
  const texts = findings.map((f) =>
    f.plates.length > 0 ? `${f.plates.map((name) => page.fit(name, 30, SMALL)).join(', ')}: ${f.sentence}` : f.sentence,
  );
  const style = { ...SMALL, size: 8 };
  const leading = 3.6;
  const most = Math.max(2, Math.floor((bottom - highest) / leading) - 1);
  const shown: { text: string; rows: number; severity: SheetFinding['severity'] }[] = [];
  let used = 0;
  for (const [i, text] of texts.entries()) {
    const rows = Math.min(3, page.rows(text, WIDTH - 24, { ...style, bold: findings[i]!.severity === 'stop' }));
    const restNeedsLine = i < texts.length - 1 ? 1 : 0;
    if (used + rows + restNeedsLine > most) break;
    shown.push({ text, rows, severity: findings[i]!.severity });
    used += rows;
  }
  const rest = texts.length - shown.length;
  const lines = used + (rest > 0 || texts.length === 0 ? 1 : 0);
  const top = bottom - lines * leading;
  page.line('FINDINGS', LEFT, top - 1.5, 60, HEAD);
  let y = top + 3;
  if (texts.length === 0) page.line('None.', LEFT, y, WIDTH, style);
  for (const { text, rows, severity } of shown) {
    const bold = severity === 'stop';
    page.line(SAYS[severity], LEFT, y, 22, { ...style, bold, colour: bold ? INK.char : INK.quiet });
    page.block(text, LEFT + 24, y, WIDTH - 24, rows, leading, { ...style, bold });
    y += rows * leading;
  }
  if (rest > 0)
    page.line(`and ${rest} more: see the findings file`, LEFT + 24, y, WIDTH - 24, { ...style, colour: INK.quiet });
  return top - 4;
}

const SAYS = { stop: 'Do not cut', look: 'Look at', note: 'To know' } as const;

function drawDrawing(
  page: SheetPage,
  design: Design,
  plates: readonly PlannedPlate[],
  top: number,
  bottom: number,
): void {
  const from = top + CAPTION_MM;
  const box = { x: LEFT, y: from, width: WIDTH, height: bottom - from };
  const scale = drawPlates(page, plates, box, ({ diameterMm }) => rolledOf(design, diameterMm)?.axis);
  const quiet = { size: 8, colour: INK.quiet } as const;
  const said = page.line(`Scale 1:${scale}`, LEFT, top + 3, 40, { size: 8.5, bold: true });
  page.line('seen from the painted side', LEFT + said + 3, top + 3, 60, quiet);
  page.line('sizes in millimetres', LEFT + WIDTH - 60, top + 3, 60, { ...quiet, align: 'right' });
}

type Fact = readonly [label: string, value: string];
interface Facts {
  readonly stock: readonly Fact[];
  readonly order: readonly Fact[];
  /** Nothing for plates that stay flat. */
  readonly rolled: readonly Fact[];
}

/** All plates of a design are rolled to the one radius of its barrel. */
function factsOf(design: Design, plates: readonly PlannedPlate[], book: StockBook): Facts {
  const { stock, order } = design;
  const rolled = plates.map(({ plate }) => rolledOf(design, plate.diameterMm)).find((r) => r !== undefined);
  return {
    stock: [
      ['Material', materialIn(book, stock.material)?.name ?? stock.material],
      ['Thickness', `${mmText(stock.thicknessMm, 2)} (${inchText(stock.thicknessMm)})`],
      ['Process', processIn(book, stock.process)?.name ?? stock.process],
      ['Use', stock.use === 'torch' ? 'Torch' : 'Paint'],
    ],
    order: [
      ['For', oneLine(order.who, 4000) || '–'],
      ['Reference', oneLine(order.reference, 4000) || '–'],
      ['Needed by', oneLine(order.neededBy, 4000) || '–'],
      ['Notes', oneLine(order.notes, 4000) || '–'],
    ],
    rolled: rolled ? rolledFacts(rolled) : [],
  };
}

function drawFactsBeside(page: SheetPage, facts: Facts, x: number, top: number, width: number): void {
  let y = top;
  for (const [heading, rows] of [
    ['STOCK', [...facts.stock, ...facts.rolled]],
    ['ORDER', facts.order],
  ] as const) {
    page.line(heading, x, y, width, HEAD);
    y += 4.9;
    for (const [label, value] of rows) {
      page.line(label, x, y, 17, { size: 8, colour: INK.quiet });
      const most = label === 'Notes' ? Math.max(1, Math.floor((top + TABLE_HEIGHT_MM - y) / 3.8)) : 2;
      y += page.block(value, x + 17, y, width - 17, most, 3.8, { size: 8.5 }) * 3.8 + 0.9;
    }
    y += 3;
  }
}

/** With many plates the table takes the whole width: stock and order stand above it, a row each. */
function drawFactsAcross(page: SheetPage, facts: Facts, top: number): void {
  [facts.stock, facts.order, facts.rolled].forEach((row, k) => {
    const column = WIDTH / row.length;
    row.forEach(([label, value], i) => {
      page.line(label, LEFT + i * column, top + k * 9, column - 3, { size: 7, colour: INK.quiet });
      page.line(value, LEFT + i * column, top + k * 9 + 3.8, column - 3, { size: 8.5 });
    });
  });
}
