import { createCache, memoize } from '../../../geometry/cache.ts';
import type { Point } from '../../../geometry/shapes.ts';
import type { NestedSheet, PlacedPlate, SheetRest } from '../../../geometry/sheet/sheets.ts';
import { type CutMask, placeLabel } from './place-label.ts';
import type { Inks } from './sheet-inks.ts';
import { circle, type SheetPen } from './sheet-pen.ts';

export interface SheetScene {
  readonly sheet: NestedSheet;
  /** How each kind of plate is drawn: its openings about its centre, y down. */
  readonly paths: ReadonlyMap<string, Path2D>;
  readonly rest: SheetRest | undefined;
  /** Plates that overlap something. */
  readonly faulty: ReadonlySet<string>;
  readonly selected: string | undefined;
  /** Drawn elsewhere meanwhile: it is in a hand. */
  readonly lifted: ReadonlySet<string>;
  /** The plan is played: plates are not cut out yet. */
  readonly uncut: boolean;
}

export function paintSheet(pen: SheetPen, scene: SheetScene): void {
  const { ctx, inks, px } = pen;
  const { sheet } = scene;
  ctx.fillStyle = inks.skeleton;
  ctx.fillRect(0, -sheet.heightMm, sheet.widthMm, sheet.heightMm);
  ctx.lineWidth = px;
  ctx.strokeStyle = inks.soft;
  ctx.strokeRect(0, -sheet.heightMm, sheet.widthMm, sheet.heightMm);
  for (const hole of sheet.gone) {
    circle(pen, hole, hole.radiusMm);
    ctx.fillStyle = inks.ground;
    ctx.fill();
    ctx.stroke();
  }
  if (scene.rest) paintRest(pen, scene.rest);
  const bitmaps = new Map<string, OffscreenCanvas>();
  for (const plate of sheet.plates) {
    if (scene.lifted.has(plate.id)) continue;
    paintPlate(pen, plate, scene, bitmaps);
  }
}

/** One plate in its place; many of a kind are drawn once and stamped. */
export function paintPlate(
  pen: SheetPen,
  plate: PlacedPlate,
  { paths, faulty, selected, uncut }: Pick<SheetScene, 'paths' | 'faulty' | 'selected' | 'uncut'>,
  bitmaps: Map<string, OffscreenCanvas>,
): void {
  const { ctx, view, inks, dpr, px } = pen;
  const r = plate.diameterMm / 2;
  const { width, height } = ctx.canvas;
  const [cx, cy] = [view.x + plate.x * view.scale, view.y - plate.y * view.scale];
  const reach = r * view.scale;
  if (cx + reach < 0 || cy + reach < 0 || cx - reach > width / dpr || cy - reach > height / dpr) return;
  ctx.save();
  ctx.translate(plate.x, -plate.y);
  ctx.rotate((plate.turnDeg * Math.PI) / 180);
  const path = paths.get(plate.wish);
  if (!uncut) {
    const side = Math.ceil(2 * reach * dpr) + 2;
    if (path && side <= MOST_STAMP_PX) {
      const stamp = bitmaps.get(plate.wish) ?? stampOf(path, r, side, inks);
      bitmaps.set(plate.wish, stamp);
      const half = (side * px) / dpr / 2;
      ctx.drawImage(stamp, -half, -half, 2 * half, 2 * half);
    } else drawPlate(ctx, path, r, inks);
  }
  ctx.restore();
  circle(pen, plate, r);
  ctx.lineWidth = px;
  ctx.strokeStyle = inks.soft;
  if (uncut) ctx.setLineDash([3 * px, 3 * px]);
  ctx.stroke();
  ctx.setLineDash([]);
  const isFaulty = faulty.has(plate.id);
  if (isFaulty || plate.id === selected) {
    circle(pen, plate, r);
    ctx.lineWidth = 3 * px;
    ctx.strokeStyle = isFaulty ? inks.bad : inks.copper;
    if (isFaulty) ctx.setLineDash([8 * px, 4 * px]);
    ctx.stroke();
    ctx.setLineDash([]);
  }
  if (!uncut) paintName(pen, plate, path);
}

const MOST_STAMP_PX = 1200;

function stampOf(path: Path2D, r: number, side: number, inks: Inks): OffscreenCanvas {
  const canvas = new OffscreenCanvas(side, side);
  const ctx = canvas.getContext('2d');
  if (ctx) {
    ctx.translate(side / 2, side / 2);
    ctx.scale((side - 2) / (2 * r), (side - 2) / (2 * r));
    drawPlate(ctx, path, r, inks);
  }
  return canvas;
}

function drawPlate(
  ctx: CanvasRenderingContext2D | OffscreenCanvasRenderingContext2D,
  path: Path2D | undefined,
  r: number,
  inks: Inks,
): void {
  ctx.beginPath();
  ctx.arc(0, 0, r, 0, 2 * Math.PI);
  ctx.fillStyle = inks.plate;
  ctx.fill();
  if (!path) return;
  ctx.fillStyle = inks.hole;
  ctx.fill(path, 'evenodd');
}

const MASK_CELLS = 96;

/** Where a plate is cut away: painted small and read back. */
function maskOf(path: Path2D, r: number): CutMask {
  return masksOf(path).getOrMake(String(r), () => {
    const ctx = new OffscreenCanvas(MASK_CELLS, MASK_CELLS).getContext('2d', { willReadFrequently: true });
    if (!ctx) return { cells: 0, cut: [] };
    ctx.translate(MASK_CELLS / 2, MASK_CELLS / 2);
    ctx.scale(MASK_CELLS / (2 * r), MASK_CELLS / (2 * r));
    ctx.fill(path, 'evenodd');
    const { data } = ctx.getImageData(0, 0, MASK_CELLS, MASK_CELLS);
    return { cells: MASK_CELLS, cut: Array.from({ length: MASK_CELLS ** 2 }, (_, i) => data[4 * i + 3]! > 64) };
  });
}

const masksOf = memoize((_path: Path2D) => createCache<CutMask>(1));

/** Name on a small label where it hides least of what is cut; a pin beside it when it is locked. */
function paintName(pen: SheetPen, plate: PlacedPlate, path: Path2D | undefined): void {
  const { ctx, inks, px } = pen;
  const r = plate.diameterMm / 2;
  if (r / px < 22) {
    if (plate.locked) paintPin(pen, plate, 3 * px);
    return;
  }
  ctx.font = `600 ${11 * px}px Page, sans-serif`;
  const text = plate.id;
  const w = ctx.measureText(text).width + (plate.locked ? 22 : 10) * px;
  const at = placeLabel(path && maskOf(path, r), r, w + 4 * px, 20 * px, (plate.turnDeg * Math.PI) / 180);
  const [x, y] = [plate.x + at.x - w / 2, -plate.y + at.y - 8 * px];
  ctx.fillStyle = inks.paper;
  ctx.beginPath();
  ctx.roundRect(x, y, w, 16 * px, 8 * px);
  ctx.fill();
  ctx.fillStyle = inks.ink;
  ctx.textBaseline = 'middle';
  ctx.textAlign = 'left';
  ctx.fillText(text, x + (plate.locked ? 17 : 5) * px, y + 8.5 * px);
  if (plate.locked) paintPin(pen, { x: x + 9 * px, y: -y - 8 * px }, 3.5 * px);
}

function paintPin({ ctx, inks }: SheetPen, at: Point, r: number): void {
  circle({ ctx }, at, r);
  ctx.fillStyle = inks.copper;
  ctx.fill();
  ctx.lineWidth = r / 3;
  ctx.strokeStyle = inks.paper;
  ctx.stroke();
}

function paintRest({ ctx, inks, px }: SheetPen, rest: SheetRest): void {
  const { widthMm, heightMm } = rest.kind;
  ctx.save();
  ctx.setLineDash([6 * px, 4 * px]);
  ctx.strokeStyle = inks.soft;
  ctx.lineWidth = px;
  const inset = 2 * px;
  ctx.strokeRect(rest.x + inset, -rest.y - heightMm + inset, widthMm - 2 * inset, heightMm - 2 * inset);
  ctx.restore();
}
