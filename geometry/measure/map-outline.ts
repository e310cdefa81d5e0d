import type { Outline, PathCommand, Point } from '../shapes.ts';

/** The outline with every point of it, ends and handles, sent through `to`; right for moves that keep lines straight. */
export function mapOutline(outline: Outline, to: (x: number, y: number) => Point): Outline {
  return outline.map((c): PathCommand => {
    if (c.type === 'Z') return c;
    const { x, y } = to(c.x, c.y);
    if (c.type === 'M' || c.type === 'L') return { type: c.type, x, y };
    const { x: x1, y: y1 } = to(c.x1, c.y1);
    if (c.type === 'Q') return { type: 'Q', x1, y1, x, y };
    const { x: x2, y: y2 } = to(c.x2, c.y2);
    return { type: 'C', x1, y1, x2, y2, x, y };
  });
}
