import type { Region, Ring } from '../../../geometry/shapes.ts';

/** What a path is drawn on: Path2D, a canvas context, or a counter in a test. */
export interface PathSink {
  moveTo(x: number, y: number): void;
  lineTo(x: number, y: number): void;
  closePath(): void;
}

/** One closed subpath; a ring of fewer than three points encloses nothing and is left out. */
export function traceRing(sink: PathSink, ring: Ring): void {
  const first = ring[0];
  if (!first || ring.length < 3) return;
  sink.moveTo(first.x, first.y);
  for (let i = 1; i < ring.length; i++) {
    const p = ring[i];
    if (p) sink.lineTo(p.x, p.y);
  }
  sink.closePath();
}

/** Outer rings and holes in one path, millimetres, y up; to be filled even-odd. */
export function traceRegions(sink: PathSink, regions: Iterable<Region>): void {
  for (const region of regions) {
    traceRing(sink, region.outer);
    for (const hole of region.holes) traceRing(sink, hole);
  }
}
