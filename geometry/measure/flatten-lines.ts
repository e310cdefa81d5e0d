import type { Outline, Point } from '../shapes.ts';

/** A line of points, as it was drawn: its ends joined or not. */
export interface Line {
  readonly points: readonly Point[];
  readonly closed: boolean;
}

/**
 * The lines of an outline as points no farther than maxError from their curves, open ones left open: what a stroke
 * follows. Steps are counted as in flatten.ts. A subpath of one point is kept: a round stroke makes a dot of it.
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
    else {
      const [x1, y1, x2, y2] =
        c.type === 'C'
          ? [c.x1, c.y1, c.x2, c.y2]
          : [
              from.x + (2 / 3) * (c.x1 - from.x),
              from.y + (2 / 3) * (c.y1 - from.y),
              c.x + (2 / 3) * (c.x1 - c.x),
              c.y + (2 / 3) * (c.y1 - c.y),
            ];
      const bend = Math.max(
        Math.hypot(from.x - 2 * x1 + x2, from.y - 2 * y1 + y2),
        Math.hypot(x1 - 2 * x2 + c.x, y1 - 2 * y2 + c.y),
      );
      const n = Math.max(1, Math.ceil(Math.sqrt((0.75 * bend) / maxError)));
      for (let i = 1; i <= n; i++) {
        const t = i / n;
        const s = 1 - t;
        const [a, b, d, e] = [s * s * s, 3 * s * s * t, 3 * s * t * t, t * t * t];
        points.push({ x: a * from.x + b * x1 + d * x2 + e * c.x, y: a * from.y + b * y1 + d * y2 + e * c.y });
      }
    }
  }
  end(false);
  return lines;
}
