import { cloud2, lattice, noise2, seededRandom } from './seeded.ts';

/**
 * Quarter-sawn oak head boards, painted pixel by pixel. Pure: no canvas, no DOM.
 *
 * Boards stand upright (the grain runs up and down); all is in true millimetres. Year rings are fine lines along the
 * grain, with pores in the early wood. Ray flecks are pale ribbons across it. The grain flows round a few pin knots.
 */

export type Theme = 'light' | 'dark';

export interface OakWish {
  /** Side of the square picture. */
  readonly sizePx: number;
  /** What that side is in the wood. */
  readonly sideMm: number;
  readonly seed: number;
  readonly theme: Theme;
}

export interface OakPixels {
  /** RGBA, row by row, as ImageData takes it. */
  readonly rgba: Uint8ClampedArray<ArrayBuffer>;
  /** How pale the wood is at each pixel, 0 to 255: paint and char take unevenly by it. */
  readonly relief: Uint8ClampedArray<ArrayBuffer>;
}

interface Board {
  readonly startMm: number;
  readonly endMm: number;
  readonly tone: number;
  readonly ringMm: number;
  readonly fleck: number;
  readonly tilt: number;
  readonly shiftMm: number;
}

interface Knot {
  readonly u: number;
  readonly v: number;
  readonly r: number;
}

type Rgb = readonly [number, number, number];

const PALETTE: Record<Theme, readonly Rgb[]> = {
  light: [
    [58, 34, 17],
    [122, 79, 42],
    [176, 126, 75],
    [205, 159, 104],
    [230, 193, 141],
  ],
  dark: [
    [26, 15, 8],
    [70, 43, 23],
    [112, 75, 43],
    [143, 101, 61],
    [178, 134, 87],
  ],
};

/** Paints the boards. Some tenth of a second for a thousand pixels a side. */
export function oakPixels(wish: OakWish): OakPixels {
  const { sizePx, sideMm, seed } = wish;
  const boards = headBoards(sideMm, seed);
  const knots = pinKnots(boards, sideMm, seed);
  const colours = ramp(PALETTE[wish.theme]);
  const mmPerPx = sideMm / sizePx;
  const rgba = new Uint8ClampedArray(sizePx * sizePx * 4);
  const relief = new Uint8ClampedArray(sizePx * sizePx);
  let at = 0;
  for (let x = 0; x < sizePx; x++) {
    const v = (x + 0.5) * mmPerPx;
    while (at < boards.length - 1 && v >= (boards[at]?.endMm ?? Infinity)) at++;
    const board = boards[at];
    if (!board) continue;
    const edge = jointShade(v, board, mmPerPx);
    const near = knots.filter((k) => k.v > board.startMm && k.v < board.endMm && Math.abs(v - k.v) <= k.r * KNOT_WIDE);
    const column = seed + at * 17;
    const grain = near.length > 0 ? undefined : grainAlong(v, board, column, sizePx, mmPerPx);
    for (let y = 0; y < sizePx; y++) {
      const u = (y + 0.5) * mmPerPx;
      const pale = (grain ? woodOf(grain(y), u, v, board, column) : woodAt(u, v, board, near, column)) + edge;
      const i = y * sizePx + x;
      const level = Math.max(0, Math.min(255, Math.round(pale * 255)));
      relief[i] = level;
      rgba[i * 4] = colours[level * 3] ?? 0;
      rgba[i * 4 + 1] = colours[level * 3 + 1] ?? 0;
      rgba[i * 4 + 2] = colours[level * 3 + 2] ?? 0;
      rgba[i * 4 + 3] = 255;
    }
  }
  return { rgba, relief };
}

/** Six to eight boards of differing width that fill the side exactly. */
export function headBoards(sideMm: number, seed: number): Board[] {
  const random = seededRandom(seed);
  const count = 6 + Math.floor(random() * 3);
  const widths = Array.from({ length: count }, () => 0.72 + random() * 0.56);
  const total = widths.reduce((a, b) => a + b, 0);
  let startMm = 0;
  return widths.map((width) => {
    const endMm = startMm + (width / total) * sideMm;
    const board: Board = {
      startMm,
      endMm,
      tone: (random() - 0.5) * 0.26,
      ringMm: 1.9 + random() * 2.2,
      fleck: random() < 0.7 ? 0.5 + random() * 0.5 : 0.12,
      tilt: (random() - 0.5) * 1.1,
      shiftMm: random() * 4000,
    };
    startMm = endMm;
    return board;
  });
}

/** What changes slowly along the grain; each about 0 to 1 but for `sway` and `lean`, mm. */
interface Grain {
  sway: number;
  pore: number;
  fine: number;
  lean: number;
  patch: number;
  tone: number;
}

/** At a place of the board; u along the grain, v across, shifted as the board is, millimetres. */
function grainAt(u: number, v: number, seed: number): Grain {
  return {
    sway: cloud2(u * 0.0042, v * 0.013, seed) * 7,
    pore: noise2(u * 0.075, v * 2.7, seed + 11),
    fine: noise2(u * 0.022, v * 1.3, seed + 13) - 0.5,
    lean: noise2(u * 0.03, v * 0.06, seed + 23) * 9,
    patch: cloud2(u * 0.011, v * 0.028, seed + 37),
    tone: (cloud2(u * 0.0035, v * 0.022, seed + 41) - 0.5) * 0.26,
  };
}

/** Every so many pixels are worked out, what lies between follows from them: none of it changes faster. */
const GRAIN_PX = 6;

/** The grain down one column of pixels that no knot bends. What it gives is overwritten by the next call. */
function grainAlong(v: number, board: Board, seed: number, sizePx: number, mmPerPx: number): (y: number) => Grain {
  const across = v + board.shiftMm * 0.37;
  const at = (step: number) => grainAt((step * GRAIN_PX + 0.5) * mmPerPx + board.shiftMm, across, seed);
  const all = Array.from({ length: Math.ceil(sizePx / GRAIN_PX) + 1 }, (_, step) => at(step));
  const out = at(0);
  return (y) => {
    const step = Math.floor(y / GRAIN_PX);
    const share = y / GRAIN_PX - step;
    const [a = out, b = out] = [all[step], all[step + 1]];
    out.sway = a.sway + (b.sway - a.sway) * share;
    out.pore = a.pore + (b.pore - a.pore) * share;
    out.fine = a.fine + (b.fine - a.fine) * share;
    out.lean = a.lean + (b.lean - a.lean) * share;
    out.patch = a.patch + (b.patch - a.patch) * share;
    out.tone = a.tone + (b.tone - a.tone) * share;
    return out;
  };
}

/** So many of its radii to each side a knot bends the grain, across it and along it. */
const [KNOT_WIDE, KNOT_LONG] = [6, 9];

/** How pale the wood is near knots, about 0 (pore, knot) to 1 (fleck); u along the grain, v across, millimetres. */
function woodAt(uMm: number, vMm: number, board: Board, knots: readonly Knot[], seed: number): number {
  let across = vMm;
  let knotDark = 0;
  for (const k of knots) {
    const du = uMm - k.u;
    const dv = vMm - k.v;
    if (Math.abs(du) > k.r * KNOT_LONG || Math.abs(dv) > k.r * KNOT_WIDE) continue;
    const near = Math.exp(-((du / (k.r * 3.2)) ** 2));
    across -= k.r * 0.92 * Math.tanh(dv / (k.r * 0.7)) * near * Math.exp(-((dv / (k.r * 3.4)) ** 2));
    const d = Math.hypot(du * 0.72, dv) / k.r;
    if (d < 1.5) knotDark = Math.max(knotDark, (1 - d / 1.5) ** 0.6 * (0.78 + 0.22 * Math.sin(d * 9)));
  }
  const grain = grainAt(uMm + board.shiftMm, across + board.shiftMm * 0.37, seed);
  return woodOf(grain, uMm, across, board, seed) * (1 - knotDark * 0.72);
}

/** How pale wood of such a grain is. */
function woodOf(grain: Grain, uMm: number, vMm: number, board: Board, seed: number): number {
  const u = uMm + board.shiftMm;
  const v = vMm + board.shiftMm * 0.37;
  const phase = (v + grain.sway + noise2(v * 0.075, 3.5, seed + 5) * 2.4) / board.ringMm;
  const ring = Math.floor(phase);
  const f = phase - ring;
  const early = (f < 0.14 ? f / 0.14 : Math.exp(-(f - 0.14) * 4.2)) * (0.45 + 0.55 * lattice(ring, 0, seed));
  const pore = Math.max(0, grain.pore - 0.56) * 2.27;
  const fleck = grain.patch > 0.36 ? fleckAt(grain, u, v, board, seed) : 0;
  const bare = 0.7 + grain.tone + board.tone - early * 0.24 - pore * (0.1 + early * 0.2) * (1 - fleck * 0.7);
  return bare + grain.fine * 0.15 + fleck * 0.16;
}

/** Ribbons of the rays, where the board was cut along them. */
function fleckAt(grain: Grain, u: number, v: number, board: Board, seed: number): number {
  const lean = u + v * board.tilt + grain.lean;
  const ribbon = noise2(lean * 0.17, v * 0.042, seed + 29) * 0.75 + noise2(lean * 0.42, v * 0.11, seed + 31) * 0.25;
  return step(0.615, 0.7, ribbon) * step(0.36, 0.6, grain.patch) * board.fleck;
}

/** Dark line between boards; the light from the left catches one arris and leaves the other. */
function jointShade(v: number, board: Board, mmPerPx: number): number {
  const fromStart = v - board.startMm;
  const fromEnd = board.endMm - v;
  const line = Math.max(0.45, mmPerPx * 0.6);
  let shade = 0;
  if (fromStart < line || fromEnd < line) shade -= 0.5;
  if (fromStart >= line && fromStart < line + 1.6) shade += 0.07 * (1 - (fromStart - line) / 1.6);
  if (fromEnd >= line && fromEnd < line + 2.6) shade -= 0.14 * (1 - (fromEnd - line) / 2.6);
  return shade;
}

function pinKnots(boards: readonly Board[], sideMm: number, seed: number): Knot[] {
  const random = seededRandom(seed + 977);
  const knots: Knot[] = [];
  for (let n = 0; n < 3; n++) {
    const board = boards[Math.floor(random() * boards.length)];
    if (!board) continue;
    const width = board.endMm - board.startMm;
    knots.push({
      u: sideMm * (0.1 + random() * 0.8),
      v: board.startMm + width * (0.25 + random() * 0.5),
      r: Math.min(width * 0.06, 2 + random() * 2.4),
    });
  }
  return knots;
}

function ramp(stops: readonly Rgb[]): Uint8ClampedArray {
  const out = new Uint8ClampedArray(256 * 3);
  for (let i = 0; i < 256; i++) {
    const at = (i / 255) * (stops.length - 1);
    const k = Math.min(stops.length - 2, Math.floor(at));
    const a = stops[k];
    const b = stops[k + 1];
    if (!a || !b) continue;
    for (const c of [0, 1, 2] as const) out[i * 3 + c] = a[c] + (b[c] - a[c]) * (at - k);
  }
  return out;
}

function step(from: number, to: number, x: number): number {
  const t = Math.max(0, Math.min(1, (x - from) / (to - from)));
  return t * t * (3 - 2 * t);
}
