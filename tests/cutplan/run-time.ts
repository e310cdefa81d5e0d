import type { Motion } from '../../geometry/cutplan/cost/feed.ts';
import { sampleRun } from '../../geometry/cutplan/contour-walk.ts';
import type { Run } from '../../geometry/cutplan/sheet-plan.ts';
import { arcOf, pointOnArc } from '../../geometry/measure/arc.ts';
import type { Vertex } from '../../geometry/shapes.ts';

/**
 * Time over a straight way from rest to rest by the closed formula of a trapezoid of speed over time, or of a triangle
 * where the way is too short for the feed (any textbook of motion control): s / v + v / a, or 2 sqrt(s / a).
 */
export function straightS(mm: number, { feedMmMin, accelerationMmS2: a }: Motion): number {
  const v = feedMmMin / 60;
  return mm >= (v * v) / a ? mm / v + v / a : 2 * Math.sqrt(mm / a);
}

/** Each line and arc in so many equal parts that run on as one. */
export function inParts(run: Run, parts: number): Run {
  const out: Vertex[] = [];
  for (let i = 0; i + 1 < run.length; i++) {
    const [a, b] = [run[i]!, run[i + 1]!];
    const arc = arcOf(a, b);
    for (let k = 0; k < parts; k++) {
      const share = k / parts;
      const at = arc ? pointOnArc(arc, share) : { x: a.x + (b.x - a.x) * share, y: a.y + (b.y - a.y) * share };
      out.push({ x: at.x, y: at.y, bulge: arc ? Math.tan(arc.sweepRad / 4 / parts) : 0 });
    }
  }
  return [...out, run.at(-1)!];
}

/** Without arcs: points no farther apart than the step. */
export function inChords(run: Run, stepMm: number): Run {
  return sampleRun(run, stepMm).map((p) => ({ ...p, bulge: 0 }));
}
