import BufferOp from 'jsts/org/locationtech/jts/operation/buffer/BufferOp.js';
import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
import GeometryFactory from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
import OverlayOp from 'jsts/org/locationtech/jts/operation/overlay/OverlayOp.js';
import UnaryUnionOp from 'jsts/org/locationtech/jts/operation/union/UnaryUnionOp.js';

/** The few verbs of JTS (the jsts port, which ships no types) that the judges use. */
export interface Area {
  getArea(): number;
  getNumGeometries(): number;
  getGeometryN(i: number): Area;
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
  return UnaryUnionOp.union(factory.createGeometryCollection(areas)) as Area;
}

export function difference(a: Area, b: Area): Area {
  return OverlayOp.difference(a, b) as Area;
}

export function intersection(a: Area, b: Area): Area {
  return OverlayOp.intersection(a, b) as Area;
}

/** Shrunk by so much, corners rounded with 32 segments a quarter. */
export function shrink(area: Area, byMm: number): Area {
  return BufferOp.bufferOp(area, -byMm, 32) as Area;
}

/** Area of each connected part. */
export function partAreas(area: Area): number[] {
  return parts(area).map((part) => part.getArea());
}

/** Each connected part by itself. */
export function parts(area: Area): Area[] {
  return Array.from({ length: area.getNumGeometries() }, (_, i) => area.getGeometryN(i));
}
