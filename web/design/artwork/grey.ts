import { ROUNDING } from '../../../geometry/units.ts';

/** Lightness of red, green, blue and alpha pixels on white, 0 to 255: luma of ITU-R BT.709. */
export function greyOf(rgba: Uint8ClampedArray): Uint8Array {
  const grey = new Uint8Array(rgba.length / 4);
  for (let i = 0; i < grey.length; i++) {
    const luma = 0.2126 * rgba[4 * i]! + 0.7152 * rgba[4 * i + 1]! + 0.0722 * rgba[4 * i + 2]!;
    const alpha = rgba[4 * i + 3]! / 255;
    grey[i] = Math.round(255 - alpha * (255 - luma));
  }
  return grey;
}

/**
 * The threshold between the two heaps of dark and light that most pictures have (N. Otsu, "A Threshold Selection Method
 * from Gray-Level Histograms", 1979), 0 to 1; a half for a picture of one grey.
 */
export function usualThreshold(grey: Uint8Array): number {
  const count = new Array<number>(256).fill(0);
  for (const v of grey) count[v]! += 1;
  const whole = count.reduce((sum, n, v) => sum + n * v, 0);
  let [below, sumBelow, best, at, last] = [0, 0, 0, 127, 127];
  for (let v = 0; v < 255; v++) {
    below += count[v]!;
    sumBelow += v * count[v]!;
    const above = grey.length - below;
    if (below === 0 || above === 0) continue;
    const apart = sumBelow / below - (whole - sumBelow) / above;
    const between = below * above * apart * apart;
    if (between > best * (1 + ROUNDING)) [best, at, last] = [between, v, v];
    else if (between >= best * (1 - ROUNDING)) last = v;
  }
  return (at + last + 1) / 2 / 255;
}
