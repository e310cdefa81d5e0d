import { createCache } from '../../../geometry/cache.ts';
import { oakPixels, type OakPixels, type OakWish, type Theme } from './oak.ts';
import { lattice, noise2 } from './seeded.ts';
import { STEEL_PX, steelPixels } from './steel.ts';
import type { TexturePixels } from './texture-worker.ts';

/**
 * Bitmaps that painting needs again and again. Each is made once and kept: the wood of a head takes
 * a quarter of a second. It must not change under the plate while someone types.
 */

export interface OakTexture {
  readonly wood: HTMLCanvasElement;
  /** Alpha says how much paint or char the grain takes. */
  readonly grain: HTMLCanvasElement;
}

/** Also the seed of the boards that staves are cut from in web/barrel/solid/. */
export const SEED = 41;
const SIDES_MM = [150, 240, 360, 560, 800, 1200, 1600];
/** A visit shows a few sizes of head, by day and by night. */
const OAKS = createCache<OakTexture>(20);
const SHEETS = createCache<HTMLCanvasElement>(10);

/**
 * Boards for a head of about that size; nearby sizes share one picture so that a typed diameter costs nothing. Stage and
 * barrel show the same one.
 */
export function oakTexture(sideMm: number, theme: Theme): OakTexture {
  const wish = oakWish(sideMm, theme);
  return OAKS.getOrMake(keyOf(wish), () => textureOf(oakPixels(wish), wish.sizePx));
}

/** Has wood and steel for such a head made by a worker, so that painting them keeps no hand waiting. Never rejects. */
export async function bringTextures(sideMm: number, theme: Theme): Promise<void> {
  const wish = oakWish(sideMm, theme);
  const made = await madeByWorker(wish);
  if (made === undefined) return;
  OAKS.getOrMake(keyOf(wish), () => textureOf(made.oak, wish.sizePx));
  SHEETS.getOrMake('steel', () => painted(made.steel, STEEL_PX));
}

/** What does not come in this time is painted on the spot. */
const PATIENCE_MS = 8000;

function madeByWorker(wish: OakWish): Promise<TexturePixels | undefined> {
  return new Promise((done) => {
    const worker = new Worker(new URL('./texture-worker.ts', import.meta.url), { type: 'module' });
    const end = (made: TexturePixels | undefined): void => {
      worker.terminate();
      done(made);
    };
    worker.onmessage = ({ data }: MessageEvent<TexturePixels>) => end(data);
    worker.onerror = () => end(undefined);
    setTimeout(end, PATIENCE_MS, undefined);
    worker.postMessage(wish);
  });
}

function oakWish(sideMm: number, theme: Theme): OakWish {
  const side = SIDES_MM.reduce((a, b) => (Math.abs(b - sideMm) < Math.abs(a - sideMm) ? b : a));
  const sizePx = Math.min(innerWidth, innerHeight) * Math.min(3, devicePixelRatio || 1) < 760 ? 760 : 1100;
  return { sizePx, sideMm: side, seed: SEED, theme };
}

function keyOf({ sideMm, theme, sizePx }: OakWish): string {
  return `${sideMm}/${theme}/${sizePx}`;
}

function textureOf(pixels: OakPixels, sizePx: number): OakTexture {
  let grain: HTMLCanvasElement | undefined;
  return {
    wood: painted(pixels.rgba, sizePx),
    get grain() {
      return (grain ??= painted(asAlpha(pixels.relief), sizePx));
    },
  };
}

function painted(rgba: Uint8ClampedArray<ArrayBuffer>, sizePx: number): HTMLCanvasElement {
  const canvas = blankCanvas(sizePx, sizePx);
  context(canvas).putImageData(new ImageData(rgba, sizePx, sizePx), 0, 0);
  return canvas;
}

function asAlpha(levels: Uint8ClampedArray): Uint8ClampedArray<ArrayBuffer> {
  const rgba = new Uint8ClampedArray(levels.length * 4);
  levels.forEach((level, i) => (rgba[i * 4 + 3] = level));
  return rgba;
}

/** Brushing marks of rolled sheet: grey streaks about the middle, to be laid over with soft light. */
export function steelTexture(): HTMLCanvasElement {
  return SHEETS.getOrMake('steel', () => painted(steelPixels(STEEL_PX), STEEL_PX));
}

/** Limewashed cellar wall of rough stone courses, a little out of focus behind the barrel; to be stretched. */
export function wallTexture(theme: Theme): HTMLCanvasElement {
  return SHEETS.getOrMake(`wall/${theme}`, () => drawWall(theme));
}

function drawWall(theme: Theme): HTMLCanvasElement {
  const size = 640;
  const made = blankCanvas(size, size);
  const image = new ImageData(size, size);
  const [r, g, b, swing] = theme === 'light' ? [216, 207, 190, 34] : [50, 40, 31, 22];
  const heights = wallHeights(size);
  for (let y = 0; y < size; y++) {
    for (let x = 0; x < size; x++) {
      const i = y * size + x;
      const here = heights[i] ?? 0;
      // What rises towards the lower right turns its face to the lamp.
      const behind = heights[Math.max(0, y - 3) * size + Math.max(0, x - 3)] ?? 0;
      const lift = ((here - behind) * 0.85 + (here - 0.5) * 0.6 + (lattice(x, y, 71) - 0.5) * 0.09) * swing;
      image.data[i * 4] = r + lift;
      image.data[i * 4 + 1] = g + lift;
      image.data[i * 4 + 2] = b + lift * 0.94;
      image.data[i * 4 + 3] = 255;
    }
  }
  context(made).putImageData(image, 0, 0);
  return made;
}

/** Stones stand out of soft joints, each a little differently; limewash has rounded everything. */
function wallHeights(size: number): Float32Array {
  const heights = new Float32Array(size * size);
  const [sag, lean] = [slow(size, 0.013, 0.02, 53), slow(size, 0.02, 0.03, 57)];
  const [lumps, grit] = [slow(size, 0.03, 0.034, 61), slow(size, 0.11, 0.12, 67)];
  for (let y = 0; y < size; y++) {
    for (let x = 0; x < size; x++) {
      const yy = y + (sag(x, y) - 0.5) * 16 + 20;
      const course = Math.floor(yy / 54);
      const xx = x + (lean(x, y) - 0.5) * 18 + lattice(course, 5, 59) * 400;
      const long = 78 + lattice(course, 6, 59) * 34;
      const stone = Math.floor(xx / long);
      const toJoint = Math.min(edge(yy, 54), edge(xx, long));
      const face = Math.min(1, Math.max(0, (toJoint - 2) / 9));
      const out = 0.35 + lattice(stone, course, 63) * 0.3;
      heights[y * size + x] = face * face * (3 - 2 * face) * out + lumps(x, y) * 0.3 + grit(x, y) * 0.12;
    }
  }
  return heights;
}

/** Noise that changes little within some pixels, worked out at every fourth. */
function slow(size: number, perX: number, perY: number, seed: number): (x: number, y: number) => number {
  const [pitch, wide] = [4, Math.ceil(size / 4) + 2];
  const at = new Float32Array(wide * wide);
  for (let j = 0; j < wide; j++)
    for (let i = 0; i < wide; i++) at[j * wide + i] = noise2(i * pitch * perX, j * pitch * perY, seed);
  return (x, y) => {
    const k = (y >> 2) * wide + (x >> 2);
    const fx = (x & 3) / pitch;
    const fy = (y & 3) / pitch;
    const a = at[k] ?? 0;
    const b = at[k + 1] ?? 0;
    const c = at[k + wide] ?? 0;
    const d = at[k + wide + 1] ?? 0;
    return a + (b - a) * fx + (c - a) * fy + (a - b - c + d) * fx * fy;
  };
}

function edge(at: number, pitch: number): number {
  const within = at - Math.floor(at / pitch) * pitch;
  return Math.min(within, pitch - within);
}

export function blankCanvas(width: number, height: number): HTMLCanvasElement {
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(width));
  canvas.height = Math.max(1, Math.round(height));
  return canvas;
}

/** The 2D context; a browser without one cannot run the tool at all. */
export function context(canvas: HTMLCanvasElement): CanvasRenderingContext2D {
  const ctx = canvas.getContext('2d');
  if (!ctx) throw new Error('This browser offers no 2D canvas.');
  return ctx;
}
