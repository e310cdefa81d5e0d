import { mapOutline } from '../measure/map-outline.ts';
import { readPathData } from '../measure/path-data.ts';
import type { Outline } from '../shapes.ts';
import type { MotifEntry, MotifOption } from '../motif.ts';
import { cut, keep, over, pathLine, stencil, type Step } from './pen/stencil.ts';

/**
 * A motif as data: steps, one over the other, each SVG path data with y down, about 100 high.
 * `cut` is cut away and `keep` left as metal; with a `width`, what counts is a line so wide along the path.
 * `over` lies on top, with metal `web` wide around it. `when` says at which settings the step is drawn.
 */
export interface MotifDrawing {
  readonly id: string;
  readonly label: string;
  readonly options: readonly MotifOption[];
  readonly steps: readonly DrawnStep[];
}

interface DrawnStep {
  readonly cut?: string;
  readonly keep?: string;
  readonly over?: string;
  readonly web?: number;
  readonly width?: number;
  readonly end?: string;
  readonly when?: Readonly<Record<string, readonly number[] | undefined>>;
}

/** Throws RangeError at the first drawing of a step that cannot be read. */
export function readDrawing({ steps, ...about }: MotifDrawing): MotifEntry {
  return {
    ...about,
    draw: (set) =>
      stencil(
        steps
          .filter(({ when = {} }) => about.options.every((o) => when[o.id]?.includes(nearest(o, set[o.id])) ?? true))
          .map(drawStep),
      ),
  };
}

/** The setting that a value comes nearest to. */
function nearest(option: MotifOption, value = option.usual): number {
  return option.least + Math.round((value - option.least) / option.step) * option.step;
}

function drawStep(step: DrawnStep): Step | readonly Step[] {
  const { width, end, web } = step;
  if (step.over !== undefined) return over(outlineOf(step.over), web);
  const isCut = step.cut !== undefined;
  const path = outlineOf(step.cut ?? step.keep ?? '');
  if (width !== undefined) return pathLine(isCut, path, width, end === 'butt' ? 'butt' : 'round');
  return isCut ? cut(path) : keep(path);
}

function outlineOf(path: string): Outline {
  const read = readPathData(path);
  if ('problem' in read) throw new RangeError(`not a path: ${path.slice(0, 40)}`);
  return mapOutline(read.outline, (x, y) => ({ x, y: 0 - y }));
}
