import { createCache } from '../cache.ts';
import { mapOutline } from '../measure/map-outline.ts';
import { outlineBox } from '../measure/outline-box.ts';
import type { Outline } from '../shapes.ts';
import type { MotifEntry } from '../motif.ts';

/**
 * A motif's outline with its box centred on the origin and 1 high.
 * In: the motif, and what is set about it; what is absent, or out of its range, comes to the usual or the nearest.
 */
export function drawMotif(motif: MotifEntry, set: Readonly<Record<string, number>>): Outline {
  const options = Object.fromEntries(
    motif.options.map((o) => [o.id, Math.min(o.most, Math.max(o.least, set[o.id] ?? o.usual))]),
  );
  const key = JSON.stringify([motif.id, options]);
  return DRAWN.getOrMake(key, () => drawAfresh(motif, options));
}

/** Cached, since a plate is laid out afresh at each change and a drawing takes some ten milliseconds. */
const DRAWN = createCache<Outline>(100);

function drawAfresh(motif: MotifEntry, options: Readonly<Record<string, number>>): Outline {
  const outline = motif.draw(options);
  const box = outlineBox(outline);
  if (!box) return [];
  const by = 1 / (box.maxY - box.minY);
  const [cx, cy] = [(box.minX + box.maxX) / 2, (box.minY + box.maxY) / 2];
  return mapOutline(outline, (x, y) => ({ x: (x - cx) * by, y: (y - cy) * by }));
}
