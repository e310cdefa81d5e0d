import { memoize } from '../../../geometry/cache.ts';
import { HOT } from '../../../geometry/cutplan/sheet/heat-measure.ts';
import type { CutPass } from '../../../geometry/cutplan/sheet-plan.ts';
import { TIP_LIMIT } from '../../../geometry/cutplan/sheet/slugs.ts';
import { contourPath, runPath } from '../../../geometry/files/svg/svg-path.ts';
import type { PlannedSheet } from '../../worker/cut-api.ts';
import type { Shown } from '../state/cut-store.ts';
import { circle, type SheetPen } from './sheet-pen.ts';

interface PassPaths {
  readonly net: Path2D;
  readonly path: Path2D;
  readonly lead: Path2D;
}

export const passPaths = memoize((pass: CutPass): PassPaths => ({
  net: new Path2D(contourPath(pass.net)),
  path: new Path2D(contourPath(pass.path)),
  lead: new Path2D(runPath(pass.leadIn)),
}));

/** The pass that is pointed out, and the chosen plate, whose marks are numbered. */
interface Pointed {
  readonly lit: string | undefined;
  readonly selected: string | undefined;
}

/** What is drawn over the sheet while nothing moves: heat, ways, ways in, marks, numbers, and what is pointed out. */
export function paintPlan(pen: SheetPen, planned: PlannedSheet, shown: Shown, { lit, selected }: Pointed): void {
  const { ctx, inks, px } = pen;
  if (shown.heat) paintHeat(pen, planned);
  for (const pass of planned.plan.passes) {
    if (pass.kind !== 'witness') continue;
    ctx.lineWidth = px;
    ctx.strokeStyle = inks.ink;
    ctx.stroke(passPaths(pass).net);
  }
  paintMarkNumbers(pen, planned, selected);
  if (shown.rapids) paintRapids(pen, planned);
  if (shown.leads) paintLeads(pen, planned);
  if (shown.numbers) paintNumbers(pen, planned);
  const pointed = planned.plan.passes.find(({ id }) => id === lit);
  if (pointed) paintLit(pen, pointed);
}

/** As the fold Drift names them. */
function paintMarkNumbers({ ctx, inks, px }: SheetPen, { marks }: PlannedSheet, selected: string | undefined): void {
  ctx.font = `600 ${12 * px}px Page, sans-serif`;
  ctx.fillStyle = inks.ink;
  ctx.textAlign = 'left';
  ctx.textBaseline = 'middle';
  marks
    .filter(({ plate }) => plate === selected)
    .forEach(({ at, outerMm }, i) => ctx.fillText(String(i + 1), at.x + outerMm / 2 + 3 * px, -at.y));
}

/** Cooler cells are not painted: their colour could not be seen. */
const LEAST_HEAT = 0.02;

function paintHeat({ ctx, inks }: SheetPen, { heat }: PlannedSheet): void {
  const { cells, columns, cellMm } = heat;
  ctx.save();
  ctx.fillStyle = inks.copper;
  cells.forEach((value, i) => {
    if (value <= LEAST_HEAT) return;
    ctx.globalAlpha = Math.min(0.85, (value / (2 * HOT)) * 0.85);
    const [column, row] = [i % columns, Math.floor(i / columns)];
    ctx.fillRect(column * cellMm, -(row + 1) * cellMm, cellMm, cellMm);
  });
  ctx.restore();
}

function paintRapids({ ctx, inks, px }: SheetPen, { plan }: PlannedSheet): void {
  ctx.save();
  ctx.lineWidth = px;
  ctx.strokeStyle = inks.ink;
  for (const raised of [false, true]) {
    ctx.globalAlpha = 0.7;
    ctx.setLineDash(raised ? [px, 3 * px] : [6 * px, 3 * px]);
    ctx.beginPath();
    for (const { way, raised: isRaised } of plan.rapids) {
      if (isRaised !== raised) continue;
      way.forEach((p, i) => (i === 0 ? ctx.moveTo(p.x, -p.y) : ctx.lineTo(p.x, -p.y)));
    }
    ctx.stroke();
  }
  ctx.restore();
}

const MOST_DOT_MM = 4;

function paintLeads({ ctx, inks, px }: SheetPen, { plan }: PlannedSheet): void {
  // from afar a dot would hide the letters
  const dot = Math.min(1.8 * px, MOST_DOT_MM);
  ctx.lineWidth = Math.min(1.5 * px, MOST_DOT_MM);
  ctx.strokeStyle = inks.copper;
  ctx.fillStyle = inks.copper;
  ctx.beginPath();
  for (const pass of plan.passes) {
    ctx.stroke(passPaths(pass).lead);
    ctx.moveTo(pass.pierce.x, -pass.pierce.y);
    ctx.arc(pass.pierce.x, -pass.pierce.y, dot, 0, 2 * Math.PI);
  }
  ctx.fill();
}

/** Numbers where there is room for them; nearer, more of them come up. */
function paintNumbers({ ctx, view, inks, px }: SheetPen, { plan }: PlannedSheet): void {
  const taken = new Map<string, Label[]>();
  ctx.save();
  ctx.font = `600 ${11 * px}px Page, sans-serif`;
  ctx.textAlign = 'center';
  ctx.textBaseline = 'middle';
  plan.passes.forEach(({ pierce }, i) => {
    const text = String(i + 1);
    const w = ctx.measureText(text).width + 6 * px;
    const label = { x: pierce.x * view.scale, y: pierce.y * view.scale, half: (w * view.scale) / 2 };
    if (!hasRoom(taken, label)) return;
    ctx.fillStyle = inks.paper;
    ctx.beginPath();
    ctx.roundRect(pierce.x - w / 2, -pierce.y - 7 * px, w, 14 * px, 4 * px);
    ctx.fill();
    ctx.fillStyle = inks.ink;
    ctx.fillText(text, pierce.x, -pierce.y + 0.5 * px);
  });
  ctx.restore();
}

interface Label {
  readonly x: number;
  readonly y: number;
  readonly half: number;
}

const LABEL_PX = 16;
/** Free screen between two numbers, so that what they stand on is still seen. */
const APART_PX = 10;

/** Whether a label touches none that is there; then it is there too. */
function hasRoom(taken: Map<string, Label[]>, label: Label): boolean {
  const square = 64;
  const [column, row] = [Math.floor(label.x / square), Math.floor(label.y / square)];
  for (let dx = -1; dx <= 1; dx++) {
    for (let dy = -1; dy <= 1; dy++) {
      for (const other of taken.get(`${column + dx} ${row + dy}`) ?? []) {
        const [apartX, apartY] = [Math.abs(other.x - label.x), Math.abs(other.y - label.y)];
        if (apartX < other.half + label.half + APART_PX && apartY < LABEL_PX + APART_PX) return false;
      }
    }
  }
  const key = `${column} ${row}`;
  taken.set(key, [...(taken.get(key) ?? []), label]);
  return true;
}

function paintLit(pen: SheetPen, pass: CutPass): void {
  const { ctx, inks, px } = pen;
  ctx.save();
  ctx.lineWidth = 3 * px;
  ctx.strokeStyle = inks.copper;
  ctx.stroke(passPaths(pass).net);
  ctx.lineWidth = 2 * px;
  circle(pen, pass.pierce, 18 * px);
  ctx.stroke();
  ctx.restore();
}

export type Fate = 'dropped' | 'lying' | 'stands' | 'held';

/** What most likely becomes of a piece: how it is drawn once it is cut free. */
export function fateOf(planned: PlannedSheet): ReadonlyMap<string, Fate> {
  return new Map(
    planned.plan.slugs.map((slug) => [
      slug.pass,
      slug.isTabbed ? 'held' : slug.tips > TIP_LIMIT ? 'stands' : slug.drops >= slug.lies ? 'dropped' : 'lying',
    ]),
  );
}
