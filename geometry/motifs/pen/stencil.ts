import { offset, ringsOf, strokeArea, subtract, union } from '../../adapters/clipper.ts';
import { fitCurves } from '../../measure/fit-curves.ts';
import { flattenLines } from '../../measure/flatten-lines.ts';
import { flattenOutline } from '../../measure/flatten.ts';
import { signedAreaMm2 } from '../../measure/ring.ts';
import type { Outline, Region } from '../../shapes.ts';
import { MOTIF_FIT, MOTIF_FLATTEN } from '../../units.ts';
import { type Knot, openSpline } from './spline.ts';

/**
 * Motifs are drawn about 100 high: every number below is a hundredth of the height. Bars of metal and gaps between
 * parts are WEB wide, so that a motif 40 mm high has webs of 1.8 mm.
 */
const WEB = 4.5;

/** One step of a drawing: area cut away, or metal laid over what was cut. */
export interface Step {
  readonly cut: boolean;
  readonly area: readonly Region[];
}

/** Turns sharper than this are corners. Flattening to MOTIF_FLATTEN turns less on any radius of 0.5 or more. */
const CORNER_DEG = 24;

export function cut(...outlines: readonly Outline[]): Step {
  return { cut: true, area: areaOf(outlines) };
}

/** Metal of the given form. */
export function keep(...outlines: readonly Outline[]): Step {
  return { cut: false, area: areaOf(outlines) };
}

/** A part that lies over those before it: a web of metal all round, then the part. */
export function over(outline: Outline, web = WEB): readonly Step[] {
  const area = areaOf([outline]);
  return [
    { cut: false, area: offset(area, web, MOTIF_FLATTEN) },
    { cut: true, area },
  ];
}

/** Several outlines that make one part, over those before it. */
export function overAll(outlines: readonly Outline[], web = WEB): readonly Step[] {
  const area = areaOf(outlines);
  return [
    { cut: false, area: offset(area, web, MOTIF_FLATTEN) },
    { cut: true, area },
  ];
}

type End = 'butt' | 'round';

/** A line so wide, cut away. */
export function cutLine(knots: readonly Knot[], width: number, end: End = 'round'): Step {
  return { cut: true, area: lineArea(knots, width, end) };
}

/** A path so wide, cut away or left as metal. */
export function pathLine(isCut: boolean, path: Outline, width: number, end: End = 'round'): Step {
  return { cut: isCut, area: strokeOf(path, width, end) };
}

/** A line of metal, one web wide unless said. */
export function keepLine(knots: readonly Knot[], width = WEB, end: End = 'round'): Step {
  return { cut: false, area: lineArea(knots, width, end) };
}

/** A line that crosses over what was drawn before. */
export function overLine(knots: readonly Knot[], width: number, end: End = 'round', web = WEB): readonly Step[] {
  return [keepLine(knots, width + 2 * web, end), cutLine(knots, width, end)];
}

/**
 * What is cut away after all steps, one over the other, as smooth outlines that neither cross nor touch.
 * Metal narrower than `thinnestMetal` and openings narrower than `thinnestCut`, in hundredths of the finished drawing's
 * height, are rounded away; so are openings of no size.
 */
export function stencil(
  steps: readonly (Step | readonly Step[])[],
  thinnestMetal = THINNEST_METAL,
  thinnestCut = THINNEST_CUT,
): Outline {
  let area: readonly Region[] = [];
  for (const step of steps.flat()) {
    area = step.cut ? union(ringsOf([...area, ...step.area])) : subtract(area, ringsOf(step.area));
  }
  const ys = area.flatMap((r) => r.outer.map((p) => p.y));
  const hundredth = (Math.max(...ys) - Math.min(...ys)) / 100;
  const [m, c] = [(thinnestMetal / 2) * hundredth, (thinnestCut / 2) * hundredth];
  const clean = offset(offset(offset(area, m, MOTIF_FLATTEN), -m - c, MOTIF_FLATTEN), c, MOTIF_FLATTEN);
  const kept = clean.filter((r) => signedAreaMm2(r.outer) > LEAST_AREA * hundredth * hundredth);
  return fitCurves(ringsOf(kept), MOTIF_FIT, CORNER_DEG);
}

/** 0.85 mm and 0.5 mm on a motif 25 mm high: what 1.5 mm steel still takes under a laser. */
const THINNEST_METAL = 3.6;
const THINNEST_CUT = 2;
/** An opening smaller than this is a crumb between two parts, not part of the drawing. */
const LEAST_AREA = 8;

function areaOf(outlines: readonly Outline[]): Region[] {
  return union(outlines.flatMap((o) => flattenOutline(o, MOTIF_FLATTEN)));
}

function lineArea(knots: readonly Knot[], width: number, end: End): Region[] {
  return strokeOf(openSpline(knots), width, end);
}

function strokeOf(path: Outline, width: number, end: End): Region[] {
  return strokeArea(flattenLines(path, MOTIF_FLATTEN), { widthMm: width, cap: end, join: 'round' });
}
