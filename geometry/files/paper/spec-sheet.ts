/**
 * The spec sheet: one page, vector, that goes with the plates of a design through the shop.
 *
 * In: a design, its plates with their cut plans (one at least), the two faces to set it in, what the shop can cut, and on
 * which paper in which language. Out: the bytes of a tagged PDF; the same input gives the same bytes. Everything fits one
 * page: texts that are too long end in an ellipsis, findings that find no room are counted.
 *
 * 1. Heading: title, verdict, fingerprint, approval, and the fingerprint for a machine.
 * 2. From the bottom up: print check, cautions, findings; what is left in the middle goes to drawing and table.
 *
 * It is read out in the order of the page, though it is drawn in another.
 */
import type { Design } from '../../design/schema.ts';
import { showFingerprint } from '../../design/show-fingerprint.ts';
import type { StockBook } from '../../stock/stock-book.ts';
import { ARC_FIT_ERROR_MM } from '../../units.ts';
import { amount, inMm } from '../../sentences/say.ts';
import { approvalWords } from '../approval.ts';
import { listCautions } from './cautions.ts';
import type { PaperFormat } from './paper-format.ts';
import { PAPERS } from './page-size.ts';
import { asHeading, paperWords } from './paper-words.ts';
import { oneLine } from '../plain-text.ts';
import { codeText, drawQrCode } from './qr-code.ts';
import { drawFactsAcross, drawFactsBeside, gatherFacts } from './spec-facts.ts';
import { drawingHeightMm, drawPlates, type PlannedPlate } from './plate-drawing.ts';
import { gatherFindings, type SpecFinding, verdictWords } from './spec-findings.ts';
import { drawCautions, drawFindings, HEAD, type ListArea } from './spec-lists.ts';
import { createPage, INK, pageBytes, type PageFonts } from './pdf-page.ts';
import { findRolling } from './rolled-plate.ts';
import { drawTable, TABLE_HEIGHT_MM } from './spec-table.ts';

/** The line above the drawing that says its scale. */
const CAPTION_MM = 5;
/** So high the drawing stays however many findings there are, as shares of the page: lower when some of them ask for action. */
const LEAST_DRAWING = { notes: 0.34, faults: 0.28 };
/** Beside the table there is room for stock and order up to so many plates. */
const NARROW_TABLE_PLATES = 4;
const CODE_MM = 19;

const IN_ENGLISH: PaperFormat = { page: 'a4', language: 'en' };

export async function writeSpecSheet(
  design: Design,
  plates: readonly PlannedPlate[],
  fonts: PageFonts,
  book: StockBook,
  manner: PaperFormat = IN_ENGLISH,
): Promise<Uint8Array> {
  const words = paperWords(manner);
  const { say } = words;
  const size = PAPERS[manner.page];
  const fingerprint = plates[0]?.plate.fingerprint ?? '';
  const title = oneLine(design.title, 120) || say('paper.stencil');
  const page = createPage({
    title: say('paperSheet.title', { title }),
    subject: say('paper.fingerprint', { fingerprint }),
    fonts,
    size,
    language: manner.language,
  });
  const lists: ListArea = { page, words, left: size.marginMm, width: size.widthMm - 2 * size.marginMm };
  const { left, width } = lists;
  const [inHead, inDrawing, inFacts, inFindings, inCautions, inFoot] = [0, 0, 0, 0, 0, 0].map(() =>
    page.tags.section(),
  );
  const findings = gatherFindings(design, plates, words);
  const top = inHead!(() =>
    drawHeading(lists, design, { title, fingerprint, findings, code: codeText(design, fingerprint) }),
  );
  const cautions = listCautions(design.stock, book).map((c) => words.speak(c));
  const footTop = inFoot!(() => drawFooter(lists, fingerprint));
  const cautionsTop = inCautions!(() => drawCautions(lists, cautions, footTop));
  const wide = plates.length > NARROW_TABLE_PLATES;
  const facts = gatherFacts(design, plates, book, words);
  const factsHigh = wide ? (facts.rolled.length > 0 ? 31 : 22) : 0;
  const tableHigh = TABLE_HEIGHT_MM + factsHigh;
  // Findings may grow upwards until the drawing would have to shrink.
  const faults = findings.some((f) => f.severity !== 'note');
  const least = size.heightMm * (faults ? LEAST_DRAWING.faults : LEAST_DRAWING.notes);
  const highest = top + CAPTION_MM + drawingHeightMm(plates, width, least) + tableHigh + 12;
  const findingsTop = inFindings!(() => drawFindings(lists, findings, cautionsTop - 4, highest));
  const tableTop = findingsTop - tableHigh - 5;
  inDrawing!(() => drawDrawing(lists, design, plates, top, tableTop - 7));
  inFacts!(() => {
    if (wide) {
      drawFactsAcross(lists, facts, tableTop);
      drawTable(lists, design, plates, book, { x: left, y: tableTop + factsHigh, width });
    } else {
      const tableWide = plates.length < 3 ? 110 : 120;
      drawTable(lists, design, plates, book, { x: left, y: tableTop, width: tableWide });
      drawFactsBeside(lists, facts, left + tableWide + 9, tableTop, width - tableWide - 9);
    }
  });
  return pageBytes(page);
}

interface Heading {
  readonly title: string;
  readonly fingerprint: string;
  readonly findings: readonly SpecFinding[];
  readonly code: string;
}

/** Returns where the drawing may begin. */
function drawHeading({ page, words, left, width }: ListArea, design: Design, heading: Heading): number {
  const { title, fingerprint, findings, code } = heading;
  const codeX = left + width - CODE_MM;
  const right = 40;
  const x = codeX - 5 - right;
  page.line(asHeading(words.say('paperSheet.spec')), left, 19, 60, { ...HEAD, tag: 'P' });
  const room = width - right - CODE_MM - 9;
  const size = [24, 20, 17, 14].find((s) => page.widthOf(title, { size: s, bold: true }) <= room) ?? 14;
  page.line(title, left, 28.5, room, { size, bold: true, tag: 'H1' });
  page.line(words.speak(verdictWords(findings)), left, 35, room, { size: 10 });
  page.line(asHeading(words.say('paper.fingerprint', { fingerprint: '' })).trim(), x, 19, right, {
    ...HEAD,
    tag: 'P',
    align: 'right',
  });
  page.line(showFingerprint(fingerprint), x, 27.5, right, { size: 11, bold: true, align: 'right' });
  page.tags.picture(words.say('paperSheet.codeAlt'), () => drawQrCode(page, code, codeX, 16.2, CODE_MM));
  const { words: drawing, loud: drawingLoud, order } = approvalWords(design, fingerprint, 'written');
  // The workshop is told of an order that is not as approved as loudly as of a drawing.
  const orderLoud = order?.loud === true;
  const loud = drawingLoud || orderLoud;
  const said = words.speak(orderLoud && !drawingLoud ? order.words : drawing);
  page.rule(left, 39, left + width, 39, 0.35, INK.char);
  if (!loud) {
    page.line(said, x - 16, 35, right + 16, { size: 8.5, colour: INK.quiet, align: 'right' });
    return 43;
  }
  page.tags.ornament(() => page.doc.rect(left, 41, width, 7).fillColor(INK.char).fill());
  const style = { size: 9, bold: true, colour: INK.paper, align: 'centre' } as const;
  page.line(said.replace(/^[^:]*/, asHeading), left + 3, 45.6, width - 6, style);
  return 51;
}

/** Returns where what stands above it must end. */
function drawFooter({ page, words, left, width }: ListArea, fingerprint: string): number {
  const y = page.heightMm - 13;
  page.rule(left, y - 5, left + width, y - 5);
  const quiet = { size: 7, colour: INK.quiet } as const;
  // Printers that scale to fit are found out with a rule.
  page.rule(left, y - 1, left + 50, y - 1, 0.2, INK.char);
  for (let i = 0; i <= 5; i++)
    page.rule(left + i * 10, y - 1, left + i * 10, y - (i % 5 === 0 ? 2.6 : 1.9), 0.15, INK.char);
  page.line(words.say('paper.printCheck', { length: inMm(50) }), left + 53, y - 1, 84, quiet);
  page.line(words.say('paperSheet.cutSize', { error: inMm(ARC_FIT_ERROR_MM, 3) }), left + 53, y + 2, width - 53, quiet);
  const end = `${showFingerprint(fingerprint)}  ·  ${words.say('paper.pageOf', { number: 1, of: 1 })}`;
  page.line(end, left + width - 50, y - 1, 50, { ...quiet, align: 'right' });
  return y - 8;
}

function drawDrawing(
  { page, words, left, width }: ListArea,
  design: Design,
  plates: readonly PlannedPlate[],
  top: number,
  bottom: number,
): void {
  const from = top + CAPTION_MM;
  const box = { x: left, y: from, width, height: bottom - from };
  const { scale } = drawPlates(page, plates, box, {
    words,
    checks: true,
    axisOf: ({ diameterMm }) => findRolling(design, diameterMm)?.axis,
  });
  const quiet = { size: 8, colour: INK.quiet } as const;
  const stated = words.say('paper.scale', { scale: amount(scale, 2) });
  const said = page.line(stated, left, top + 3, 40, { size: 8.5, bold: true });
  page.line(words.say('paper.seenFrom'), left + said + 3, top + 3, 70, quiet);
  page.line(words.say('paper.sizesIn'), left + width - 60, top + 3, 60, { ...quiet, align: 'right' });
}
