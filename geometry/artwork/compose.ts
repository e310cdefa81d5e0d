import { evenOdd, ringsOf, strokeArea, subtract, union } from '../adapters/clipper.ts';
import { fitCurves } from '../measure/fit-curves.ts';
import { flattenLines } from '../measure/flatten-lines.ts';
import { flattenOutline } from '../measure/flatten.ts';
import { outlineBox } from '../measure/outline-box.ts';
import { signedAreaMm2 } from '../measure/ring.ts';
import { doWithin } from '../measure/counted-work.ts';
import type { Region, Ring } from '../shapes.ts';
import { ownCurves } from './own-curves.ts';
import { finish } from './finish.ts';
import type { Composed, Matrix, Painted, Tone } from './painted.ts';
import { placed, through } from './through.ts';
import { ARTWORK_FIT_MM, ARTWORK_FLATTEN_MM, ARTWORK_SPECK_MM2, ROUND_JOIN_ERROR_MM } from '../units.ts';

/**
 * Everything a drawing paints, one over the other, to what is cut away.
 *
 * In: shapes in the order they are painted, and which tone is cut. Out: the path of an artwork element, or why there is
 * none. The work is done as if the drawing were WORK_MM high, so that no edge is missed by more than ARTWORK_FLATTEN_MM there.
 *
 * 1. What is painted in the tone that is cut is added, what is painted in the other is taken away again.
 * 2. Where only fills are painted that neither cross nor cover each other, their own curves are kept.
 * 3. Otherwise smooth curves are fitted to the outlines that came of it.
 */
export function compose(shapes: readonly Painted[], cut: Tone): Composed {
  const work = workFrame(shapes);
  if (work === undefined) return { trouble: shapes.length === 0 ? 'nothing' : 'flat' };
  const scale = work[0];
  const scaled = shapes.map((s): Painted => ({ ...s, matrix: placed(work, s.matrix) }));
  if (countPoints(scaled) > MOST_POINTS) return { trouble: 'tooDetailed' };
  return doWithin(MOST_STEPS, () => composed(scaled, cut, scale)) ?? { trouble: 'tooDetailed' };
}

function composed(scaled: readonly Painted[], cut: Tone, scale: number): Composed {
  const { added: area } = painted(scaled.flatMap(layersOf), cut);
  const shown = area.filter((r) => signedAreaMm2(r.outer) > ARTWORK_SPECK_MM2);
  if (shown.length === 0) return { trouble: 'nothing' };
  const own = ownCurves(scaled, cut, shown, ARTWORK_FLATTEN_MM);
  const specks = area.length - shown.length;
  if (ringsOf(shown).reduce((n, ring) => n + ring.length, 0) > MOST_POINTS) return { trouble: 'tooDetailed' };
  if (own) {
    const done = finish(own, shown.length, specks, scale);
    if (!('trouble' in done)) return done;
  }
  const rings = ringsOf(shown);
  for (const error of ARTWORK_FIT_MM) {
    const done = finish(fitCurves(rings, error, CORNER_DEG), shown.length, specks, scale);
    if (!('trouble' in done)) return done;
  }
  return { trouble: 'tooDetailed' };
}

const WORK_MM = 600;
/** Flattened to ARTWORK_FLATTEN_MM, curves of 0.3 mm radius and more turn by less at each point. */
const CORNER_DEG = 30;
const MOST_POINTS = 150_000;
/** Some seconds of work (measure/counted-work.ts); the drawings that ship with tests need a hundredth. */
const MOST_STEPS = 6_000_000;

/** What layers do to what lies below them: the area taken away, and what is added after that. */
interface Effect {
  readonly taken: readonly Ring[];
  readonly added: readonly Region[];
}

/**
 * All layers over each other. Two halves are worked out and then put together, so that each shape is united a few times
 * and not once for every later one: area less A.taken, with A.added, less B.taken, with B.added.
 */
function painted(layers: readonly Layer[], cut: Tone): Effect {
  const [first] = layers;
  if (!first) return { taken: [], added: [] };
  if (layers.every(({ tone }) => tone === first.tone)) {
    const rings = layers.flatMap(({ regions }) => ringsOf(regions));
    const all = layers.length === 1 ? first.regions : union(rings);
    return first.tone === cut ? { taken: [], added: all } : { taken: ringsOf(all), added: [] };
  }
  const middle = layers.length >> 1;
  const [below, above] = [painted(layers.slice(0, middle), cut), painted(layers.slice(middle), cut)];
  const kept = above.taken.length === 0 ? below.added : subtract(below.added, above.taken);
  return {
    taken: ringsOf(joined(below.taken, above.taken)),
    added: joined(ringsOf(kept), ringsOf(above.added)),
  };
}

function joined(a: readonly Ring[], b: readonly Ring[]): Region[] {
  return union([...a, ...b]);
}

interface Layer {
  readonly tone: Tone;
  readonly regions: readonly Region[];
}

/** From the drawing's units, y down, to WORK_MM about its middle, y up. */
function workFrame(shapes: readonly Painted[]): Matrix | undefined {
  let [left, right, top, foot] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const s of shapes) {
    const box = outlineBox(through(s.outline, s.matrix));
    if (!box) continue;
    const reach = s.stroke ? (s.stroke.widthMm / 2) * Math.sqrt(Math.abs(determinant(s.matrix))) : 0;
    [left, right] = [Math.min(left, box.minX - reach), Math.max(right, box.maxX + reach)];
    [top, foot] = [Math.min(top, box.minY - reach), Math.max(foot, box.maxY + reach)];
  }
  const size = Math.max(right - left, foot - top);
  if (!(size > 0) || !Number.isFinite(size)) return undefined;
  const by = WORK_MM / size;
  return [by, 0, 0, -by, (-by * (left + right)) / 2, (by * (top + foot)) / 2];
}

function layersOf(shape: Painted): Layer[] {
  const layers: Layer[] = [];
  if (shape.fill) {
    const rings = flattenOutline(through(shape.outline, shape.matrix), ARTWORK_FLATTEN_MM);
    layers.push({ tone: shape.fill.tone, regions: shape.fill.rule === 'evenodd' ? evenOdd(rings) : union(rings) });
  }
  if (shape.stroke && shape.stroke.widthMm > 0) layers.push({ tone: shape.stroke.tone, regions: strokeOf(shape) });
  return layers;
}

/** Stroked in its own units, so that a transform that squeezes squeezes the stroke too; enlarged for the grid. */
function strokeOf(shape: Painted): Region[] {
  const by = Math.sqrt(Math.abs(determinant(shape.matrix)));
  const stroke = shape.stroke!;
  if (!(by > 0)) return [];
  const [a, b, c, d, e, f] = shape.matrix;
  const enlarged = through(shape.outline, [by, 0, 0, by, 0, 0]);
  const area = strokeArea(flattenLines(enlarged, ARTWORK_FLATTEN_MM), { ...stroke, widthMm: stroke.widthMm * by });
  const back: Matrix = [a / by, b / by, c / by, d / by, e, f];
  return union(
    ringsOf(area).map((ring) =>
      orient(
        ring.map((p) => at(back, p)),
        determinant(back),
      ),
    ),
  );
}

function orient<T>(ring: T[], det: number): T[] {
  return det < 0 ? ring.reverse() : ring;
}

function at([a, b, c, d, e, f]: Matrix, p: { readonly x: number; readonly y: number }): { x: number; y: number } {
  return { x: a * p.x + c * p.y + e, y: b * p.x + d * p.y + f };
}

function determinant([a, b, c, d]: Matrix): number {
  return a * d - b * c;
}

/** Points the shapes come to when flattened, stroked with round ends and corners where they have such. */
function countPoints(shapes: readonly Painted[]): number {
  let count = 0;
  for (const s of shapes) {
    const lines = flattenLines(through(s.outline, s.matrix), ARTWORK_FLATTEN_MM);
    for (const { points } of lines) count += points.length;
    if (s.stroke) count += lines.length * roundPoints(s.stroke.widthMm, s.matrix);
    if (count > MOST_POINTS) break;
  }
  return count;
}

/** Points of a full round of a stroke's end (sagitta of a chord). */
function roundPoints(width: number, matrix: Matrix): number {
  const radius = (width / 2) * Math.sqrt(Math.abs(determinant(matrix)));
  return radius > ROUND_JOIN_ERROR_MM ? Math.ceil(Math.PI / Math.acos(1 - ROUND_JOIN_ERROR_MM / radius)) : 4;
}
