import type { Ring } from '../../geometry/shapes.ts';
import GeometryFactory from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
import DistanceOp from 'jsts/org/locationtech/jts/operation/distance/DistanceOp.js';

/** Outside check: shortest distance between the edges of two shapes by jsts, a port of the JTS Topology Suite. */
export function jstsDistance(as: readonly Ring[], bs: readonly Ring[]): number {
  return (DistanceOp as { distance(a: unknown, b: unknown): number }).distance(lines(as), lines(bs));
}

const factory = new (
  GeometryFactory as new () => {
    createLineString(points: unknown[]): unknown;
    createMultiLineString(lines: unknown[]): unknown;
  }
)();

function lines(rings: readonly Ring[]): unknown {
  return factory.createMultiLineString(
    rings.map((ring) =>
      factory.createLineString(
        [...ring, ...ring.slice(0, 1)].map((p) => new (Coordinate as new (x: number, y: number) => unknown)(p.x, p.y)),
      ),
    ),
  );
}
