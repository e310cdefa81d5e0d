import { lattice, noise2 } from './seeded.ts';

export const STEEL_PX = 768;

/** Streaks of brushed sheet about a middle grey, RGBA row by row, in a square of so many pixels. Pure as the oak is. */
export function steelPixels(sizePx: number): Uint8ClampedArray<ArrayBuffer> {
  const rgba = new Uint8ClampedArray(sizePx * sizePx * 4);
  for (let y = 0; y < sizePx; y++) {
    const row = lattice(y, 1, 7) - 0.5;
    for (let x = 0; x < sizePx; x++) {
      const streak = noise2(x * 0.012, y * 0.9, 3) * 0.6 + noise2(x * 0.05, y, 5) * 0.4 - 0.5;
      const level = 128 + streak * 128 + row * 34;
      const i = (y * sizePx + x) * 4;
      rgba[i] = level;
      rgba[i + 1] = level;
      rgba[i + 2] = level;
      rgba[i + 3] = 255;
    }
  }
  return rgba;
}
