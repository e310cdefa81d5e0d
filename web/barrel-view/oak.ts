import { cloud2, lattice, noise2, seededRandom } from './seeded.ts';

/**
 * Quarter-sawn oak head boards, painted pixel by pixel. Pure: no canvas, no DOM.
 *
 * Boards stand upright (the grain runs up and down). What is painted, in true millimetres: year rings as fine
 * lines along the grain, pores in the early wood, ray flecks as pale ribbons across it, a few pin knots round
 * which the grain flows, and the joints.
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

export interface Board {
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

/** Paints the boards. About a quarter of a second for a thousand pixels a side. */
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
    const near = knots.filter((k) => k.v > board.startMm && k.v < board.endMm);
    for (let y = 0; y < sizePx; y++) {
      const pale = woodAt((y + 0.5) * mmPerPx, v, board, near, seed + at * 17) + edge;
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

/** How pale the wood is, about 0 (pore, knot) to 1 (fleck); u along the grain, v across, millimetres. */
function woodAt(uMm: number, vMm: number, board: Board, knots: readonly Knot[], seed: number): number {
  let across = vMm;
  let knotDark = 0;
  for (const k of knots) {
    const du = uMm - k.u;
    const dv = vMm - k.v;
    if (Math.abs(du) > k.r * 9 || Math.abs(dv) > k.r * 6) continue;
    const near = Math.exp(-((du / (k.r * 3.2)) ** 2));
    across -= k.r * 0.92 * Math.tanh(dv / (k.r * 0.7)) * near * Math.exp(-((dv / (k.r * 3.4)) ** 2));
    const d = Math.hypot(du * 0.72, dv) / k.r;
    if (d < 1.5) knotDark = Math.max(knotDark, (1 - d / 1.5) ** 0.6 * (0.78 + 0.22 * Math.sin(d * 9)));
  }
  const u = uMm + board.shiftMm;
  const v = across + board.shiftMm * 0.37;

  const sway = cloud2(u * 0.0042, v * 0.013, seed) * 7 + noise2(v * 0.075, 3.5, seed + 5) * 2.4;
  const phase = (v + sway) / board.ringMm;
  const ring = Math.floor(phase);
  const f = phase - ring;
  const early = (f < 0.14 ? f / 0.14 : Math.exp(-(f - 0.14) * 4.2)) * (0.45 + 0.55 * lattice(ring, 0, seed));

  const pore = Math.max(0, noise2(u * 0.075, v * 2.7, seed + 11) - 0.56) * 2.27;
  const fine = noise2(u * 0.022, v * 1.3, seed + 13) - 0.5;

  const lean = u + v * board.tilt + noise2(u * 0.03, v * 0.06, seed + 23) * 9;
  const ribbon = noise2(lean * 0.17, v * 0.042, seed + 29) * 0.75 + noise2(lean * 0.42, v * 0.11, seed + 31) * 0.25;
  const patch = cloud2(u * 0.011, v * 0.028, seed + 37);
  const fleck = step(0.615, 0.7, ribbon) * step(0.36, 0.6, patch) * board.fleck;

  const tone = (cloud2(u * 0.0035, v * 0.022, seed + 41) - 0.5) * 0.26 + board.tone;
  const bare = 0.7 + tone - early * 0.24 - pore * (0.1 + early * 0.2) * (1 - fleck * 0.7) + fine * 0.15;
  return (bare + fleck * 0.16) * (1 - knotDark * 0.72);
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
