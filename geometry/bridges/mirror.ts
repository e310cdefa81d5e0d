import { exclusive } from '../adapters/clipper.ts';
import { castRay } from '../measure/edge-grid.ts';
import { joinBoxes, regionAreaMm2, ringBox } from '../measure/ring.ts';
import type { Point, Region } from '../shapes.ts';
import type { Bar } from './bar.ts';
import { alongAt } from './edge-places.ts';
import type { Pieces } from './find-pieces.ts';
import { withAllItCarries } from './planks.ts';

/** A letter counts as mirrored left to right when less than this share of it differs from its mirror image. */
const LIKENESS = 0.05;

/** A bar nearer to the axis than this, in widths, and its image would be one bar: it is put on the axis. */
const ONTO_AXIS = 0.5;

/** The x about which the regions are mirror images of themselves, or undefined. */
export function mirrorAxis(regions: readonly Region[]): number | undefined {
  const box = joinBoxes(regions.map((r) => ringBox(r.outer)));
  const x = (box.minX + box.maxX) / 2;
  const mirrorRing = (ring: readonly Point[]) => ring.map((p) => flip(p, x)).reverse();
  const mirrored = regions.map((r) => ({ outer: mirrorRing(r.outer), holes: r.holes.map(mirrorRing) }));
  const area = regions.reduce((sum, r) => sum + regionAreaMm2(r), 0);
  const differs = exclusive(regions, mirrored).reduce((sum, r) => sum + regionAreaMm2(r), 0);
  return differs <= LIKENESS * area ? x : undefined;
}

/**
 * The bar's mirror image about x, cast anew from the mirrored place so that its ends lie on the pieces' real edges.
 * The bar itself when it is its own image; undefined when the other side has no such bar.
 */
export function mirroredBar(bar: Bar, x: number, pieces: Pieces, widthMm: number): Bar | undefined {
  const from = flip(bar.from, x);
  const to = flip(bar.to, x);
  const same = 0.04 * widthMm;
  if (isNear(from, bar.from, same) && isNear(to, bar.to, same)) return bar;
  if (isNear(from, bar.to, same) && isNear(to, bar.from, same)) return bar;
  return castLike(bar, from, to, (p) => flip(p, x), pieces, widthMm);
}

/** An upright bar beside the axis, moved onto it; undefined for others, and where nothing is to be held there. */
export function ontoAxis(bar: Bar, x: number, pieces: Pieces, widthMm: number): Bar | undefined {
  const reach = ONTO_AXIS * widthMm;
  if (Math.abs(bar.from.x - x) > reach || Math.abs(bar.to.x - x) > reach) return undefined;
  const onto = (p: Point) => ({ x, y: p.y });
  return castLike(bar, onto(bar.from), onto(bar.to), onto, pieces, widthMm);
}

/** The bar cast anew from where its ends should be now, so that they lie on the pieces' real edges. */
function castLike(
  bar: Bar,
  from: Point,
  to: Point,
  move: (p: Point) => Point,
  pieces: Pieces,
  widthMm: number,
): Bar | undefined {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const [dx, dy] = [(to.x - from.x) / length, (to.y - from.y) / length];
  const back = Math.min(0.3 * widthMm, 0.5);
  const start = { x: from.x - dx * back, y: from.y - dy * back };
  const hits = castRay(pieces.shrunk, start, dx, dy);
  // The pair of crossings that leaves one piece and enters another nearest to where the image should be.
  for (let i = 0; i + 1 < hits.length; i++) {
    const [p, q] = [hits[i]!, hits[i + 1]!];
    if (Math.abs(p.at - back) > back || Math.abs(q.at - back - length) > back || p.owner === q.owner) continue;
    const a = p.owner;
    const piece = pieces.pieces[a]!;
    const first = { x: start.x + dx * p.at, y: start.y + dy * p.at };
    const last = { x: start.x + dx * q.at, y: start.y + dy * q.at };
    const alongMm = piece.edge.length > 0 ? alongAt(piece, first) : 0;
    const image = { ...bar, from: first, to: last, a, b: q.owner, alongMm };
    if (!bar.carries) return withAllItCarries(image, pieces);
    const at = move(bar.carries.at);
    const carried = pieces.pieces.find((other) => other.small && isNear(other.at, at, 0.2 * widthMm));
    if (!carried) return undefined;
    return withAllItCarries({ ...image, carries: { piece: carried.id, at: carried.at } }, pieces);
  }
  return undefined;
}

function flip(p: Point, x: number): Point {
  return { x: 2 * x - p.x, y: p.y };
}

function isNear(p: Point, q: Point, mm: number): boolean {
  return Math.hypot(p.x - q.x, p.y - q.y) <= mm;
}
