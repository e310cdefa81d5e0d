import { describe, expect, it } from 'vitest';
import { bendStrain, leastBendRadiusMm } from '../../geometry/barrel/bend.ts';
import { bleedMm } from '../../geometry/barrel/bleed.ts';
import {
  gapMm,
  neutralRadiusMm,
  onPlate,
  onWood,
  type Point3,
  type SideSurface,
} from '../../geometry/barrel/surface.ts';
import { surfaceOf } from '../../geometry/barrel/surface-of.ts';
import { emptyDesign } from '../../geometry/design/defaults.ts';
import type { Design } from '../../geometry/design/schema.ts';
import type { Point } from '../../geometry/shapes.ts';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';

const apart = (a: Point3, b: Point3) => Math.hypot(a.x - b.x, a.y - b.y, a.z - b.z);

/** Length of a line drawn on the plate, once the plate is on the barrel: many short chords. */
function lengthOn(surface: SideSurface, map: typeof onPlate, from: Point, to: Point): number {
  const at = (t: number) => map(surface, { x: from.x + t * (to.x - from.x), y: from.y + t * (to.y - from.y) });
  const n = 20_000;
  return Array.from({ length: n }, (_, i) => apart(at(i / n), at((i + 1) / n))).reduce((sum, d) => sum + d, 0);
}

const SIDE: SideSurface = {
  kind: 'side',
  bilgeRadiusMm: 330,
  endRadiusMm: 285,
  lengthMm: 880,
  thicknessMm: 1.5,
  lines: 'along-hoops',
};

describe('the side of a barrel', () => {
  it('keeps lengths round the barrel and along the staves on the rolled plate', () => {
    for (const lines of ['along-hoops', 'up-staves'] as const) {
      const side = { ...SIDE, lines };
      for (const [from, to] of [
        [
          { x: -200, y: 10 },
          { x: 200, y: 10 },
        ],
        [
          { x: 40, y: -150 },
          { x: 40, y: 150 },
        ],
        [
          { x: -90, y: -120 },
          { x: 100, y: 60 },
        ],
      ] as const) {
        expect(lengthOn(side, onPlate, from, to)).toBeCloseTo(Math.hypot(to.x - from.x, to.y - from.y), 5);
      }
    }
  });

  it('marks the wood at the bilge by the ratio of its radius to that of the middle of the sheet', () => {
    const length = lengthOn(SIDE, onWood, { x: -200, y: 0 }, { x: 200, y: 0 });
    expect(length).toBeCloseTo((400 * SIDE.bilgeRadiusMm) / neutralRadiusMm(SIDE), 5);
  });

  it('leaves the gap of the staves: a circle through both ends and the bilge', () => {
    // Chord and sagitta: r = (c^2 + a^2) / 2c; the fall at v is r - sqrt(r^2 - v^2).
    const [c, a] = [45, 440];
    const r = (c * c + a * a) / (2 * c);
    for (const v of [0, 30, 130, 260]) {
      expect(gapMm(SIDE, { x: 77, y: v })).toBeCloseTo(r - Math.sqrt(r * r - v * v), 6);
      const wood = onWood(SIDE, { x: 0, y: v });
      expect(wood.z).toBeCloseTo(-(r - Math.sqrt(r * r - v * v)), 6);
    }
    expect(gapMm({ ...SIDE, endRadiusMm: SIDE.bilgeRadiusMm }, { x: 0, y: 200 })).toBe(0);
  });
});

describe('a head', () => {
  const head = { kind: 'head', headDiameterMm: 560, crownMm: 12, plateDiameterMm: 540 } as const;

  it('bulges as a spherical cap: sagitta and gap by the closed formula', () => {
    const r = (12 * 12 + 280 * 280) / 24;
    for (const p of [
      { x: 0, y: 0 },
      { x: 100, y: 50 },
      { x: 0, y: -270 },
    ]) {
      const closed = r - Math.sqrt(r * r - p.x * p.x - p.y * p.y);
      expect(gapMm(head, p)).toBeCloseTo(closed, 6);
      expect(apart(onWood(head, p), { ...p, z: -closed })).toBeLessThan(1e-6);
      // On the sphere itself, whose middle lies r under the crown.
      const w = onWood(head, p);
      expect(Math.hypot(w.x, w.y, w.z + r)).toBeCloseTo(r, 6);
    }
    expect(gapMm(head, { x: 0, y: 280 })).toBeCloseTo(12, 6);
  });

  it('that is hollow carries the plate at its rim', () => {
    const hollow = { ...head, crownMm: -12 };
    expect(gapMm(hollow, { x: 270, y: 0 })).toBeCloseTo(0, 9);
    const r = (12 * 12 + 280 * 280) / 24;
    expect(gapMm(hollow, { x: 0, y: 0 })).toBeCloseTo(r - Math.sqrt(r * r - 270 * 270), 6);
  });

  it('that is flat has no gap', () => {
    expect(gapMm({ ...head, crownMm: 0 }, { x: 200, y: 100 })).toBe(0);
  });
});

describe('what cannot be laid on', () => {
  const measured = (headMm: number, crownMm: number): Design => ({
    ...emptyDesign(),
    head: { source: { kind: 'measured', alongMm: headMm, acrossMm: headMm }, clearanceMm: 5, crownMm },
  });
  const problem = (design: Design, plateMm: number) => {
    const made = surfaceOf(design, plateMm, 1.5);
    return 'problem' in made ? made.problem.kind : 'none';
  };
  const onSide = (side: object): Design => ({
    ...measured(500, 0),
    surface: { kind: 'side', lines: 'along-hoops', spread: false, bilgeMm: 660, endMm: 580, lengthMm: 900, ...side },
  });

  it.each<[string, Design, number, string]>([
    ['a plate that fits', measured(500, 6), 490, 'none'],
    ['a plate larger than the head', measured(500, 0), 501, 'larger-than-head'],
    ['a bulge beyond a half sphere', measured(200, 101), 150, 'beyond-half-sphere'],
    ['a head of nothing', measured(0, 0), 150, 'no-head'],
    ['a plate on the side', onSide({}), 400, 'none'],
    ['a bilge that nobody measured', { ...onSide({ bilgeMm: undefined }) }, 400, 'no-bilge'],
    ['a barrel that tapers the wrong way', onSide({ endMm: 700 }), 400, 'tapers-wrongly'],
    ['a plate longer than the staves', onSide({}), 901, 'longer-than-staves'],
    ['a plate more than half round the barrel', onSide({ bilgeMm: 300, endMm: 280 }), 480, 'round-the-barrel'],
  ])('%s', (_, design, plateMm, kind) => {
    expect(problem(design, plateMm)).toBe(kind);
  });
});

// Euler-Bernoulli: strain is the distance from the neutral fibre over its radius; 1.5 mm on 330 mm is 0.227 %.
it('bend strain of a rolled sheet', () => {
  expect(bendStrain(330, 1.5)).toBeCloseTo(0.75 / 330.75, 12);
  expect(bendStrain(0, 2)).toBe(1);
});

it('knows of every material that is sold here whether it can be rolled, plastics with chlorine aside', () => {
  const unknown = BUILT_IN.materials.filter((m) => leastBendRadiusMm(m.id, 1.5) === undefined).map((m) => m.id);
  expect(unknown).toEqual(['pvc']);
});

it('paint creeps under by the tangent of the spray', () => {
  expect(bleedMm(3, 45)).toBeCloseTo(3, 9);
  expect(bleedMm(0)).toBe(0);
});
