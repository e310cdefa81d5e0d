import { arcOf, sides } from '../../measure/arc.ts';
import type { Contour, Vertex } from '../../shapes.ts';
import type { CutPlan } from '../../cutplan/cut-plan.ts';
import { fileNumber } from '../numbers.ts';

/** A contour as path data with A commands; y down, as SVG and the spec sheet have it. */
export function contourPath(contour: Contour): string {
  if (contour.length === 0) return '';
  const all = sides(contour);
  // Z draws the last side where it is straight.
  const parts = all.map(([a, b], i) => (i === all.length - 1 && !arcOf(a, b) ? '' : sidePath(a, b)));
  return `${start(contour)}${parts.join('')}Z`;
}

export function openingsPath({ contours }: Pick<CutPlan, 'contours'>): string {
  return contours.map((cut) => (cut.kind === 'opening' ? contourPath(cut.contour) : '')).join('');
}

/** The same as contourPath for an open run. */
export function runPath(run: readonly Vertex[]): string {
  return `${start(run)}${run
    .slice(1)
    .map((b, i) => sidePath(run[i] ?? b, b))
    .join('')}`;
}

function start([first]: readonly Vertex[]): string {
  return first ? `M${n(first.x)} ${n(-first.y)}` : '';
}

function sidePath(a: Vertex, b: Vertex): string {
  const arc = arcOf(a, b);
  if (!arc) return `L${n(b.x)} ${n(-b.y)}`;
  const r = n(arc.radiusMm);
  const large = Math.abs(arc.sweepRad) > Math.PI ? 1 : 0;
  // With y turned down, counter-clockwise is the negative direction: sweep flag 0 (SVG 2, path data, elliptical arc).
  return `A${r} ${r} 0 ${large} ${arc.sweepRad > 0 ? 0 : 1} ${n(b.x)} ${n(-b.y)}`;
}

function n(value: number): string {
  return fileNumber(value, 'coordinate');
}
