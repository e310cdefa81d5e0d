import { placePoint } from '../../../geometry/measure/clock.ts';
import { nearestOnSegment } from '../../../geometry/measure/distance.ts';
import { flattenOutline } from '../../../geometry/measure/flatten.ts';
import type { Point, Ring } from '../../../geometry/shapes.ts';
import { ARC_FIT_ERROR_MM } from '../../../geometry/units.ts';
import { polylinePoints, readDxf } from '../../readers/dxf-reader.ts';
import { type Claim, rounded } from '../claim.ts';
import { demoPlates, type DemoPlate } from './demo-plates.ts';

/** Fine enough that what is measured against is the true curve. */
const TRUE_CURVE_ERROR_MM = 0.0002;

export const ARC_CLAIMS: readonly Claim[] = [
  {
    name: 'dxf-entities-to-polyline-vertices',
    wanted: 'at most 0.2',
    async measure() {
      const plates = await demoPlates();
      const entities = plates.reduce((sum, { dxf }) => sum + readDxf(dxf).entities.length, 0);
      const ratio = entities / plates.reduce((sum, demo) => sum + plainVertices(demo), 0);
      return { value: rounded(ratio), unit: 'entities a vertex', ok: ratio <= 0.2 };
    },
  },
  {
    name: 'lines-and-arcs-to-polyline-vertices',
    wanted: 'at most 0.2',
    async measure() {
      const plates = await demoPlates();
      const sides = plates.reduce((sum, { dxf }) => sum + sidesOf(dxf), 0);
      const ratio = sides / plates.reduce((sum, demo) => sum + plainVertices(demo), 0);
      return { value: rounded(ratio), unit: 'sides a vertex', ok: ratio <= 0.2 };
    },
  },
  {
    name: 'greatest-distance-of-dxf-to-true-outline',
    wanted: 'at most 0.02',
    async measure() {
      const worst = Math.max(...(await demoPlates()).map(distanceToTruth));
      return { value: rounded(worst), unit: 'mm', ok: worst <= 0.02 };
    },
  },
];

/** Lines and arcs of all openings, the rim as one. */
function sidesOf(dxf: string): number {
  return readDxf(dxf).entities.reduce((sum, { vertices }) => sum + (vertices?.length ?? 1), 0);
}

/** Vertices that the same outlines need as plain polylines at the fit's tolerance. */
function plainVertices({ plate }: DemoPlate): number {
  const rings = plate.layout.shapes.flatMap(({ outline }) => flattenOutline(outline, ARC_FIT_ERROR_MM));
  return rings.reduce((sum, ring) => sum + ring.length, 0);
}

/** The farthest that a point of the written contours lies from both the letters' true curves and the bridges' edges. */
function distanceToTruth({ plate, dxf }: DemoPlate): number {
  const curves = plate.layout.shapes.flatMap(({ outline, placement }) =>
    flattenOutline(outline, TRUE_CURVE_ERROR_MM).map((ring) => ring.map((p) => placePoint(p, placement))),
  );
  const edges = new SegmentGrid([...curves, ...plate.bridges.map((bridge) => bridge.outline)]);
  const written = readDxf(dxf).entities.filter(({ layer }) => layer === 'OPENINGS');
  let worst = 0;
  for (const entity of written)
    for (const p of polylinePoints(entity, 0.05)) worst = Math.max(worst, edges.distance(p));
  return worst;
}

/** Segments sorted into squares, so that only near ones are measured. */
class SegmentGrid {
  private readonly cells = new Map<string, [Point, Point][]>();
  private static readonly CELL_MM = 0.5;

  constructor(rings: readonly Ring[]) {
    for (const ring of rings) {
      ring.forEach((b, i) => {
        const a = ring.at(i - 1) ?? b;
        const steps = Math.max(1, Math.ceil((2 * Math.hypot(b.x - a.x, b.y - a.y)) / SegmentGrid.CELL_MM));
        const keys = new Set<string>();
        for (let s = 0; s <= steps; s++) {
          keys.add(this.key(a.x + ((b.x - a.x) * s) / steps, a.y + ((b.y - a.y) * s) / steps));
        }
        for (const key of keys) this.cells.set(key, [...(this.cells.get(key) ?? []), [a, b]]);
      });
    }
  }

  /** Distance to the nearest segment; infinite when none lies in this square or those around it. */
  distance(p: Point): number {
    let best = Infinity;
    for (let dx = -1; dx <= 1; dx++) {
      for (let dy = -1; dy <= 1; dy++) {
        const near = this.cells.get(this.key(p.x + dx * SegmentGrid.CELL_MM, p.y + dy * SegmentGrid.CELL_MM)) ?? [];
        for (const [a, b] of near) {
          const q = nearestOnSegment(p, a, b);
          best = Math.min(best, Math.hypot(q.x - p.x, q.y - p.y));
        }
      }
    }
    return best;
  }

  private key(x: number, y: number): string {
    return `${Math.floor(x / SegmentGrid.CELL_MM)},${Math.floor(y / SegmentGrid.CELL_MM)}`;
  }
}
