import { GRID_MM } from '../units.ts';
import { isRound, type BoxContainer, type Disc, type Container } from './container.ts';

/**
 * Every way of laying equal discs of radius r into a box in straight rows, along x and along y: square, hexagonal,
 * and what lies between. Each list is as full as its rows can be, in the order in which it grows from the lower left.
 *
 * Rows of m discs at pitch p, each row pushed by s against the one before, stand √(d² - min(s, p - s)²) apart (and half
 * a disc at least: every second row stands over the first). So rows may be pushed as far as the box lets them, the
 * pitch widened so that rows sink into each other, or one disc left out of each second row, and rows that are not
 * pushed (they lose none) may be mixed with those that are.
 */
export function layRows(container: Container, r: number): readonly (readonly Disc[])[] {
  const box = isRound(container) ? boxAbout(container) : container;
  const [w, h] = [box.maxX - box.minX, box.maxY - box.minY];
  if (r <= 0) return [];
  const lying = rowPlans(w, h, 2 * r).map((plan) => lay(plan, r, (u, v) => ({ x: box.minX + u, y: box.minY + v, r })));
  const standing = rowPlans(h, w, 2 * r).map((plan) =>
    lay(plan, r, (u, v) => ({ x: box.minX + v, y: box.minY + u, r })),
  );
  return [...lying, ...standing].filter((discs) => discs.length > 0).sort((a, b) => b.length - a.length);
}

interface RowPlan {
  /** Distance of neighbours in a row. */
  readonly pitch: number;
  /** How far each row begins behind the edge, how many it has, and how far above the first row it stands. */
  readonly rows: readonly { readonly from: number; readonly count: number; readonly up: number }[];
}

function rowPlans(w: number, h: number, d: number): readonly RowPlan[] {
  const most = Math.floor((w - d + GRID_MM / 2) / d) + 1;
  if (most < 1 || h < d - GRID_MM / 2) return [];
  const plans: RowPlan[] = [squareRows(most, h, d)];
  for (let m = most; m >= Math.max(1, most - 1); m--) {
    const slack = w - d - (m - 1) * d;
    // all rows alike, pushed to and fro
    const pitch = m > 1 ? Math.max(d, Math.min((w - d) / (m - 0.5), 2 * d)) : d;
    const push = Math.min(slack - (m - 1) * (pitch - d), pitch / 2);
    if (push > 0) plans.push(alikeRows(m, pitch, m === 1 ? slack : push, h, d));
    // each second row one less, in the middle between those of the first
    if (m > 1) plans.push(...shorterRows(m, Math.min((w - d) / (m - 1), 2 * d), h, d));
  }
  return plans;
}

function squareRows(m: number, h: number, d: number): RowPlan {
  const count = rowsWithin(h, d, d);
  return { pitch: d, rows: Array.from({ length: count }, (_, i) => ({ from: 0, count: m, up: i * d })) };
}

function alikeRows(m: number, pitch: number, push: number, h: number, d: number): RowPlan {
  const aside = m === 1 ? push : Math.min(push, pitch - push);
  const step = Math.max(Math.sqrt(Math.max(0, d * d - aside * aside)), d / 2);
  const count = rowsWithin(h, d, step);
  return {
    pitch,
    rows: Array.from({ length: count }, (_, i) => ({ from: i % 2 ? push : 0, count: m, up: i * step })),
  };
}

/**
 * Long and short rows in turn, with 0, 1, 2 .. places where a long row stands straight above a long one: the first such
 * plan, and the fullest.
 */
function shorterRows(m: number, pitch: number, h: number, d: number): readonly RowPlan[] {
  const step = Math.max(Math.sqrt(Math.max(0, d * d - (pitch * pitch) / 4)), d / 2);
  const straights = Array.from({ length: rowsWithin(h, d, d) }, (_, straight) => {
    const sunk = rowsWithin(h - straight * d, d, step) - 1;
    return { straight, sunk, count: m * (1 + straight + sunk) - Math.ceil(sunk / 2) };
  });
  const fullest = straights.reduce((a, b) => (b.count > a.count ? b : a));
  return straights
    .filter((plan) => plan.straight === 0 || plan === fullest)
    .map(({ straight, sunk }) => {
      const rows = Array.from({ length: straight + 1 }, (_, i) => ({ from: 0, count: m, up: i * d }));
      for (let i = 1; i <= sunk; i++) {
        rows.push({ from: i % 2 ? pitch / 2 : 0, count: i % 2 ? m - 1 : m, up: straight * d + i * step });
      }
      return { pitch, rows };
    });
}

function rowsWithin(h: number, d: number, step: number): number {
  return Math.max(0, Math.floor((h - d + GRID_MM / 2) / step) + 1);
}

function lay(plan: RowPlan, r: number, put: (along: number, up: number) => Disc): readonly Disc[] {
  return plan.rows.flatMap(({ from, count, up }) =>
    Array.from({ length: count }, (_, i) => put(r + from + i * plan.pitch, r + up)),
  );
}

function boxAbout({ x, y, radius }: { x: number; y: number; radius: number }): BoxContainer {
  return { minX: x - radius, minY: y - radius, maxX: x + radius, maxY: y + radius };
}
