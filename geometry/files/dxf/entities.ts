import type { Point, Vertex } from '../../shapes.ts';
import { entityHead } from './frame.ts';
import type { TagWriter } from './tags.ts';

/** The two kinds of entities that cut files hold: DXF reference, section ENTITIES. */

export function writeCircle(tags: TagWriter, handle: string, layer: string, centre: Point, radiusMm: number): void {
  tags.text(0, 'CIRCLE');
  tags.add(entityHead(handle, layer));
  tags.text(100, 'AcDbCircle');
  tags.point3(centre.x, centre.y);
  tags.length(40, radiusMm);
}

/** One line of text, its baseline from the left; style Standard. */
export function writeText(
  tags: TagWriter,
  handle: string,
  layer: string,
  { at, heightMm, text }: { readonly at: Point; readonly heightMm: number; readonly text: string },
): void {
  tags.text(0, 'TEXT');
  tags.add(entityHead(handle, layer));
  tags.text(100, 'AcDbText');
  tags.point3(at.x, at.y);
  tags.length(40, heightMm);
  tags.text(1, text);
  tags.text(100, 'AcDbText');
}

/** Lines and arcs with bulges; closed, or from the first vertex to the last. */
export function writePolyline(
  tags: TagWriter,
  handle: string,
  layer: string,
  vertices: readonly Vertex[],
  closed: boolean,
): void {
  tags.text(0, 'LWPOLYLINE');
  tags.add(entityHead(handle, layer));
  tags.text(100, 'AcDbPolyline');
  tags.whole(90, vertices.length);
  tags.whole(70, closed ? 1 : 0);
  for (const { x, y, bulge } of vertices) {
    tags.point(x, y);
    if (bulge !== 0) tags.bulge(bulge);
  }
}
