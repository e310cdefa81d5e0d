import { sampleRun } from '../../../geometry/cutplan/contour-walk.ts';
import { runOf } from '../../../geometry/cutplan/cost/time-plan.ts';
import type { CutPass } from '../../../geometry/cutplan/sheet-plan.ts';
import type { Point } from '../../../geometry/shapes.ts';
import { type Fate, passPaths } from './paint-plan.ts';
import { circle, type SheetPen, strokeLine, wipe } from './sheet-pen.ts';
import { alongWay, beatAt, type Beat, cutMm, wayMm } from './timeline.ts';
import { LEAST_DIVISOR } from '../../../geometry/units.ts';

/** Contours that are done, drawn onto what is there already; the next call goes on where this one ended. */
export function paintDone(
  pen: SheetPen,
  beats: readonly Beat[],
  from: number,
  to: number,
  fates: ReadonlyMap<string, Fate>,
): void {
  const { ctx, inks, px } = pen;
  for (let i = from; i < to; i++) {
    const { pass } = beats[i]!;
    const { net } = passPaths(pass);
    if (pass.kind === 'opening') paintSlug(pen, pass, net, fates.get(pass.id));
    ctx.lineWidth = (pass.kind === 'rim' ? 2 : 1.2) * px;
    ctx.strokeStyle = inks.hole;
    ctx.stroke(net);
  }
}

/** dropped: the floor is seen. lying: the piece lies in its hole. stands: hatched, with a mark at its pierce. */
function paintSlug({ ctx, inks, px }: SheetPen, pass: CutPass, net: Path2D, fate: Fate | undefined): void {
  if (fate === 'dropped' || fate === undefined) {
    ctx.fillStyle = inks.hole;
    ctx.fill(net);
    return;
  }
  ctx.fillStyle = inks.plate;
  ctx.fill(net);
  if (fate !== 'stands') return;
  ctx.save();
  ctx.clip(net);
  ctx.strokeStyle = inks.copper;
  ctx.lineWidth = 1.5 * px;
  ctx.beginPath();
  const { x, y } = pass.pierce;
  const reach = 400 * px;
  for (let d = -reach; d < reach; d += 5 * px) {
    ctx.moveTo(x + d - reach, -y - reach);
    ctx.lineTo(x + d + reach, -y + reach);
  }
  ctx.stroke();
  ctx.restore();
}

/** The contour that is being cut, and the head. */
export function paintHead(pen: SheetPen, beats: readonly Beat[], atS: number): void {
  const { ctx, inks, px } = pen;
  wipe(pen);
  const beat = beats[beatAt(beats, atS)];
  if (!beat) return;
  const { pass } = beat;
  let at: Point = pass.pierce;
  let isCutting = false;
  if (atS < beat.pierceS) {
    const share = (atS - beat.fromS) / Math.max(LEAST_DIVISOR, beat.pierceS - beat.fromS);
    at = alongWay(beat.way, wayMm(beat.way) * share).at(-1) ?? pass.pierce;
    ctx.save();
    ctx.strokeStyle = inks.ink;
    ctx.lineWidth = px;
    ctx.setLineDash(beat.raised ? [px, 3 * px] : [6 * px, 3 * px]);
    strokeLine(pen, beat.way);
    ctx.restore();
  } else {
    isCutting = true;
    const done = alongWay(sampleRun(runOf(pass), 1), cutMm(beat, atS));
    at = done.at(-1) ?? pass.pierce;
    ctx.strokeStyle = inks.copper;
    ctx.lineWidth = 2.5 * px;
    strokeLine(pen, done);
  }
  circle(pen, at, 6 * px);
  ctx.lineWidth = 2 * px;
  ctx.strokeStyle = inks.copper;
  ctx.fillStyle = isCutting ? inks.copper : inks.paper;
  ctx.fill();
  ctx.stroke();
}
