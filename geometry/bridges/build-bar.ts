import type { Point } from '../shapes.ts';
import type { Bar } from './bar.ts';
import { type Plank, planksOf } from './planks.ts';
import type { BuiltBar } from './solved-unit.ts';

/** Bars run on into the metal by this share of their width, so that rounding leaves no hair between. */
const ROOT_SHARE = 0.012;

/** The bar as metal, plank by plank, in the order of planksOf. */
export function buildBar(bar: Bar): BuiltBar[] {
  const { widens, editId } = bar;
  return planksOf(bar).map((plank) => ({
    from: plank.from,
    to: plank.to,
    widthMm: plank.widthMm,
    widens,
    outline: outlineOf(plank),
    ...(editId !== undefined && { editId }),
  }));
}

function outlineOf({ from, to, widthMm }: Plank): Point[] {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const [dx, dy] = [(to.x - from.x) / length, (to.y - from.y) / length];
  const [x, y] = [(-dy * widthMm) / 2, (dx * widthMm) / 2];
  const [ex, ey] = [dx * ROOT_SHARE * widthMm, dy * ROOT_SHARE * widthMm];
  return [
    { x: from.x - ex - x, y: from.y - ey - y },
    { x: to.x + ex - x, y: to.y + ey - y },
    { x: to.x + ex + x, y: to.y + ey + y },
    { x: from.x - ex + x, y: from.y - ey + y },
  ];
}
