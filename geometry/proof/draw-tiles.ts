/**
 * A plate at true size, on as many pages as it takes: a plan of how they lie, then the pages with marks to cut along,
 * crosses to lay on each other, and lines that show whether the printer kept the size.
 */
import { showFingerprint } from '../design/show-fingerprint.ts';
import { addPage, INK, type PdfPage } from '../files/paper/pdf-page.ts';
import type { PlannedPlate } from '../files/paper/plate-drawing.ts';
import { contourPath } from '../files/svg/svg-path.ts';
import type { Contour } from '../shapes.ts';
import { MM_PER_INCH } from '../units.ts';
import { type Flow, TYPE } from './flow.ts';
import { OVERLAP_MM, type Tile, TILE_FRAME, layTiles } from './tiles.ts';

const PALE = '#ece8e1';
const LINE_MM = 0.25;
const PLAN_TOP_MM = 24;

export function drawTiles(flow: Flow, planned: PlannedPlate, fingerprint: string): void {
  const { page } = flow;
  const tiles = layTiles(planned.plate.diameterMm, page);
  if (tiles.length > 1) drawPlan(flow, planned, tiles);
  for (const tile of tiles) {
    addPage(page);
    drawTile(flow, planned, tile, tiles, fingerprint);
  }
}

function drawPlan(flow: Flow, { plate }: PlannedPlate, tiles: readonly Tile[]): void {
  const { page, words, left, width } = flow;
  addPage(page);
  flow.y = PLAN_TOP_MM;
  flow.heading(words.say('paperTiles.title', { name: plate.name }), 40);
  flow.paragraph(words.say('paperTiles.how'));
  flow.y += 10;
  const [x0, y0] = [Math.min(...tiles.map((t) => t.left)), Math.min(...tiles.map((t) => t.top))];
  const [x1, y1] = [Math.max(...tiles.map((t) => t.left + t.width)), Math.max(...tiles.map((t) => t.top + t.height))];
  const scale = Math.min(width / (x1 - x0), (flow.bottom - flow.y - 4) / (y1 - y0), 0.4);
  const at = (x: number, y: number) =>
    [left + width / 2 + (x - (x0 + x1) / 2) * scale, flow.y + (y - y0) * scale] as const;
  const alt = words.say('paperTiles.planAlt', { count: tiles.length, name: plate.name });
  page.tags.picture(alt, () => {
    const { doc } = page;
    const [cx, cy] = at(0, 0);
    doc
      .circle(cx, cy, (plate.diameterMm / 2) * scale)
      .fillColor(PALE)
      .fill();
    for (const tile of tiles) {
      const [x, y] = at(tile.left, tile.top);
      doc.rect(x, y, tile.width * scale, tile.height * scale);
      doc.lineWidth(0.2).strokeColor(INK.quiet).stroke();
      const size = Math.min(16, tile.width * scale * 0.8);
      const style = { size, bold: true, align: 'centre' } as const;
      page.line(tile.name, x, y + (tile.height * scale) / 2 + size * 0.12, tile.width * scale, style);
    }
    doc
      .circle(cx, cy, (plate.diameterMm / 2) * scale)
      .lineWidth(0.35)
      .strokeColor(INK.char)
      .stroke();
  });
}

function drawTile(flow: Flow, planned: PlannedPlate, tile: Tile, tiles: readonly Tile[], fingerprint: string): void {
  const { page, words } = flow;
  const { plate } = planned;
  const [x, y] = [TILE_FRAME.left, TILE_FRAME.top];
  page.line(tile.name, x, 11.5, 20, { size: 14, bold: true, tag: 'H2' });
  page.line(`${plate.name}  ·  ${showFingerprint(fingerprint)}`, x + 20, 11.5, tile.width * 0.6, TYPE.label);
  const alt = words.say('paperTiles.alt', { tile: tile.name, name: plate.name });
  page.tags.picture(alt, () => drawPart(page, planned, tile, x, y));
  page.tags.ornament(() => {
    drawMarks(page, tile, x, y);
    drawSeams(page, tile, tiles, x, y);
  });
  drawRulers(flow, x, y + tile.height + 9);
}

/** The part of the plate, and nothing beyond the tile's edge. */
function drawPart(page: PdfPage, { plate, plan }: PlannedPlate, tile: Tile, x: number, y: number): void {
  const { doc } = page;
  doc.save();
  doc.rect(x, y, tile.width, tile.height).clip();
  doc.translate(x - tile.left, y - tile.top);
  const paths = plan.contours.flatMap((cut) =>
    cut.kind === 'opening' && reaches(cut.contour, tile) ? [contourPath(cut.contour)] : [],
  );
  if (paths.length > 0) doc.path(paths.join('')).lineWidth(LINE_MM).fillAndStroke(PALE, INK.char, 'even-odd');
  doc
    .circle(0, 0, plate.diameterMm / 2)
    .lineWidth(LINE_MM)
    .strokeColor(INK.char)
    .stroke();
  doc.moveTo(-5, 0).lineTo(5, 0).moveTo(0, -5).lineTo(0, 5).lineWidth(0.15).strokeColor(INK.quiet).stroke();
  doc.restore();
}

/** By the box of its corners, grown by the largest arc that may swing over it. */
function reaches(contour: Contour, { left, top, width, height }: Tile): boolean {
  const [xs, ys] = [contour.map((v) => v.x), contour.map((v) => -v.y)];
  const [minX, maxX, minY, maxY] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const grow = Math.hypot(maxX - minX, maxY - minY) + 1;
  return maxX + grow > left && minX - grow < left + width && maxY + grow > top && minY - grow < top + height;
}

/** Where the page is cut: two short lines at each corner, outside of the tile. */
function drawMarks({ doc }: PdfPage, { width, height }: Tile, x: number, y: number): void {
  for (const [cx, sx] of [
    [x, -1],
    [x + width, 1],
  ] as const) {
    for (const [cy, sy] of [
      [y, -1],
      [y + height, 1],
    ] as const) {
      doc.moveTo(cx + sx * 1, cy).lineTo(cx + sx * 5, cy);
      doc.moveTo(cx, cy + sy * 1).lineTo(cx, cy + sy * 4);
    }
  }
  doc.lineWidth(0.2).strokeColor(INK.char).stroke();
}

/** Where a neighbour's edge comes to lie, and in the middle of what both pages show two crosses to lay on each other. */
function drawSeams({ doc }: PdfPage, tile: Tile, tiles: readonly Tile[], x: number, y: number): void {
  const { row, column, width, height } = tile;
  const there = (r: number, c: number) => tiles.some((t) => t.row === r && t.column === c);
  const cross = (cx: number, cy: number) => {
    doc
      .moveTo(cx - 2.5, cy)
      .lineTo(cx + 2.5, cy)
      .moveTo(cx, cy - 2.5)
      .lineTo(cx, cy + 2.5);
    doc.lineWidth(0.18).strokeColor(INK.copper).stroke();
    doc.circle(cx, cy, 1.4).lineWidth(0.12).strokeColor(INK.copper).stroke();
  };
  for (const [dr, dc] of [
    [0, -1],
    [0, 1],
    [-1, 0],
    [1, 0],
  ] as const) {
    if (!there(row + dr, column + dc)) continue;
    const along = dc !== 0 ? height : width;
    const edge = dr + dc < 0 ? 0 : dc !== 0 ? width : height;
    const inward = dr + dc < 0 ? 1 : -1;
    const place = (across: number, way: number) =>
      dc !== 0 ? ([x + across, y + way] as const) : ([x + way, y + across] as const);
    doc
      .moveTo(...place(edge + inward * OVERLAP_MM, 0))
      .lineTo(...place(edge + inward * OVERLAP_MM, along))
      .dash(3, { space: 2 })
      .lineWidth(0.12)
      .strokeColor(INK.quiet)
      .stroke();
    doc.undash();
    for (const share of [0.2, 0.8]) cross(...place(edge + (inward * OVERLAP_MM) / 2, along * share));
  }
}

/** A line of 100 mm and one of 4 in. */
function drawRulers({ page, words }: Flow, x: number, y: number): void {
  const label = { ...TYPE.label, size: 7 };
  const ticks = (from: number, count: number, step: number) => {
    page.rule(from, y, from + count * step, y, 0.2, INK.char);
    for (let i = 0; i <= count; i++) {
      const high = i % 5 === 0 || i === count ? 2.4 : 1.5;
      page.rule(from + i * step, y, from + i * step, y - high, 0.15, INK.char);
    }
  };
  page.tags.within('Sect', () => {
    page.tags.ornament(() => ticks(x + 2, 10, 10));
    page.line('100 mm', x + 2, y + 3.6, 30, label);
    const inches = x + 2;
    page.tags.ornament(() => {
      const under = y + 7.5;
      page.rule(inches, under, inches + 4 * MM_PER_INCH, under, 0.2, INK.char);
      for (let i = 0; i <= 4; i++)
        page.rule(inches + i * MM_PER_INCH, under, inches + i * MM_PER_INCH, under - 1.8, 0.15, INK.char);
    });
    page.line(words.say('paperTiles.inches'), inches + 104, y + 7.5, 20, label);
  });
}

/** The number of a page at true size, in its upper right corner. */
export function numberTile({ page, words }: Flow, number: number, of: number): void {
  const room = page.widthMm / 3;
  const said = words.say('paper.pageOf', { number, of });
  const style = { ...TYPE.label, align: 'right' } as const;
  page.tags.ornament(() => page.line(said, page.widthMm - TILE_FRAME.right - room, 11.5, room, style));
}
