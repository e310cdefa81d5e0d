import type { Point, Vertex } from '../shapes.ts';
import type { RunFit } from './arc-run.ts';
import { fitRun } from './arc-run.ts';

/** Cuts looked at for each place: windows are seldom wider, and the work grows with the square. */
const WIDEST_WINDOW = 24;

export interface SplitRun {
  /** One vertex for each line or arc; the run's last point is left to the run that follows. */
  readonly vertices: readonly Vertex[];
  readonly squaredError: number;
}

/** An open run of points to the fewest arcs through some of them, each within maxErrorMm; of those the best fitting. */
export function splitRun(points: readonly Point[], maxErrorMm: number): SplitRun {
  const last = points.length - 1;
  const fit = (from: number, to: number) => fitRun(points, from, to, maxErrorMm);
  const forward = [0];
  while (forward[forward.length - 1]! < last) forward.push(farthest(forward[forward.length - 1]!, last, 1, fit));
  const backward = [last];
  while (backward[0]! > 0) backward.unshift(farthest(backward[0]!, 0, -1, (a, b) => fit(b, a)));
  // The two counts differ only where an arc covers a run but not a part of it; the way from the front then stands.
  const windows = forward.map((latest, k) => {
    const earliest = backward.length === forward.length ? Math.min(backward[k]!, latest) : latest;
    return { earliest: Math.max(earliest, latest - WIDEST_WINDOW), latest };
  });
  return bestCuts(points, windows, fit);
}

type Fit = (from: number, to: number) => RunFit | undefined;

/** Farthest index that one arc reaches, by doubling and then halving; the next index is always reached. */
function farthest(from: number, end: number, way: 1 | -1, fit: Fit): number {
  const room = Math.abs(end - from);
  let reached = 1;
  let failed = room + 1;
  for (let step = 2; reached < room; step = Math.min(room, reached * 2)) {
    if (fit(from, from + way * step)) reached = step;
    else {
      failed = step;
      break;
    }
  }
  while (failed - reached > 1) {
    const middle = (reached + failed) >> 1;
    if (fit(from, from + way * middle)) reached = middle;
    else failed = middle;
  }
  return from + way * reached;
}

interface Window {
  readonly earliest: number;
  readonly latest: number;
}

interface Cut {
  readonly at: number;
  readonly squaredError: number;
  readonly bulge: number;
  readonly before: Cut | undefined;
}

/** Shortest path through the windows: least sum of squared errors for this count of arcs. */
function bestCuts(points: readonly Point[], windows: readonly Window[], fit: Fit): SplitRun {
  let cuts: Cut[] = [{ at: 0, squaredError: 0, bulge: 0, before: undefined }];
  for (const { earliest, latest } of windows.slice(1)) {
    const next: Cut[] = [];
    for (let at = earliest; at <= latest; at++) {
      let best: Cut | undefined;
      for (const before of cuts) {
        if (before.at >= at) continue;
        const run = fit(before.at, at);
        if (!run) continue;
        const squaredError = before.squaredError + run.errorMm * run.errorMm;
        if (!best || squaredError < best.squaredError) best = { at, squaredError, bulge: run.bulge, before };
      }
      if (best) next.push(best);
    }
    cuts = next;
  }
  const end = cuts[cuts.length - 1]!;
  const vertices: Vertex[] = [];
  for (let cut: Cut | undefined = end; cut?.before; cut = cut.before) {
    const { x, y } = points[cut.before.at]!;
    vertices.unshift({ x, y, bulge: cut.bulge });
  }
  return { vertices, squaredError: end.squaredError };
}
