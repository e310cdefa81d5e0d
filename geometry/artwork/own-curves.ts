import { ringsOf } from '../adapters/clipper.ts';
import { flattenOutline } from '../measure/flatten.ts';
import { signedAreaMm2 } from '../measure/ring.ts';
import { spend } from '../measure/counted-work.ts';
import type { Outline, PathCommand, Point, Region, Ring } from '../shapes.ts';
import type { Painted, Tone } from './painted.ts';
import { through } from './through.ts';
import { SAME_AREA_MM } from '../units.ts';

/**
 * The drawing's own curves, filled non-zero, where they already are the outlines of what is cut: only fills of the tone
 * that is cut, none crossing itself or another. Undefined otherwise.
 * In: the shapes with the matrix to the frame of `area`, which is what they come to.
 */
export function ownCurves(
  shapes: readonly Painted[],
  cut: Tone,
  area: readonly Region[],
  flatMm: number,
): Outline | undefined {
  if (shapes.some((s) => s.stroke !== undefined || s.fill?.tone !== cut)) return undefined;
  const subpaths = shapes.flatMap((s) => split(through(s.outline, s.matrix)));
  const drawn = subpaths.flatMap((path) => {
    const ring = flattenOutline(path, flatMm)[0];
    return ring && Math.abs(signedAreaMm2(ring)) > 0 ? [{ path, ring, area: signedAreaMm2(ring) }] : [];
  });
  // The same rings came out as went in: same number, and each of the same size.
  const rings = ringsOf(area);
  const outers = area.map(({ outer }) => sizeOf(outer));
  const holes = area.flatMap((r) => r.holes.map(sizeOf));
  if (drawn.length !== rings.length) return undefined;
  const went = drawn.map((d) => Math.abs(d.area)).sort((a, b) => a - b);
  const came = rings.map((r) => Math.abs(signedAreaMm2(r))).sort((a, b) => a - b);
  if (went.some((mm2, i) => Math.abs(mm2 - came[i]!) > SAME_AREA_MM * Math.max(1, Math.sqrt(mm2)))) return undefined;
  return drawn.flatMap(({ path, ring, area: mm2 }) => {
    const outer = isOuter(ring, outers, holes);
    return outer === mm2 > 0 ? path : reversed(path);
  });
}

interface Size extends Point {
  readonly mm2: number;
}

function sizeOf(ring: Ring): Size {
  return { ...mean(ring), mm2: Math.abs(signedAreaMm2(ring)) };
}

/** Whether the nearest of the area's rings is an outer one. */
function isOuter(ring: Ring, outers: readonly Size[], holes: readonly Size[]): boolean {
  const size = sizeOf(ring);
  spend((outers.length + holes.length) / 8);
  const best = (sizes: readonly Size[]): number => {
    let least = Infinity;
    for (const s of sizes) {
      const off = Math.abs(s.mm2 - size.mm2);
      if (off < least) least = Math.min(least, off + Math.abs(s.x - size.x) + Math.abs(s.y - size.y));
    }
    return least;
  };
  return best(outers) <= best(holes);
}

/** Middle of the box: the same however many points lie on it. */
function mean(ring: Ring): { x: number; y: number } {
  let [x0, x1, y0, y1] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const p of ring) {
    [x0, x1] = [Math.min(x0, p.x), Math.max(x1, p.x)];
    [y0, y1] = [Math.min(y0, p.y), Math.max(y1, p.y)];
  }
  return { x: (x0 + x1) / 2, y: (y0 + y1) / 2 };
}

function split(outline: Outline): PathCommand[][] {
  const paths: PathCommand[][] = [];
  let start: PathCommand | undefined;
  let open: PathCommand[] | undefined;
  for (const c of outline) {
    if (c.type === 'M') {
      start = c;
      open = [c];
      paths.push(open);
    } else if (c.type === 'Z') {
      open?.push(c);
      open = undefined;
    } else {
      if (!open && start) {
        open = [start];
        paths.push(open);
      }
      open?.push(c);
    }
  }
  return paths.filter((p) => p.length > 2).map((p) => (p.at(-1)!.type === 'Z' ? p : [...p, { type: 'Z' }]));
}

/** The same subpath the other way round. */
function reversed(path: readonly PathCommand[]): PathCommand[] {
  const drawn = path.filter((c) => c.type !== 'Z');
  const last = drawn.at(-1)!;
  const out: PathCommand[] = [{ type: 'M', x: last.x, y: last.y }];
  for (let i = drawn.length - 1; i > 0; i--) {
    const [c, to] = [drawn[i]!, drawn[i - 1]!];
    if (c.type === 'C') out.push({ type: 'C', x1: c.x2, y1: c.y2, x2: c.x1, y2: c.y1, x: to.x, y: to.y });
    else if (c.type === 'Q') out.push({ type: 'Q', x1: c.x1, y1: c.y1, x: to.x, y: to.y });
    else out.push({ type: 'L', x: to.x, y: to.y });
  }
  return [...out, { type: 'Z' }];
}
