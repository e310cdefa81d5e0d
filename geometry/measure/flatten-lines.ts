import type { Outline, Point } from '../shapes.ts';
import { addCurve } from './flatten.ts';

/** A line of points, as it was drawn: its ends joined or not. */
export interface Line {
  readonly points: readonly Point[];
  readonly closed: boolean;
}

/**
 * The lines of an outline as points no farther than maxError from their curves, open ones left open: what a stroke
 * follows. A subpath of one point is kept: a round stroke makes a dot of it.
 */
export function flattenLines(outline: Outline, maxError: number): Line[] {
  const lines: Line[] = [];
  let points: Point[] = [];
  let start: Point = { x: 0, y: 0 };
  const end = (closed: boolean): void => {
    if (points.length > 0) lines.push({ points, closed });
    points = [];
  };
  for (const c of outline) {
    if (c.type === 'Z') {
      end(true);
      continue;
    }
    if (c.type === 'M') {
      end(false);
      start = { x: c.x, y: c.y };
      points = [start];
      continue;
    }
    // After Z a subpath may go on from where the last one began (SVG 2, 9.3.4).
    if (points.length === 0) points = [start];
    const from = points.at(-1)!;
    if (c.type === 'L') points.push({ x: c.x, y: c.y });
    else addCurve(points, from, c, maxError);
  }
  end(false);
  return lines;
}
