import { createCache } from '../cache.ts';
import { clockPoint, turnPoint } from '../measure/clock.ts';
import { ringsGap } from '../measure/distance.ts';
import { flattenOutline } from '../measure/flatten.ts';
import type { Outline, PathCommand, Point } from '../shapes.ts';
import { FLATTEN_ERROR_MM } from '../units.ts';
import { placeRings } from './rail.ts';

/**
 * The strands of a right-hand laid rope bent round a band: leaning S shapes, all alike, each running from the inner
 * edge to the outer while moving on along the rope, tapering where it dives under the next.
 *
 * A strand is drawn on a straight band (u along it, v across from -1/2 to 1/2, in widths of the band) and its curves
 * are then bent round the ring in short pieces, end points and tangents exactly. Its thickness is found by halving,
 * so that the metal to the next strand, as measured, is what was asked.
 */
export function strandOutline(
  innerMm: number,
  outerMm: number,
  count: number,
  gapMm: number,
  openingMm: number,
): Outline {
  const key = `${innerMm}|${outerMm}|${count}|${gapMm}|${openingMm}`;
  return STRANDS.getOrMake(key, () => thickest(innerMm, outerMm, count, gapMm, openingMm));
}

/**
 * As many strands, up to those wanted, as leave the gap between them when they are only just wide enough to cut;
 * below 2: none.
 */
export function mostStrands(
  innerMm: number,
  outerMm: number,
  gapMm: number,
  openingMm: number,
  wanted: number,
): number {
  // Side by side across a leaning strand there cannot be more than this; a wide band crowds at its inner edge.
  let count = Math.min(wanted, Math.floor((Math.PI * (innerMm + outerMm)) / (gapMm + openingMm)));
  const widthMm = outerMm - innerMm;
  const outline = bend(strand(thinnest(openingMm, widthMm), tipOf(openingMm, widthMm)), innerMm, outerMm);
  while (count >= 2 && gapToNext(outline, count, gapMm) < gapMm) count = Math.min(count - 1, Math.floor(count * 0.97));
  return count;
}

/** The gap a designer would leave where the rule asks for less, in pitches. */
const HANDSOME_GAP = 0.17;
/** Half the thickness of a strand's tip, in widths of the band. */
const TIP = 0.06;
const GREATEST_TIP = 0.16;
/** Half the way that a strand moves on from edge to edge, in widths of the band. */
const HALF_RUN = 0.5;

const STRANDS = createCache<Outline>(100);
const HALVINGS = 14;

function thickest(innerMm: number, outerMm: number, count: number, gapMm: number, openingMm: number): Outline {
  const widthMm = outerMm - innerMm;
  const pitch = (Math.PI * (innerMm + outerMm)) / count / widthMm;
  const tip = tipOf(openingMm, widthMm);
  const handsomeMm = Math.max(gapMm, HANDSOME_GAP * pitch * widthMm);
  // Where even the thinnest strands stand nearer than is handsome, the rule alone counts.
  const wantedMm =
    gapToNext(bend(strand(thinnest(openingMm, widthMm), tip), innerMm, outerMm), count, handsomeMm) < handsomeMm
      ? gapMm
      : handsomeMm;
  const least = thinnest(openingMm, widthMm);
  let [low, high] = [least, Math.max(least, pitch)];
  let best = bend(strand(low, tip), innerMm, outerMm);
  for (let i = 0; i < HALVINGS; i++) {
    const thick = (low + high) / 2;
    const tried = bend(strand(thick, tip), innerMm, outerMm);
    if (gapToNext(tried, count, wantedMm) >= wantedMm) [low, best] = [thick, tried];
    else high = thick;
  }
  return best;
}

/** Thickness along the band, in its widths, at which the opening of the steep middle is just wide enough. */
function thinnest(openingMm: number, widthMm: number): number {
  return (1.25 * openingMm) / widthMm;
}

function tipOf(openingMm: number, widthMm: number): number {
  return Math.min(GREATEST_TIP, Math.max(TIP, (0.6 * openingMm) / widthMm));
}

function gapToNext(outline: Outline, count: number, withinMm: number): number {
  const rings = flattenOutline(outline, FLATTEN_ERROR_MM);
  const next = placeRings(rings, { x: 0, y: 0, turnDeg: 360 / count });
  return ringsGap(rings, next, withinMm)?.mm ?? withinMm;
}

type Cubic = readonly [Point, Point, Point, Point];

/** On the straight band, counter-clockwise, the same when turned by half a turn; thick is measured along the band. */
function strand(thick: number, tip: number): Cubic[] {
  const b = HALF_RUN + thick / 2;
  const c = HALF_RUN - thick / 2;
  const topLeft = { x: c, y: 0.5 };
  const nose = { x: b, y: 0.5 - tip };
  const under = { x: b - 1.2 * tip, y: 0.5 - 2 * tip };
  const bottom = { x: -c, y: -0.5 };
  const reach = 0.5 * (under.x - bottom.x);
  const half: Cubic[] = [
    // From the bottom edge of the band up the right side, flat at both ends.
    [bottom, { x: bottom.x + reach, y: bottom.y }, { x: under.x - 0.75 * reach, y: under.y - 0.12 }, under],
    // Round the tip.
    [under, { x: under.x + 0.6 * tip, y: under.y + 0.1 * tip }, { x: nose.x, y: nose.y - 0.55 * tip }, nose],
    // Along the top edge of the band.
    [nose, { x: nose.x, y: 0.5 - 0.3 * tip }, { x: nose.x - tip, y: 0.5 }, { x: nose.x - 1.6 * tip, y: 0.5 }],
    [{ x: nose.x - 1.6 * tip, y: 0.5 }, { x: (nose.x + c) / 2, y: 0.5 }, { x: (nose.x + c) / 2, y: 0.5 }, topLeft],
  ];
  const turned = half.map((cubic) => cubic.map((p) => ({ x: -p.x, y: -p.y })) as unknown as Cubic);
  return [...half, ...turned];
}

/** Pieces of a curve are no longer than this along the ring; and at least four, as a strand also crosses the band. */
const GREATEST_PIECE_DEG = 6;
const LEAST_PIECES = 4;

/** Round the ring: u becomes the clock angle of the same arc at mid-band, v the radius. */
function bend(cubics: readonly Cubic[], innerMm: number, outerMm: number): Outline {
  const widthMm = outerMm - innerMm;
  const middleMm = (innerMm + outerMm) / 2;
  const clockDegOf = (p: Point) => ((p.x * widthMm) / middleMm) * (180 / Math.PI);
  const radiusOf = (p: Point) => middleMm + p.y * widthMm;
  const bent = (p: Point) => clockPoint(radiusOf(p), clockDegOf(p));
  // A small step d from p on the straight band, on the ring: along by d.x times the local radius, outwards by d.y.
  const handle = (p: Point, to: Point): Point => {
    const along = ((to.x - p.x) * widthMm * radiusOf(p)) / middleMm;
    const step = turnPoint({ x: along, y: (to.y - p.y) * widthMm }, clockDegOf(p));
    const at = bent(p);
    return { x: at.x + step.x, y: at.y + step.y };
  };
  const piecesFor = ([p, , , q]: Cubic) =>
    Math.max(LEAST_PIECES, Math.ceil(Math.abs(clockDegOf(q) - clockDegOf(p)) / GREATEST_PIECE_DEG));
  const first = cubics[0];
  if (!first) return [];
  const out: PathCommand[] = [{ type: 'M', ...bent(first[0]) }];
  for (const cubic of cubics) {
    for (const [p, c1, c2, q] of piecesOf(cubic, piecesFor(cubic))) {
      const [h1, h2, end] = [handle(p, c1), handle(q, c2), bent(q)];
      out.push({ type: 'C', x1: h1.x, y1: h1.y, x2: h2.x, y2: h2.y, x: end.x, y: end.y });
    }
  }
  out.push({ type: 'Z' });
  return out;
}

/** Cut in equal steps of the parameter by de Casteljau's construction. */
function piecesOf(cubic: Cubic, count: number): Cubic[] {
  const out: Cubic[] = [];
  let rest = cubic;
  for (let left = count; left > 1; left--) {
    const [piece, after] = split(rest, 1 / left);
    out.push(piece);
    rest = after;
  }
  out.push(rest);
  return out;
}

function split([p0, p1, p2, p3]: Cubic, t: number): [Cubic, Cubic] {
  const [a, b, c] = [mix(p0, p1, t), mix(p1, p2, t), mix(p2, p3, t)];
  const [d, e] = [mix(a, b, t), mix(b, c, t)];
  const m = mix(d, e, t);
  return [
    [p0, a, d, m],
    [m, e, c, p3],
  ];
}

function mix(p: Point, q: Point, t: number): Point {
  return { x: p.x + (q.x - p.x) * t, y: p.y + (q.y - p.y) * t };
}
