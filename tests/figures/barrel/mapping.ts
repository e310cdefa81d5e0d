import { loadFaces } from '../../../fonts/node-faces.ts';
import { gapAtOpenings } from '../../../geometry/barrel/gap-at-openings.ts';
import {
  gapMm,
  onPlate,
  onWood,
  type HeadSurface,
  type Point3,
  type SideSurface,
} from '../../../geometry/barrel/surface.ts';
import { surfaceOf } from '../../../geometry/barrel/surface-of.ts';
import { emptyDesign, newLineText, newRingText } from '../../../geometry/design/defaults.ts';
import type { Design } from '../../../geometry/design/schema.ts';
import { makePlate } from '../../../geometry/pipeline/make-plate.ts';
import type { Point, Region } from '../../../geometry/shapes.ts';
import { createStore } from '../../../geometry/pipeline/solve-store.ts';
import { BUILT_IN } from '../../../geometry/stock/built-in-stock.ts';
import { once, rounded, type Claim } from '../claim.ts';

const FACE = 'stardos-stencil-700';
const HEAD_MM = 540;
const ERROR_MM = 1e-6;

const design: Design = {
  ...emptyDesign(),
  head: {
    source: { kind: 'measured', alongMm: HEAD_MM, acrossMm: HEAD_MM },
    clearanceMm: 10,
    crownMm: 8,
  },
  plates: [{ id: 'large', name: 'Large', diameter: { mm: 300 }, quantity: 1 }],
  elements: [
    { ...newRingText('ring', FACE), text: 'MARROW LANE', fit: { spanDeg: 150, by: 'size' } },
    { ...newLineText('year', FACE), text: '27' },
  ],
};
const SIDE: SideSurface = {
  kind: 'side',
  bilgeRadiusMm: 330,
  endRadiusMm: 290,
  lengthMm: 900,
  thicknessMm: 1.5,
  lines: 'along-hoops',
};

/** A real plate: its openings are what is mapped. */
const plate = once(async () => makePlate(design, 'large', (await loadFaces(design)).faces, createStore(), BUILT_IN));
const points = async (): Promise<Point[]> => (await plate()).openings.flatMap((o) => [...o.region.outer]);

export const MAPPING_CLAIMS: readonly Claim[] = [
  {
    name: 'side-lengths-along-the-hoop',
    wanted: 'within 1e-6 mm of the flat plate',
    async measure() {
      const all = await points();
      // Of two points, as far round the hoop as the one and as the other: how far apart they are round it.
      const worst = greatest(pairsOf(all), ([p, q]) => {
        const level = { x: q.x, y: p.y };
        return Math.abs(arcBetween(onPlate(SIDE, p), onPlate(SIDE, level)) - Math.abs(q.x - p.x));
      });
      return {
        value: rounded(worst),
        unit: `mm at most, ${all.length} points`,
        ok: all.length > 100 && worst <= ERROR_MM,
      };
    },
  },
  {
    name: 'side-lengths-along-the-staves',
    wanted: 'within 1e-6 mm of the flat plate',
    async measure() {
      const all = await points();
      const worst = greatest(pairsOf(all), ([p, q]) => {
        const [a, b] = [onPlate(SIDE, p), onPlate(SIDE, { x: p.x, y: q.y })];
        return Math.abs(Math.hypot(a.x - b.x, a.y - b.y, a.z - b.z) - Math.abs(q.y - p.y));
      });
      return {
        value: rounded(worst),
        unit: `mm at most, ${all.length} points`,
        ok: all.length > 100 && worst <= ERROR_MM,
      };
    },
  },
  {
    name: 'head-gap-by-the-closed-formula',
    wanted: 'within 1e-6 mm, and every mark on the sphere',
    async measure() {
      const all = await points();
      const head: HeadSurface = { kind: 'head', headDiameterMm: HEAD_MM, crownMm: 8, plateDiameterMm: 300 };
      // Chord and sagitta, written out: r = (c^2 + a^2) / 2c; a point r away from the middle lies r - sqrt(r^2 - d^2) lower.
      const r = (8 * 8 + (HEAD_MM / 2) ** 2) / 16;
      const worst = greatest(all, (p) => {
        const wood = onWood(head, p);
        const closed = r - Math.sqrt(r * r - p.x * p.x - p.y * p.y);
        return Math.max(Math.abs(gapMm(head, p) - closed), Math.abs(Math.hypot(wood.x, wood.y, wood.z + r) - r));
      });
      const rim = Math.abs(gapMm(head, { x: 0, y: HEAD_MM / 2 }) - 8);
      const most = Math.max(worst, rim);
      return {
        value: rounded(most),
        unit: `mm at most, ${all.length} points`,
        ok: all.length > 100 && most <= ERROR_MM,
      };
    },
  },
  {
    name: 'side-gap-by-the-closed-formula',
    wanted: 'within 1e-6 mm',
    async measure() {
      const all = await points();
      const r = (40 * 40 + 450 * 450) / 80;
      const worst = greatest(all, (p) => Math.abs(gapMm(SIDE, p) - (r - Math.sqrt(r * r - p.y * p.y))));
      return {
        value: rounded(worst),
        unit: `mm at most, ${all.length} points`,
        ok: all.length > 100 && worst <= ERROR_MM,
      };
    },
  },
  {
    name: 'gap-map-knows-the-greatest-gap',
    wanted: 'no point of any edge above it, sides included, bulging and hollow; and it is found where it is said',
    async measure() {
      const { openings, diameterMm } = await plate();
      let [above, astray, looked] = [0, 0, 0];
      for (const crownMm of [8, -8]) {
        const made = surfaceOf({ ...design, head: { ...design.head, crownMm } }, diameterMm, 1.5);
        if ('problem' in made) throw new Error(made.problem.kind);
        gapAtOpenings(openings, made.surface).forEach((g, i) => {
          const edge = edgePoints(openings[i]!.region);
          looked += edge.length;
          above += edge.filter((p) => gapMm(made.surface, p) > g.gapMm + 1e-9).length;
          if (Math.abs(gapMm(made.surface, g.at) - g.gapMm) > 1e-9) astray++;
        });
      }
      const unit = `of ${looked} points round ${openings.length} openings; ${astray} gaps not found where they are said`;
      return { value: above, unit, ok: above === 0 && astray === 0 && openings.length > 8 };
    },
  },
];

/** Length of the arc between two points of a circle about the barrel's axis, from their chord. */
function arcBetween(a: Point3, b: Point3): number {
  const radius = SIDE.bilgeRadiusMm + SIDE.thicknessMm / 2;
  return 2 * radius * Math.asin(Math.min(1, Math.hypot(a.x - b.x, a.z - b.z) / (2 * radius)));
}

/** Corners and eight points of each side. */
function edgePoints({ outer, holes }: Region): Point[] {
  return [outer, ...holes].flatMap((ring) =>
    ring.flatMap((b, i) => {
      const a = ring.at(i - 1)!;
      return Array.from({ length: 8 }, (_, k) => ({ x: a.x + ((b.x - a.x) * k) / 8, y: a.y + ((b.y - a.y) * k) / 8 }));
    }),
  );
}

/** Each with another from somewhere else on the plate. */
function pairsOf(all: readonly Point[]): [Point, Point][] {
  return all.map((p, i) => [p, all[(i * 7 + 3) % all.length]!]);
}

function greatest<T>(of: readonly T[], measure: (one: T) => number): number {
  return of.reduce((most, one) => Math.max(most, measure(one)), 0);
}
