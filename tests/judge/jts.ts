import BufferOp from 'jsts/org/locationtech/jts/operation/buffer/BufferOp.js';
import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
import GeometryFactory from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
import DistanceOp from 'jsts/org/locationtech/jts/operation/distance/DistanceOp.js';
import OverlayOp from 'jsts/org/locationtech/jts/operation/overlay/OverlayOp.js';
import SnapIfNeededOverlayOp from 'jsts/org/locationtech/jts/operation/overlay/snap/SnapIfNeededOverlayOp.js';
import UnaryUnionOp from 'jsts/org/locationtech/jts/operation/union/UnaryUnionOp.js';

/** The few verbs of JTS (the jsts port, which ships no types) that the judges use. */
export interface Area {
  getArea(): number;
  getNumGeometries(): number;
  getGeometryN(i: number): Area;
  getEnvelopeInternal(): { getMinX(): number; getMaxX(): number; getMinY(): number; getMaxY(): number };
  /** Of all its edges, holes too. */
  getCoordinates(): readonly XY[];
  /** Of a single polygon. */
  getNumInteriorRing(): number;
}

interface XY {
  readonly x: number;
  readonly y: number;
}

const factory = new GeometryFactory() as unknown as {
  createLinearRing(coordinates: unknown[]): unknown;
  createPolygon(shell: unknown, holes: unknown[]): Area;
  createGeometryCollection(areas: readonly Area[]): Area;
};

export function polygon(outer: readonly XY[], holes: readonly (readonly XY[])[] = []): Area {
  const loop = (ring: readonly XY[]) =>
    factory.createLinearRing([...ring, ring[0]!].map((p) => new Coordinate(p.x, p.y) as unknown));
  return factory.createPolygon(loop(outer), holes.map(loop));
}

export function unionOf(areas: readonly Area[]): Area {
  return areas.length === 1 ? areas[0]! : (UnaryUnionOp.union(factory.createGeometryCollection(areas)) as Area);
}

export function difference(a: Area, b: Area): Area {
  return overlay(a, b, OverlayOp.DIFFERENCE);
}

export function intersection(a: Area, b: Area): Area {
  return overlay(a, b, OverlayOp.INTERSECTION);
}

/**
 * Edges that cross by a step of the grid, a tenth of a micrometre, make an area invalid to JTS; growing it by nothing
 * is its own way to mend that.
 */
function overlay(a: Area, b: Area, kind: number): Area {
  try {
    return SnapIfNeededOverlayOp.overlayOp(a, b, kind) as Area;
  } catch {
    return SnapIfNeededOverlayOp.overlayOp(BufferOp.bufferOp(a, 0), BufferOp.bufferOp(b, 0), kind) as Area;
  }
}

/** Round corners of the judge miss the true circle by no more than this. */
const ROUND_ERROR_MM = 0.001;

/** Shrunk by so much (grown where negative), corners rounded to ROUND_ERROR_MM. */
export function shrink(area: Area, byMm: number): Area {
  const r = Math.abs(byMm);
  // A chord of an n-th of the quarter stands r (1 - cos(pi / 4n)) off its arc.
  const segments = r <= ROUND_ERROR_MM ? 1 : Math.ceil(Math.PI / 4 / Math.acos(1 - ROUND_ERROR_MM / r));
  return BufferOp.bufferOp(area, -byMm, segments) as Area;
}

/** Whether the areas come nearer to each other than so much. */
export function within(a: Area, b: Area, mm: number): boolean {
  return DistanceOp.isWithinDistance(a, b, mm);
}

/** Area of each connected part. */
export function partAreas(area: Area): number[] {
  return parts(area).map((part) => part.getArea());
}

/** Each connected part by itself. */
export function parts(area: Area): Area[] {
  return Array.from({ length: area.getNumGeometries() }, (_, i) => area.getGeometryN(i));
}
