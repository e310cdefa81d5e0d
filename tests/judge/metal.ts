import BufferOp from 'jsts/org/locationtech/jts/operation/buffer/BufferOp.js';
import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
import GeometryFactory from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
import OverlayOp from 'jsts/org/locationtech/jts/operation/overlay/OverlayOp.js';
import UnaryUnionOp from 'jsts/org/locationtech/jts/operation/union/UnaryUnionOp.js';
import type { Region, Ring } from '../../geometry/shapes.ts';

/** Metal around openings, judged by JTS (the jsts port), which shares no code with the maker. */
export interface Metal {
  /** Connected pieces; specks under 0.0004 mm2, crumbs of the judge's own arithmetic, left out. */
  readonly pieces: number;
  /** Connected pieces after shrinking; specks under 0.0004 mm2 left out. */
  pieceCountShrunk(byMm: number): number;
  /** The same metal with the given bar gone: what it left standing of the openings drawn there is cut after all. */
  without(bar: Ring, drawn: readonly Region[]): Metal;
}

interface Geometry {
  getArea(): number;
  getNumGeometries(): number;
  getGeometryN(i: number): Geometry;
}

const SPECK_MM2 = 0.0004;
const factory = new GeometryFactory();

/** A square of metal with so much room around the openings, less the openings. */
export function metalAround(openings: readonly Region[], roomMm: number): Metal {
  const points = openings.flatMap((o) => [...o.outer]);
  const [xs, ys] = [points.map((p) => p.x), points.map((p) => p.y)];
  const [x0, x1] = [Math.min(...xs) - roomMm, Math.max(...xs) + roomMm];
  const [y0, y1] = [Math.min(...ys) - roomMm, Math.max(...ys) + roomMm];
  const sheet = polygon([
    { x: x0, y: y0 },
    { x: x1, y: y0 },
    { x: x1, y: y1 },
    { x: x0, y: y1 },
  ]);
  return metalOf(OverlayOp.difference(sheet, areaOf(openings)));
}

function areaOf(openings: readonly Region[]): Geometry {
  return UnaryUnionOp.union(factory.createGeometryCollection(openings.map((o) => polygon(o.outer, o.holes))));
}

function metalOf(geometry: Geometry): Metal {
  return {
    pieces: parts(geometry).filter((area) => area > SPECK_MM2).length,
    pieceCountShrunk: (byMm) => parts(BufferOp.bufferOp(geometry, -byMm, 32)).filter((a) => a > SPECK_MM2).length,
    without: (bar, drawn) =>
      metalOf(OverlayOp.difference(geometry, OverlayOp.intersection(polygon(bar), areaOf(drawn)))),
  };
}

function parts(geometry: Geometry): number[] {
  return Array.from({ length: geometry.getNumGeometries() }, (_, i) => geometry.getGeometryN(i).getArea());
}

function polygon(outer: Ring, holes: readonly Ring[] = []): Geometry {
  const loop = (ring: Ring) =>
    factory.createLinearRing([...ring, ring[0]!].map((p) => new Coordinate(p.x, p.y)));
  return factory.createPolygon(loop(outer), holes.map(loop));
}
