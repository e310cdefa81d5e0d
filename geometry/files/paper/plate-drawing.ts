import type { CutPlan } from '../../cutplan/cut-plan.ts';
import { findCheckDimensions, listCuts } from '../../cutplan/plate/check-dimensions.ts';
import type { PlateResult } from '../../plate/plate.ts';
import { drawChecks } from './spec-checks.ts';
import { INK, type PdfPage } from './pdf-page.ts';
import { drawRollAxis, type Rolling } from './rolled-plate.ts';
import type { PaperWords } from './paper-words.ts';
import { openingsPath } from '../svg/svg-path.ts';

export interface PlannedPlate {
  readonly plate: PlateResult;
  readonly plan: CutPlan;
}

/** Reductions that a person can reckon with; ISO 5455 names 2, 5 and 10 and allows others between. */
const SCALES = [1, 1.5, 2, 2.5, 3, 4, 5, 6, 7, 8, 10, 12, 15, 20, 25, 30, 40, 50, 60, 80, 100, 150, 200, 300, 400];

/** Air between plates, and what stands above and below each: its name, the dimension line, its figures. */
const GAP_MM = 12;
const ABOVE_MM = 7;
const BELOW_MM = 11.5;
/** The text under a dimension line needs this much even when the plate is small. */
const LEAST_CELL_MM = 34;

interface Arranged {
  readonly scale: number;
  readonly rows: readonly (readonly PlannedPlate[])[];
  readonly heightMm: number;
}

/** Height that the plates take in a box of this width when at most so much is there. */
export function drawingHeightMm(plates: readonly PlannedPlate[], width: number, height: number): number {
  return arrange(plates, width, height).heightMm;
}

export interface DrawingOptions {
  readonly words: PaperWords;
  /** Whether the ends of the check dimensions are marked. */
  readonly checks: boolean;
  /** Which way a plate is rolled. */
  axisOf(plate: PlateResult): Rolling['axis'] | undefined;
}

/** All plates to one scale, the largest that fits, in rows from the left; centred in the box. Returns n of the scale 1:n. */
export function drawPlates(
  page: PdfPage,
  plates: readonly PlannedPlate[],
  box: { x: number; y: number; width: number; height: number },
  how: DrawingOptions,
): { readonly scale: number; readonly heightMm: number } {
  const arranged = arrange(plates, box.width, box.height);
  let y = box.y + Math.max(0, box.height - arranged.heightMm) / 2;
  for (const row of arranged.rows) {
    const cells = row.map((p) => Math.max(LEAST_CELL_MM, drawnMm(p.plate, arranged.scale)));
    const wide = cells.reduce((sum, c) => sum + c, 0) + GAP_MM * (row.length - 1);
    const high = Math.max(...row.map((p) => drawnMm(p.plate, arranged.scale)));
    let x = box.x + (box.width - wide) / 2;
    row.forEach((planned, i) => {
      const cell = cells[i]!;
      // Plates of a row stand on one line, so that their dimension lines do too.
      const radius = drawnMm(planned.plate, arranged.scale) / 2;
      const [cx, cy] = [x + cell / 2, y + ABOVE_MM + high - radius];
      const { name, diameterMm } = planned.plate;
      const diameter = how.words.mm(diameterMm);
      const alt = how.words.say('paperProof.plateAlt', { name, diameter, scale: how.words.plain(arranged.scale) });
      page.tags.picture(alt, () => {
        drawPlate(page, planned, cx, cy, arranged.scale);
        if (how.checks) drawChecks(page, findCheckDimensions(listCuts(planned.plan)), cx, cy, arranged.scale);
        const axis = how.axisOf(planned.plate);
        if (axis && radius > 0) drawRollAxis(page, axis, cx, cy, radius);
        drawCaption(page, planned.plate, { cx, cell, top: cy - radius, bottom: cy + radius, radius }, how.words);
      });
      x += cell + GAP_MM;
    });
    y += ABOVE_MM + high + BELOW_MM;
  }
  return arranged;
}

function arrange(plates: readonly PlannedPlate[], width: number, height: number): Arranged {
  let last: Arranged = { scale: 1, rows: [plates], heightMm: 0 };
  for (const scale of SCALES) {
    const rows: PlannedPlate[][] = [];
    let row: PlannedPlate[] = [];
    let used = 0;
    for (const planned of plates) {
      const cell = Math.max(LEAST_CELL_MM, drawnMm(planned.plate, scale));
      if (row.length > 0 && used + GAP_MM + cell > width) {
        rows.push(row);
        row = [];
        used = 0;
      }
      used += (row.length > 0 ? GAP_MM : 0) + cell;
      row.push(planned);
    }
    if (row.length > 0) rows.push(row);
    const heightMm = rows.reduce(
      (sum, r) => sum + ABOVE_MM + BELOW_MM + Math.max(...r.map((p) => drawnMm(p.plate, scale))),
      0,
    );
    last = { scale, rows, heightMm };
    const widest = Math.max(...plates.map((p) => drawnMm(p.plate, scale)));
    if (heightMm <= height && widest <= width) return last;
  }
  return last;
}

function drawnMm(plate: PlateResult, scale: number): number {
  return Number.isFinite(plate.diameterMm) ? Math.max(0, plate.diameterMm) / scale : 0;
}

function drawPlate(page: PdfPage, { plate, plan }: PlannedPlate, cx: number, cy: number, scale: number): void {
  if (!(plate.diameterMm > 0)) return;
  const { doc } = page;
  doc.save();
  doc.translate(cx, cy).scale(1 / scale);
  doc
    .circle(0, 0, plate.diameterMm / 2)
    .fillColor(INK.metal)
    .fill();
  const openings = openingsPath(plan);
  const hair = 0.06 * scale;
  if (openings !== '') {
    doc.path(openings).lineWidth(hair).fillAndStroke(INK.paper, INK.char, 'even-odd');
  }
  doc
    .circle(0, 0, plate.diameterMm / 2)
    .lineWidth(hair * 3)
    .strokeColor(INK.char)
    .stroke();
  doc.restore();
  // Centre marks outside the rim, where nothing is cut.
  const r = plate.diameterMm / 2 / scale;
  for (const [dx, dy] of [
    [1, 0],
    [-1, 0],
    [0, -1],
  ] as const) {
    page.rule(cx + dx * (r + 0.8), cy + dy * (r + 0.8), cx + dx * (r + 2.6), cy + dy * (r + 2.6), 0.12, INK.quiet);
  }
}

/** The plate's name above; below, a dimension line with extension lines down from the rim. */
function drawCaption(
  page: PdfPage,
  plate: PlateResult,
  { cx, cell, top, bottom, radius }: { cx: number; cell: number; top: number; bottom: number; radius: number },
  words: PaperWords,
): void {
  const x = cx - cell / 2;
  const name = { size: 9, bold: true, align: 'centre' } as const;
  const off = (of: string) => words.say('paper.off', { name: of, quantity: plate.quantity });
  const room = cell + GAP_MM - 4;
  const offMm = page.widthOf(off(''), name);
  page.line(off(page.fit(plate.name, room - offMm, name)), x - (room - cell) / 2, top - 3.6, room, name);
  const y = bottom + 4.5;
  if (radius > 0) {
    page.rule(cx - radius, bottom - radius + 1, cx - radius, y + 1.2, 0.1, INK.quiet);
    page.rule(cx + radius, bottom - radius + 1, cx + radius, y + 1.2, 0.1, INK.quiet);
    page.rule(cx - radius, y, cx + radius, y, 0.12, INK.char);
    // Where two arrow heads do not fit between the extension lines they stand outside and point inwards.
    const way = radius > 3.5 ? 1 : -1;
    if (way < 0) page.rule(cx - radius - 4, y, cx + radius + 4, y, 0.12, INK.char);
    arrow(page, cx - radius, y, way);
    arrow(page, cx + radius, y, -way);
  }
  const dimension = { size: 8.5, align: 'centre' } as const;
  page.line(`Ø ${words.mm(plate.diameterMm)}  ·  ${words.inches(plate.diameterMm)}`, x, y + 4.2, cell, dimension);
}

function arrow(page: PdfPage, x: number, y: number, way: number): void {
  page.doc
    .moveTo(x, y)
    .lineTo(x + way * 2.2, y - 0.4)
    .lineTo(x + way * 2.2, y + 0.4)
    .closePath()
    .fillColor(INK.char)
    .fill();
}
