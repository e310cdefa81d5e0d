import { placePoint } from '../../../geometry/measure/clock.ts';
import { nearestOnSegment } from '../../../geometry/measure/distance.ts';
import { flattenOutline } from '../../../geometry/measure/flatten.ts';
import type { PathCommand, Point, Ring } from '../../../geometry/shapes.ts';
import { ARC_FIT_ERROR_MM, FLATTEN_ERROR_MM } from '../../../geometry/units.ts';
import { polylinePoints, readDxf } from '../../readers/dxf-reader.ts';
import { type Claim, rounded } from '../claim.ts';
import { demoPlates, type DemoPlate } from './demo-plates.ts';

/** Fine enough that what is measured against is the true curve. */
const TRUE_CURVE_ERROR_MM = 0.0002;

/** Few and short: more would be openings that nobody drew. */
const MOST_TAILS = 0.001;

const DEMO_HEAD = "Maker's head";

export const ARC_CLAIMS: readonly Claim[] = [
  {
    name: 'dxf-entities-to-polyline-vertices',
    wanted: 'at most 0.2 over all demo plates',
    async measure() {
      const plates = await demoPlates();
      const entities = sum(plates, ({ dxf }) => readDxf(dxf).entities.length);
      const ratio = entities / sum(plates, plainVertices);
      return { value: rounded(ratio), unit: 'entities a vertex', ok: ratio <= 0.2 };
    },
  },
  {
    // Harder than what is promised: every line and arc counts for itself. Straight sides, which no arc can join, are
    // most of what is left; the figure is printed so that it can be watched.
    name: 'lines-and-arcs-to-polyline-vertices',
    wanted: "for information, on the large plate of the maker's head",
    async measure() {
      const plate = (await demoPlates()).find(({ design }) => design.title === DEMO_HEAD);
      if (!plate) throw new Error(`there is no demo design called ${DEMO_HEAD}`);
      return { value: rounded(sidesOf(plate.dxf) / plainVertices(plate)), unit: 'sides a vertex', ok: true };
    },
  },
  {
    name: 'lines-and-arcs-to-lines-and-curves-of-the-outlines',
    wanted: 'at most 1 over all demo plates',
    async measure() {
      const plates = await demoPlates();
      const drawn = sum(plates, ({ plate }) => sum(plate.layout.shapes, ({ outline }) => sum(outline, drawsSomething)));
      const ratio = sum(plates, ({ dxf }) => sidesOf(dxf)) / drawn;
      return { value: rounded(ratio), unit: 'sides a line or curve', ok: ratio <= 1 };
    },
  },
  {
    name: 'greatest-distance-of-dxf-to-true-outline',
    wanted: `at most 0.02, with at most ${100 * MOST_TAILS} % of all edges ends of tails left as metal`,
    async measure() {
      const found = (await demoPlates()).map(distanceToTruth);
      const worst = Math.max(...found.map(({ worstMm }) => worstMm));
      const tails = sum(found, ({ tailMm }) => tailMm) / sum(found, ({ edgeMm }) => edgeMm);
      const unit = `mm, ${rounded(100 * tails)} % of the edges ends of tails`;
      return { value: rounded(worst), unit, ok: worst <= 0.02 && tails <= MOST_TAILS };
    },
  },
];

/** Lines and arcs of all openings, the rim as one. */
function sidesOf(dxf: string): number {
  return sum(readDxf(dxf).entities, ({ vertices }) => vertices?.length ?? 1);
}

/** Vertices of plain polylines at the tolerance of the arcs: the drawn outlines, and four corners a bridge. */
function plainVertices({ plate }: DemoPlate): number {
  const drawn = sum(plate.layout.shapes, ({ outline }) =>
    sum(flattenOutline(outline, ARC_FIT_ERROR_MM), (ring) => ring.length),
  );
  return drawn + 4 * plate.bridges.length;
}

function drawsSomething({ type }: PathCommand): number {
  return type === 'M' || type === 'Z' ? 0 : 1;
}

function sum<T>(items: readonly T[], of: (item: T) => number): number {
  return items.reduce((total, item) => total + of(item), 0);
}

/**
 * The farthest that a point of the written contours lies from the letters' true curves, the bridges' edges and the ends
 * of tails; how long those ends are, and all edges.
 */
function distanceToTruth({ plate, dxf }: DemoPlate): { worstMm: number; tailMm: number; edgeMm: number } {
  const curves = plate.layout.shapes.flatMap(({ outline, placement }) =>
    flattenOutline(outline, TRUE_CURVE_ERROR_MM).map((ring) => ring.map((p) => placePoint(p, placement))),
  );
  const drawn = [...curves, ...plate.bridges.map((bridge) => bridge.outline)];
  const tails = tailEnds(plate, new SegmentGrid(drawn));
  const edges = new SegmentGrid([...drawn, ...tails]);
  const written = readDxf(dxf).entities.filter(({ layer }) => layer === 'OPENINGS');
  let worst = 0;
  for (const entity of written)
    for (const p of polylinePoints(entity, 0.05)) worst = Math.max(worst, edges.distance(p));
  const all = plate.openings.flatMap(({ region: { outer, holes } }) => [outer, ...holes]);
  return { worstMm: worst, tailMm: sum(tails, ([a, b]) => apart(a!, b!)), edgeMm: sum(all, perimeterMm) };
}

function perimeterMm(ring: Ring): number {
  return sum([...ring.entries()], ([i, p]) => apart(ring.at(i - 1) ?? p, p));
}

function apart(a: Point, b: Point): number {
  return Math.hypot(b.x - a.x, b.y - a.y);
}

/**
 * Edges of the plate's own openings that are neither a letter's curve nor a bridge's side: where a tail too narrow to
 * cut stayed metal. The openings' rings lie within FLATTEN_ERROR_MM of what they stand for.
 */
function tailEnds(plate: DemoPlate['plate'], drawn: SegmentGrid): Ring[] {
  return plate.openings.flatMap(({ region: { outer } }) =>
    outer.flatMap((b, i) => {
      const a = outer.at(i - 1) ?? b;
      const middle = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
      return drawn.distance(middle) > 2 * FLATTEN_ERROR_MM ? [[a, b]] : [];
    }),
  );
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
