import { arcOf, sides } from '../measure/arc.ts';
import type { Contour } from '../shapes.ts';
import { fileNumber } from './numbers.ts';

/** A contour as path data with A commands; y down, as SVG and the spec sheet have it. */
export function contourPath(contour: Contour): string {
  const n = (value: number) => fileNumber(value, 'coordinate');
  const first = contour[0];
  if (!first) return '';
  const parts = [`M${n(first.x)} ${n(-first.y)}`];
  const all = sides(contour);
  all.forEach(([a, b], i) => {
    const arc = arcOf(a, b);
    if (arc) {
      const r = n(arc.radiusMm);
      const large = Math.abs(arc.sweepRad) > Math.PI ? 1 : 0;
      // With y turned down, counter-clockwise is the negative direction: sweep flag 0 (SVG 2, path data, elliptical arc).
      parts.push(`A${r} ${r} 0 ${large} ${arc.sweepRad > 0 ? 0 : 1} ${n(b.x)} ${n(-b.y)}`);
    } else if (i < all.length - 1) parts.push(`L${n(b.x)} ${n(-b.y)}`);
  });
  return `${parts.join('')}Z`;
}
