import { castRay, type EdgeGrid } from '../measure/edge-grid.ts';
import type { Point } from '../shapes.ts';
import { OWN_EDGE_MM, SAME_WAY_COS } from '../units.ts';
import type { Bar, BarRule } from './bar.ts';
import { costOfBar, NEARLY_UPRIGHT_RAD } from './cost-of-bar.ts';
import { alongAt, AXES, middleOf, placesAlong, placesOnAxes } from './edge-places.ts';
import type { Piece, Pieces } from './find-pieces.ts';
import { measureBar } from './measure-bar.ts';
import { findNecks } from './necks.ts';
import { withAllItCarries } from './planks.ts';

/** A band is this many times as wide as a bridge must be, where the island is large enough for it. */
const BAND_SHARE = 1.8;

/** Directions tried from the middle of a small island. */
const SMALL_DIRECTIONS = 24;
/** Looking for the nearest other piece is left out where it would cost more than this many pairs. */
const NEAREST_PAIRS = 400_000;

/** All bars worth a thought, cheapest first. In: pieces and rule; out: bars in the same frame. */
export function findBars(pieces: Pieces, rule: BarRule): Bar[] {
  const bars: Bar[] = barsAlongNecks(pieces, rule);
  for (const piece of pieces.pieces) {
    if (piece.id === 0) continue;
    if (piece.small) bars.push(...barsOverSmall(piece, pieces, rule));
    else bars.push(...barsFromEdge(piece, pieces, rule));
  }
  const all = pieces.pieces.some((p) => p.small) ? bars.map((bar) => withAllItCarries(bar, pieces)) : bars;
  return all.sort((p, q) => p.cost - q.cost);
}

function barsFromEdge(piece: Piece, pieces: Pieces, rule: BarRule): Bar[] {
  const bars: Bar[] = [];
  const middle = middleOf(piece);
  const places = [...placesAlong(piece, rule.widthMm), ...placesOnAxes(piece, middle, pieces.shrunk)];
  const others = otherEdges(pieces.shrunk, piece.id);
  const seekNearest = places.length * others.length <= NEAREST_PAIRS;
  for (const place of places) {
    const directions: Point[] = [straighten(place.out)];
    for (const axis of AXES) {
      if (axis.x * place.out.x + axis.y * place.out.y > 0.45) directions.push(axis);
    }
    if (seekNearest) {
      const near = nearestEdge(pieces.shrunk, others, place.at);
      if (near && near.x * place.out.x + near.y * place.out.y > 0.2) directions.push(straighten(near));
    }
    const tried: Point[] = [];
    for (const d of directions) {
      if (tried.some((t) => t.x * d.x + t.y * d.y > SAME_WAY_COS)) continue;
      tried.push(d);
      const hit = castRay(pieces.shrunk, place.at, d.x, d.y).find((h) => h.at > OWN_EDGE_MM);
      if (!hit || hit.owner === piece.id) continue;
      const to = { x: place.at.x + d.x * hit.at, y: place.at.y + d.y * hit.at };
      bars.push(barFrom(piece, middle, place.at, to, hit.owner, place.along, pieces, rule));
    }
  }
  return bars;
}

/** A bar along every neck that it would widen, or that joins two pieces. */
function barsAlongNecks(pieces: Pieces, rule: BarRule): Bar[] {
  const bars: Bar[] = [];
  for (const { from, to, a, b } of findNecks(pieces, rule.widthMm)) {
    const fit = measureBar(pieces.open, from, to, rule.widthMm, rule.leastOpeningMm);
    if (a === b && fit.crossingMm <= 0) continue;
    const piece = pieces.pieces[a]!;
    bars.push({
      from,
      to,
      a,
      b,
      cost: fit.crossingMm + 0.02 * Math.hypot(to.x - from.x, to.y - from.y),
      widthMm: rule.widthMm,
      widens: true,
      alongMm: piece.edge.length > 0 ? alongAt(piece, from) : 0,
    });
  }
  return bars;
}

const NEARLY_UPRIGHT_COS = Math.cos(NEARLY_UPRIGHT_RAD);

/** The direction, or upright or level where it is nearly so. */
function straighten(d: Point): Point {
  return AXES.find((axis) => axis.x * d.x + axis.y * d.y > NEARLY_UPRIGHT_COS) ?? d;
}

/** A bar right across a small island, from the metal on one side to the metal on the other. */
function barsOverSmall(piece: Piece, pieces: Pieces, rule: BarRule): Bar[] {
  const bars: Bar[] = [];
  for (let i = 0; i < SMALL_DIRECTIONS; i++) {
    const angle = (i * Math.PI) / SMALL_DIRECTIONS;
    const [dx, dy] = [Math.sin(angle), Math.cos(angle)];
    const ahead = castRay(pieces.shrunk, piece.at, dx, dy)[0];
    const behind = castRay(pieces.shrunk, piece.at, -dx, -dy)[0];
    if (!ahead || !behind) continue;
    const from = { x: piece.at.x - dx * behind.at, y: piece.at.y - dy * behind.at };
    const to = { x: piece.at.x + dx * ahead.at, y: piece.at.y + dy * ahead.at };
    const fit = measureBar(pieces.open, from, to, rule.widthMm, rule.leastOpeningMm);
    bars.push({
      from,
      to,
      a: behind.owner,
      b: ahead.owner,
      carries: { piece: piece.id, at: piece.at },
      cost: costOfBar(fit, dx, 0, rule),
      widthMm: rule.widthMm,
      widens: false,
      alongMm: 0,
    });
  }
  return bars;
}

function barFrom(
  piece: Piece,
  middle: Point,
  from: Point,
  to: Point,
  b: number,
  alongMm: number,
  pieces: Pieces,
  rule: BarRule,
): Bar {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const [dx, dy] = [(to.x - from.x) / length, (to.y - from.y) / length];
  const half = Math.sqrt(piece.areaMm2 / Math.PI);
  const broad = rule.manner === 'band' && half > BAND_SHARE * rule.widthMm;
  const widthMm = broad ? BAND_SHARE * rule.widthMm : rule.widthMm;
  const fit = measureBar(pieces.open, from, to, widthMm, rule.leastOpeningMm);
  const aside = Math.abs((middle.x - from.x) * dy - (middle.y - from.y) * dx);
  const cost = costOfBar(fit, dx, aside / Math.max(half, rule.widthMm), rule);
  return { from, to, a: piece.id, b, cost, widthMm, widens: false, alongMm };
}

function otherEdges(grid: EdgeGrid, owner: number): number[] {
  const out: number[] = [];
  for (let e = 0; e < grid.owner.length; e++) if (grid.owner[e] !== owner) out.push(e);
  return out;
}

/** Unit direction from p to the nearest of the given edges. */
function nearestEdge(grid: EdgeGrid, edges: readonly number[], p: Point): Point | undefined {
  let best = Infinity;
  let dir: Point | undefined;
  for (const e of edges) {
    const [ax, ay] = [grid.ax[e]!, grid.ay[e]!];
    const [ex, ey] = [grid.bx[e]! - ax, grid.by[e]! - ay];
    const lengthSq = ex * ex + ey * ey;
    const t = lengthSq === 0 ? 0 : Math.min(1, Math.max(0, ((p.x - ax) * ex + (p.y - ay) * ey) / lengthSq));
    const [x, y] = [ax + t * ex - p.x, ay + t * ey - p.y];
    const sq = x * x + y * y;
    if (sq < best) {
      best = sq;
      const mm = Math.sqrt(sq);
      dir = mm > 0 ? { x: x / mm, y: y / mm } : undefined;
    }
  }
  return dir;
}
