import BufferOp from 'jsts/org/locationtech/jts/operation/buffer/BufferOp.js';
import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
import GeometryFactory from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
import OverlayOp from 'jsts/org/locationtech/jts/operation/overlay/OverlayOp.js';
import UnaryUnionOp from 'jsts/org/locationtech/jts/operation/union/UnaryUnionOp.js';
import { polylinePoints, readDxf } from '../readers/dxf-reader.ts';

/**
 * Judges a written cut file with other people's code only: dxf-parser reads it, JTS (the jsts port) does the geometry.
 */
export interface Judgement {
  /** Connected pieces of metal, as cut. More than one: something falls out. */
  readonly pieces: number;
  /** The same after shrinking by 0.98 of half the least bridge; rounding specks under 0.0004 mm2 left out. */
  readonly shrunkPieces: number;
  readonly rimDiameterMm: number;
  readonly contours: number;
  readonly metalAreaMm2: number;
}

const SHRINK_SHARE = 0.98;
const SPECK_MM2 = 0.0004;
/** Arcs become chords this long: off the arc by less than 0.003 mm on any radius over 1 mm. */
const STEP_MM = 0.15;

export function judgeDxf(dxf: string, leastBridgeMm: number): Judgement {
  const { entities } = readDxf(dxf);
  const rim = entities.find((e) => e.type === 'CIRCLE');
  if (rim?.radius === undefined) throw new Error('the file has no rim');
  const factory = new GeometryFactory();
  const closed = (points: readonly { x: number; y: number }[]) => {
    const coordinates = [...points, points[0]!].map((p) => new Coordinate(p.x, p.y));
    return factory.createPolygon(factory.createLinearRing(coordinates));
  };
  const outlines = entities.filter((e) => e.type !== 'CIRCLE').map((e) => polylinePoints(e, STEP_MM));
  const disc = closed(circle(rim.radius));
  const openings = outlines.map(closed);
  const cut = openings.length > 0 ? UnaryUnionOp.union(factory.createGeometryCollection(openings)) : undefined;
  const metal = cut ? OverlayOp.difference(disc, cut) : disc;
  const shrunk = BufferOp.bufferOp(metal, (-SHRINK_SHARE * leastBridgeMm) / 2, 32);
  return {
    pieces: parts(metal).length,
    shrunkPieces: parts(shrunk).filter((area) => area > SPECK_MM2).length,
    rimDiameterMm: 2 * rim.radius,
    contours: outlines.length,
    metalAreaMm2: metal.getArea(),
  };
}

interface Geometry {
  getArea(): number;
  getNumGeometries(): number;
  getGeometryN(i: number): Geometry;
}

function parts(geometry: Geometry): number[] {
  return Array.from({ length: geometry.getNumGeometries() }, (_, i) => geometry.getGeometryN(i).getArea());
}

function circle(radius: number): { x: number; y: number }[] {
  const n = Math.ceil(Math.PI / Math.acos(1 - 0.001 / radius));
  return Array.from({ length: n }, (_, i) => {
    const a = (2 * Math.PI * i) / n;
    return { x: radius * Math.cos(a), y: radius * Math.sin(a) };
  });
}
