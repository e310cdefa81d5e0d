/**
 * The ways between passes that are in their order: straight where nothing stands, around pieces that may stand, or
 * raised over them, whichever is quicker.
 */
import { offset } from '../../adapters/clipper.ts';
import { contourLengthMm, contourToRing } from '../../measure/arc.ts';
import { boxOf } from '../../measure/facts.ts';
import { signedAreaMm2 } from '../../measure/ring.ts';
import type { Contour, Point, Ring } from '../../shapes.ts';
import { runLengthMm } from '../contour-walk.ts';
import { runsOf } from '../pass-runs.ts';
import { routeAround } from './route-around.ts';
import type { CutPass, CutSettings, Rapid, Slug } from '../sheet-plan.ts';
import { TIP_LIMIT } from './slugs.ts';
import { EXTENT_ERROR_MM } from '../../units.ts';

export interface Linked {
  readonly rapids: readonly Rapid[];
  readonly cuttingMm: number;
  readonly rapidMm: number;
}

const HOME: Point = { x: 0, y: 0 };
/** Of the kerf: less than the half that is cut, so that roundings never let a way touch the piece. */
const EDGE_SHARE = 0.4;

export function linkPasses(passes: readonly CutPass[], slugs: readonly Slug[], settings: CutSettings): Linked {
  const risky = new Set(slugs.filter((s) => s.tips > TIP_LIMIT && !s.isTabbed).map((s) => s.pass));
  const standing: Ring[] = [];
  const rapids: Rapid[] = [];
  let [from, at, cuttingMm, rapidMm] = ['', HOME, 0, 0];
  for (const pass of passes) {
    const rapid = { from, to: pass.id, ...quickestWay(at, pass.pierce, standing, settings) };
    rapids.push(rapid);
    rapidMm += lengthMm(rapid.way);
    cuttingMm += cutLengthMm(pass);
    if (risky.has(pass.id)) standing.push(...pieceOf(pass.path, settings.kerfMm));
    [from, at] = [pass.id, endOf(pass)];
  }
  return { rapids, cuttingMm, rapidMm };
}

/** All that is cut of a pass, its lead-ins and lead-out included, its tabs left out. */
function cutLengthMm(pass: CutPass): number {
  return runsOf(pass).reduce((sum, { leadIn, cut, closed, leadOut }) => {
    const ownMm = closed ? contourLengthMm(cut) : runLengthMm(cut);
    return sum + runLengthMm(leadIn) + ownMm + runLengthMm(leadOut);
  }, 0);
}

function endOf(pass: CutPass): Point {
  const { x, y } = pass.leadOut?.at(-1) ?? pass.path[0]!;
  return { x, y };
}

function quickestWay(
  from: Point,
  to: Point,
  standing: readonly Ring[],
  settings: CutSettings,
): Pick<Rapid, 'way' | 'raised'> {
  const straight = [from, to];
  // A way around lies within the ellipse whose length a raised way would take.
  const straightMm = Math.hypot(to.x - from.x, to.y - from.y);
  const mostMm = straightMm + (settings.raiseS * settings.rapidMmMin) / 60;
  const near = standing.filter((ring) => {
    const b = boxOf(ring);
    const [x, y] = [(b.minX + b.maxX) / 2, (b.minY + b.maxY) / 2];
    const half = Math.hypot(b.maxX - b.minX, b.maxY - b.minY) / 2;
    return Math.hypot(x - from.x, y - from.y) + Math.hypot(x - to.x, y - to.y) - 2 * half < mostMm;
  });
  const way = routeAround(from, to, near);
  return way && lengthMm(way) <= mostMm ? { way, raised: false } : { way: straight, raised: true };
}

/** What the kerf frees inside a path, as rings. */
function pieceOf(path: Contour, kerfMm: number): Ring[] {
  const ring = contourToRing(path, EXTENT_ERROR_MM);
  const outer = signedAreaMm2(ring) > 0 ? ring : [...ring].reverse();
  return offset([{ outer, holes: [] }], -kerfMm * EDGE_SHARE).map((r) => r.outer);
}

function lengthMm(way: readonly Point[]): number {
  return way.reduce((sum, p, i) => (i === 0 ? 0 : sum + Math.hypot(p.x - way[i - 1]!.x, p.y - way[i - 1]!.y)), 0);
}
