import { areaAbove } from '../adapters/contour.ts';
import { fitCurves } from '../measure/fit-curves.ts';
import { signedAreaMm2 } from '../measure/ring.ts';
import type { Ring } from '../shapes.ts';
import { blurred } from './blur.ts';
import { finish } from './finish.ts';
import type { Grey } from './grey.ts';
import type { Composed, Tone } from './painted.ts';

export interface TraceWish {
  /** 0 to 1: what is darker than this share of white counts as dark. */
  readonly threshold: number;
  /** 0 keeps every edge of the picture, 1 rounds off all but large forms. */
  readonly smoothing: number;
  readonly cut: Tone;
}

/**
 * The dark (or light) area of a picture as what is cut away, with smooth edges.
 * In: greys of at most some 1600 pixels a side. Out: the path of an artwork element, or why there is none.
 *
 * 1. The picture is blurred a little, so that the steps of its pixels are no edges of the drawing.
 * 2. Marching squares find where it crosses the threshold.
 * 3. Specks, dark or light, are left out and counted.
 * 4. Curves are fitted; corners are where the line turns sharply within a few pixels.
 */
export function trace(picture: Grey, { threshold, smoothing, cut }: TraceWish): Composed {
  const { width, height } = picture;
  if (width < 2 || height < 2) return { trouble: 'flat' };
  const size = Math.max(width, height);
  // All in pixels of this picture; smoothing means the same on a large picture as on a small one.
  const sigma = LEAST_BLUR + smoothing * smoothing * size * MOST_BLUR;
  const level = 255 * Math.min(0.98, Math.max(0.02, threshold));
  const grey = blurred(picture, sigma);
  const dark = cut === 'dark';
  const found = areaAbove(
    grey.map((v) => (dark ? level - v : v - level)),
    width,
    height,
    0,
  );
  const speck = Math.max(LEAST_SPECK_PX, (size * SPECK * (1 + 2 * smoothing)) ** 2);
  const large = (ring: Ring): boolean => Math.abs(signedAreaMm2(ring)) >= speck;
  const shown = found.filter((r) => large(r.outer));
  if (shown.length === 0) return { trouble: 'nothing' };
  const rings = shown.flatMap((r) => [up(r.outer, true), ...r.holes.filter(large).map((h) => up(h, false))]);
  const specks = found.length - shown.length + shown.reduce((n, r) => n + r.holes.filter((h) => !large(h)).length, 0);
  if (rings.reduce((n, r) => n + r.length, 0) > MOST_POINTS) return { trouble: 'tooDetailed' };
  const around = CORNER_PX + sigma;
  for (const times of [1, 3]) {
    const error = (FIT_PX + smoothing * size * 0.0012) * times;
    const done = finish(fitCurves(rings, error, CORNER_DEG, around), shown.length, specks, 1);
    if (!('trouble' in done) || done.trouble !== 'tooDetailed') return done;
  }
  return { trouble: 'tooDetailed' };
}

/** Standard deviation of the blur: always a little, at most so much of the picture's longer side. */
const LEAST_BLUR = 0.7;
const MOST_BLUR = 0.008;
/** A speck is smaller than a square of this share of the longer side. */
const SPECK = 0.006;
const LEAST_SPECK_PX = 6;
/** Half the width of a pixel's step. */
const FIT_PX = 0.45;
const CORNER_PX = 2.5;
const CORNER_DEG = 50;
const MOST_POINTS = 150_000;

/** y up; outer rings counter-clockwise, holes clockwise. */
function up(ring: Ring, outer: boolean): Ring {
  const turned = ring.map((p) => ({ x: p.x, y: -p.y }));
  return signedAreaMm2(turned) > 0 === outer ? turned : turned.reverse();
}
