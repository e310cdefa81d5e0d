/**
 * The cut list of one sheet on paper: A4, a picture of the sheet with its plates, the designs with their fingerprints,
 * then every cut in its turn, on as many pages as it takes. The same input gives the same bytes.
 */
import { showFingerprint } from '../../design/show-fingerprint.ts';
import { type CutListRow, cutList } from './cut-list.ts';
import { designsOn, type JobDesign, type JobSheet, sheetName } from './job.ts';
import { contourPath } from '../svg/svg-path.ts';
import { PAPERS } from '../paper/page-size.ts';
import { addPage, createPage, INK, pageBytes, type PageFonts, type PdfPage } from '../paper/pdf-page.ts';

const PAGE = PAPERS.a4;
const LEFT = PAGE.marginMm;
const WIDTH = PAGE.widthMm - 2 * PAGE.marginMm;
const BOTTOM = PAGE.heightMm - 20;
const ROW_MM = 4.1;
const PICTURE_MM = 90;
/** Designs named on the first page; the others are counted. */
const MOST_DESIGNS = 12;
/** Of one design each; the first say enough. */
const MOST_OUTDATED = 4;

type Column = readonly [head: string, widthMm: number, align: 'left' | 'right', text: (row: CutListRow) => string];
const COLUMNS: readonly Column[] = [
  ['No.', 12, 'right', (r) => String(r.number)],
  ['Kind', 24, 'left', (r) => r.kind],
  ['Plate', 40, 'left', (r) => r.plate],
  ['Word', 40, 'left', (r) => r.word],
  ['Length mm', 20, 'right', (r) => r.lengthMm.toFixed(1)],
  ['Pierce x', 20, 'right', (r) => r.pierce.x.toFixed(2)],
  ['Pierce y', 20, 'right', (r) => r.pierce.y.toFixed(2)],
];

export async function writeCutList(
  job: JobSheet,
  designs: readonly JobDesign[],
  fonts: PageFonts,
  outdated: readonly string[] = [],
): Promise<Uint8Array> {
  const rows = cutList(job, designs);
  const own = designsOn(job, designs);
  const name = sheetName(job);
  const marks = own.map((d) => d.fingerprint).join(' ');
  const page = createPage({ title: `Cut list, ${name}`, subject: `Fingerprints ${marks}`, fonts });
  let y = drawHead(page, job, rows, own, name, outdated);
  const fits = (from: number) => Math.max(1, Math.floor((BOTTOM - from) / ROW_MM) - 1);
  const first = fits(y);
  const perPage = fits(26);
  const pages = 1 + Math.ceil(Math.max(0, rows.length - first) / perPage);
  let at = 0;
  for (let number = 1; number <= pages; number++) {
    if (number > 1) {
      addPage(page);
      page.line(`Cut list, ${name}`, LEFT, 19, WIDTH, { size: 9, bold: true });
      y = 26;
    }
    const count = number === 1 ? first : perPage;
    drawRows(page, rows.slice(at, at + count), y);
    at += count;
    const foot = { size: 7, colour: INK.quiet } as const;
    page.line(
      'Millimetres from the lower left corner of the sheet, seen from the painted side',
      LEFT,
      BOTTOM + 7,
      120,
      foot,
    );
    page.line(`Bridgehead  ·  page ${number} of ${pages}`, LEFT + WIDTH - 50, BOTTOM + 7, 50, {
      ...foot,
      align: 'right',
    });
  }
  return pageBytes(page);
}

/** Returns where the list may begin. */
function drawHead(
  page: PdfPage,
  job: JobSheet,
  rows: readonly CutListRow[],
  designs: readonly JobDesign[],
  name: string,
  outdated: readonly string[],
): number {
  page.line('CUT LIST', LEFT, 19, 60, { size: 7, bold: true, colour: INK.copper, spacing: 0.9 });
  page.line(name, LEFT, 27, WIDTH, { size: 16, bold: true });
  const { passes, cuttingMm, rapidMm } = job.plan;
  const listedMm = rows.reduce((sum, row) => sum + row.lengthMm, 0);
  const sums = `${job.sheet.plates.length} plates, ${passes.length} cuts, ${metresText(listedMm)} in the list, ${metresText(cuttingMm)} with lead-ins, ${metresText(rapidMm)} of ways between`;
  page.line(sums, LEFT, 33, WIDTH, { size: 10 });
  page.rule(LEFT, 37, LEFT + WIDTH, 37, 0.35, INK.char);
  let y = 43;
  for (const fact of job.facts ?? []) {
    page.line(fact, LEFT, y, WIDTH, { size: 8.5 });
    y += 4.6;
  }
  for (const sentence of outdated.slice(0, MOST_OUTDATED)) {
    page.line(`OUTDATED: ${sentence}`, LEFT, y, WIDTH, { size: 8.5, bold: true, colour: INK.copper });
    y += 4.6;
  }
  for (const { title, plateName, fingerprint, approval } of designs.slice(0, MOST_DESIGNS)) {
    page.line(`${title}, ${plateName}`, LEFT, y, 72, { size: 8.5, bold: true });
    page.line(showFingerprint(fingerprint), LEFT + 75, y, 33, { size: 8.5 });
    page.line(approval, LEFT + 110, y, WIDTH - 110, { size: 7.5, colour: INK.quiet });
    y += 4.6;
  }
  if (designs.length > MOST_DESIGNS) {
    page.line(`and ${designs.length - MOST_DESIGNS} more`, LEFT, y, 80, { size: 8, colour: INK.quiet });
    y += 4.6;
  }
  const alt = `The sheet with its plates and cuts`;
  return page.tags.picture(alt, () => drawSheet(page, job, y + 2)) + 8;
}

/** The sheet with all its cuts and the names of its plates. Returns its lower edge. */
function drawSheet(page: PdfPage, { sheet, plan }: JobSheet, y: number): number {
  const scale = Math.min(WIDTH / sheet.widthMm, PICTURE_MM / sheet.heightMm);
  const { doc } = page;
  const bottom = y + sheet.heightMm * scale;
  doc.save();
  doc.translate(LEFT, bottom).scale(scale);
  doc.rect(0, -sheet.heightMm, sheet.widthMm, sheet.heightMm).fillColor(INK.metal).fill();
  for (const { x, y: up, radiusMm } of sheet.gone) doc.circle(x, -up, radiusMm).fillColor(INK.paper).fill();
  const cuts = plan.passes.map((pass) => contourPath(pass.net)).join('');
  if (cuts !== '')
    doc
      .path(cuts)
      .lineWidth(0.1 / scale)
      .strokeColor(INK.char)
      .stroke();
  doc.restore();
  for (const { id, x, y: up, diameterMm } of sheet.plates) {
    const size = Math.min(9, Math.max(3.5, diameterMm * scale * 0.2));
    const style = { size, bold: true, align: 'centre', colour: INK.copper } as const;
    page.line(id, LEFT + (x - diameterMm / 2) * scale, bottom - up * scale + size * 0.12, diameterMm * scale, style);
  }
  return bottom;
}

function drawRows(page: PdfPage, rows: readonly CutListRow[], y: number): void {
  let x = LEFT;
  for (const [head, widthMm, align, text] of COLUMNS) {
    page.line(head, x, y, widthMm - 2, { size: 7.5, bold: true, align });
    rows.forEach((row, i) => page.line(text(row), x, y + ROW_MM * (i + 1) + 0.6, widthMm - 2, { size: 7.5, align }));
    x += widthMm;
  }
  page.rule(LEFT, y + 1.5, LEFT + WIDTH, y + 1.5, 0.25, INK.char);
}

function metresText(mm: number): string {
  return `${(mm / 1000).toFixed(2)} m`;
}
