import type { BoxContainer } from './container.ts';

/**
 * No more discs of radius r than this lie in a box, however they are laid: with w and h the sides of the rectangle of
 * their centres and d their diameter, n <= 2/√3 wh/d² + (w + h)/d + 1 (H. Groemer, Über die Einlagerung von Kreisen in
 * einen konvexen Bereich, Math. Zeitschrift 73, 1960; in this form N. Oler, Acta Mathematica 105, 1961).
 */
export function countBound({ minX, minY, maxX, maxY }: BoxContainer, r: number): number {
  const d = 2 * r;
  const [w, h] = [maxX - minX - d, maxY - minY - d];
  if (!(r > 0) || w < 0 || h < 0) return 0;
  return Math.floor((2 / Math.sqrt(3)) * (w / d) * (h / d) + (w + h) / d + 1);
}
