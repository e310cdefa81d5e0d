import { oakPixels, type Theme } from './oak.ts';
import { lattice, noise2 } from './seeded.ts';

/**
 * Bitmaps that painting needs again and again. Made once for each wish and kept: the wood of a head takes
 * a quarter of a second, and must not change under the plate while someone types.
 */

export interface OakTexture {
  readonly wood: HTMLCanvasElement;
  /** Alpha says how much paint or char the grain takes. */
  readonly grain: HTMLCanvasElement;
}

const SEED = 41;
const SIDES_MM = [150, 240, 360, 560, 800, 1200, 1600];
const oaks = new Map<string, OakTexture>();
let steel: HTMLCanvasElement | undefined;
const walls = new Map<Theme, HTMLCanvasElement>();

/** Boards for a head of about that size; nearby sizes share one picture so that a typed diameter costs nothing. */
export function oakTexture(sideMm: number, theme: Theme, small: boolean): OakTexture {
  const side = SIDES_MM.reduce((a, b) => (Math.abs(b - sideMm) < Math.abs(a - sideMm) ? b : a));
  const sizePx = small ? 760 : 1100;
  const key = `${side}/${theme}/${sizePx}`;
  const kept = oaks.get(key);
  if (kept) return kept;
  const pixels = oakPixels({ sizePx, sideMm: side, seed: SEED, theme });
  const wood = blankCanvas(sizePx, sizePx);
  context(wood).putImageData(new ImageData(pixels.rgba, sizePx, sizePx), 0, 0);
  const grain = blankCanvas(sizePx, sizePx);
  const takes = new ImageData(sizePx, sizePx);
  for (let i = 0; i < pixels.relief.length; i++) takes.data[i * 4 + 3] = pixels.relief[i] ?? 0;
  context(grain).putImageData(takes, 0, 0);
  const made = { wood, grain };
  oaks.set(key, made);
  return made;
}

/** Brushing marks of rolled sheet: grey streaks about the middle, to be laid over with soft light. */
export function steelTexture(): HTMLCanvasElement {
  if (steel) return steel;
  const size = 768;
  const made = blankCanvas(size, size);
  const image = new ImageData(size, size);
  for (let y = 0; y < size; y++) {
    const row = lattice(y, 1, 7) - 0.5;
    for (let x = 0; x < size; x++) {
      const streak = noise2(x * 0.012, y * 0.9, 3) * 0.6 + noise2(x * 0.05, y, 5) * 0.4 - 0.5;
      const level = 128 + streak * 128 + row * 34;
      const i = (y * size + x) * 4;
      image.data[i] = level;
      image.data[i + 1] = level;
      image.data[i + 2] = level;
      image.data[i + 3] = 255;
    }
  }
  context(made).putImageData(image, 0, 0);
  steel = made;
  return made;
}

/** Limewashed cellar wall, to be stretched: broad blotches and the trowel's unevenness. */
export function wallTexture(theme: Theme): HTMLCanvasElement {
  const kept = walls.get(theme);
  if (kept) return kept;
  const size = 420;
  const made = blankCanvas(size, size);
  const image = new ImageData(size, size);
  const [r, g, b, swing] = theme === 'light' ? [222, 213, 196, 34] : [46, 37, 29, 20];
  for (let y = 0; y < size; y++) {
    for (let x = 0; x < size; x++) {
      const broad = noise2(x * 0.011, y * 0.014, 61) - 0.5;
      const mid = noise2(x * 0.045 + broad * 3, y * 0.05, 67) - 0.5;
      const fine = lattice(x, y, 71) - 0.5;
      const lift = (broad * 0.9 + mid * 0.5 + fine * 0.16) * swing;
      const i = (y * size + x) * 4;
      image.data[i] = r + lift;
      image.data[i + 1] = g + lift;
      image.data[i + 2] = b + lift * 0.94;
      image.data[i + 3] = 255;
    }
  }
  context(made).putImageData(image, 0, 0);
  walls.set(theme, made);
  return made;
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
