import { outlineBox } from '../measure/outline-box.ts';
import type { Outline, PathCommand } from '../shapes.ts';
import type { MotifEntry } from './motif.ts';

/**
 * A motif's outline with its box centred on the origin and 1 high.
 * In: the motif, and what is set about it; what is absent, or out of its range, comes to the usual or the nearest.
 */
export function drawMotif(motif: MotifEntry, set: Readonly<Record<string, number>>): Outline {
  const options = Object.fromEntries(
    motif.options.map((o) => [o.id, Math.min(o.most, Math.max(o.least, set[o.id] ?? o.usual))]),
  );
  const key = JSON.stringify([motif.id, options]);
  const known = drawn.get(key);
  if (known) return known;
  const outline = drawAfresh(motif, options);
  if (drawn.size >= MOST_DRAWN) drawn.clear();
  drawn.set(key, outline);
  return outline;
}

/** Remembered, since a plate is laid out afresh at each change and a drawing takes some ten milliseconds. */
const drawn = new Map<string, Outline>();
const MOST_DRAWN = 200;

function drawAfresh(motif: MotifEntry, options: Readonly<Record<string, number>>): Outline {
  const outline = motif.draw(options);
  const box = outlineBox(outline);
  if (!box) return [];
  const by = 1 / (box.maxY - box.minY);
  const [cx, cy] = [(box.minX + box.maxX) / 2, (box.minY + box.maxY) / 2];
  return outline.map((c) =>
    moved(
      c,
      (x) => (x - cx) * by,
      (y) => (y - cy) * by,
    ),
  );
}

function moved(c: PathCommand, mx: (x: number) => number, my: (y: number) => number): PathCommand {
  switch (c.type) {
    case 'Z':
      return c;
    case 'Q':
      return { type: 'Q', x1: mx(c.x1), y1: my(c.y1), x: mx(c.x), y: my(c.y) };
    case 'C':
      return { type: 'C', x1: mx(c.x1), y1: my(c.y1), x2: mx(c.x2), y2: my(c.y2), x: mx(c.x), y: my(c.y) };
    default:
      return { type: c.type, x: mx(c.x), y: my(c.y) };
  }
}
