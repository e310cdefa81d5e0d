import { nearestOnSegment } from '../measure/distance.ts';
import { castRay, type EdgeGrid } from '../measure/edge-grid.ts';
import { centroid, perimeterMm, ringHolds } from '../measure/ring.ts';
import type { Point } from '../shapes.ts';
import type { Bar, BarRule } from './bar.ts';
import type { Piece, Pieces } from './find-pieces.ts';
import { measureBar } from './measure-bar.ts';
import { findNecks } from './necks.ts';
import { withAllItCarries } from './planks.ts';
import { ON_AXIS_SIN, OWN_EDGE_MM, SAME_WAY_COS } from '../units.ts';

/** A band is this many times as wide as a bridge must be, where the island is large enough for it. */
const BAND_SHARE = 1.8;

/**
 * Bars are tried at this many places around an island, or at a multiple of it that keeps them about a width apart:
 * a number with many divisors, so that bars spread along a long edge find places evenly apart.
 */
const PLACES = 48;
const ROUND_PLACES = 240;
const MOST_PLACES = 720;
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
  const around = perimeterMm(piece.edge);
  const wanted = around / rule.widthMm;
  const unit = wanted > ROUND_PLACES ? ROUND_PLACES : PLACES;
  const count = Math.min(MOST_PLACES, unit * Math.max(1, Math.round(wanted / unit)));
  const middle = middleOf(piece);
  const places = [...placesAlong(piece, count), ...placesOnAxes(piece, middle, pieces.shrunk)];
  const others = otherEdges(pieces.shrunk, piece.id);
  const seekNearest = places.length * others.length <= NEAREST_PAIRS;
  for (const place of places) {
    const directions: Point[] = [uprighted(place.out)];
    for (const axis of AXES) {
      if (axis.x * place.out.x + axis.y * place.out.y > 0.45) directions.push(axis);
    }
    if (seekNearest) {
      const near = nearestEdge(pieces.shrunk, others, place.at);
      if (near && near.x * place.out.x + near.y * place.out.y > 0.2) directions.push(uprighted(near));
    }
    const tried: Point[] = [];
    for (const d of directions) {
      if (tried.some((t) => t.x * d.x + t.y * d.y > SAME_WAY_COS)) continue;
      tried.push(d);
      const hit = castRay(pieces.shrunk, place.at, d.x, d.y).find((h) => h.at > OWN_EDGE_MM);
      if (!hit || hit.owner === piece.id) continue;
      const to = { x: place.at.x + d.x * hit.at, y: place.at.y + d.y * hit.at };
      bars.push(judged(piece, middle, place.at, to, hit.owner, place.along, pieces, rule));
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

const AXES: readonly Point[] = [
  { x: 0, y: 1 },
  { x: 0, y: -1 },
  { x: 1, y: 0 },
  { x: -1, y: 0 },
];

/** A bar that leans less than this looks like one that should stand or lie. */
const NEARLY_COS = Math.cos((16 * Math.PI) / 180);
const NEARLY_SIN = Math.sin((16 * Math.PI) / 180);

function uprighted(d: Point): Point {
  return AXES.find((axis) => axis.x * d.x + axis.y * d.y > NEARLY_COS) ?? d;
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
      cost: costOf(fit, dx, 0, rule),
      widthMm: rule.widthMm,
      widens: false,
      alongMm: 0,
    });
  }
  return bars;
}

function judged(
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
  const cost = costOf(fit, dx, aside / Math.max(half, rule.widthMm), rule);
  return { from, to, a: piece.id, b, cost, widthMm, widens: false, alongMm };
}

/** How much leaning from the upright hurts, and standing off the island's middle. */
const LEAN = { hidden: 0.35, upright: 3, band: 3 } as const;
const OFF = { hidden: 0.4, upright: 0.6, band: 1.5 } as const;
/** How much lying slantwise hurts, nearly upright or nearly level as much as at 45 degrees: it looks like a slip. */
const SLANT = 0.35;
/** How much leaving strips of the stroke beside the bar hurts. */
const STRIPS = 0.4;
/** How much standing in a join or at a stroke's end hurts. */
const JOINT = { crossing: 0.35, width: 0.4 };

/**
 * Hurt in mm of stroke: the crossing itself, more where it is skew, off the island's middle, leaning (the manner says
 * how much uprights are preferred), shaves a stroke's end or leaves a sliver. Weights are ours, tuned by eye.
 */
function costOf(fit: ReturnType<typeof measureBar>, dx: number, aside: number, rule: BarRule): number {
  const lean = dx * dx;
  const fromAxis = Math.min(Math.abs(dx), Math.sqrt(Math.max(0, 1 - lean)));
  const slant = 4 * lean * (1 - lean) + (fromAxis > ON_AXIS_SIN && fromAxis < NEARLY_SIN ? 1 : 0);
  const off = Math.min(1.5, aside);
  return (
    fit.crossingMm *
      (1 +
        0.9 * Math.min(fit.skew, 1.5) +
        JOINT.crossing * fit.joint +
        STRIPS * fit.strips +
        OFF[rule.manner] * off * off +
        LEAN[rule.manner] * lean +
        SLANT * slant) +
    rule.widthMm *
      (0.02 +
        0.9 * fit.overhang +
        0.7 * fit.slivers +
        JOINT.width * fit.joint +
        0.1 * off * off +
        0.5 * LEAN[rule.manner] * lean)
  );
}

interface EdgePlace {
  readonly at: Point;
  readonly out: Point;
  readonly along: number;
}

/** So many evenly spaced places along the piece's edge, the first at its top, with the direction out of it. */
function placesAlong(piece: Piece, count: number): EdgePlace[] {
  const ring = piece.edge;
  const around = perimeterMm(ring);
  const step = around / count;
  const top = alongAt(piece, { x: piece.at.x, y: piece.at.y + around });
  const places: EdgePlace[] = [];
  let along = 0;
  let next = top % step;
  let a = ring[ring.length - 1]!;
  for (const b of ring) {
    const length = Math.hypot(b.x - a.x, b.y - a.y);
    if (length > 0) {
      const [ux, uy] = [(b.x - a.x) / length, (b.y - a.y) / length];
      for (; next < along + length && places.length < count; next += step) {
        const t = next - along;
        places.push({ at: { x: a.x + ux * t, y: a.y + uy * t }, out: { x: -uy, y: ux }, along: next });
      }
    }
    along += length;
    a = b;
  }
  return places;
}

/** Where the upright and the level line through the island's middle leave it: the places a type designer looks first. */
function placesOnAxes(piece: Piece, middle: Point, shrunk: EdgeGrid): EdgePlace[] {
  const places: EdgePlace[] = [];
  for (const axis of AXES) {
    const hit = castRay(shrunk, middle, axis.x, axis.y).find((h) => h.owner === piece.id);
    if (!hit) continue;
    const at = { x: middle.x + axis.x * hit.at, y: middle.y + axis.y * hit.at };
    places.push({ at, out: axis, along: alongAt(piece, at) });
  }
  return places;
}

/** The island's centre of area, which the eye takes for its middle; where that lies outside it, a point well inside. */
function middleOf(piece: Piece): Point {
  const centre = centroid(piece.edge);
  return ringHolds(piece.edge, centre) ? centre : piece.at;
}

/** Distance along the edge of the point of it nearest to p. */
export function alongAt(piece: Piece, p: Point): number {
  let best = { mm: Infinity, along: 0 };
  let along = 0;
  let a = piece.edge[piece.edge.length - 1]!;
  for (const b of piece.edge) {
    const q = nearestOnSegment(p, a, b);
    const mm = Math.hypot(q.x - p.x, q.y - p.y);
    if (mm < best.mm) best = { mm, along: along + Math.hypot(q.x - a.x, q.y - a.y) };
    along += Math.hypot(b.x - a.x, b.y - a.y);
    a = b;
  }
  return best.along;
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
