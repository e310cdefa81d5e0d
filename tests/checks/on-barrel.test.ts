import { describe, expect, it } from 'vitest';
import { loadFaces } from '../../fonts/node-faces.ts';
import { gapAtOpenings, greatestGap } from '../../geometry/barrel/gap-at-openings.ts';
import type { Opening } from '../../geometry/bridges/types.ts';
import { planCuts } from '../../geometry/cutplan/plate/plan-cuts.ts';
import { emptyDesign, newLineText, newRingText } from '../../geometry/design/defaults.ts';
import { fingerprintOf } from '../../geometry/design/fingerprint.ts';
import type { Design } from '../../geometry/design/schema.ts';
import type { Finding } from '../../geometry/findings.ts';
import { FINGER_HOLE_MM } from '../../geometry/layout/lifting.ts';
import { MASK_ROOM_MM } from '../../geometry/layout/mask-ring.ts';
import { makePlate } from '../../geometry/pipeline/make-plate.ts';
import { arcRadius } from './arc-radius.ts';
import type { PlateResult } from '../../geometry/plate/plate.ts';
import { provePlan } from '../../geometry/pipeline/prove-plan.ts';
import { createStore } from '../../geometry/pipeline/solve-store.ts';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';
import { applyMend } from '../../web/state/actions/apply-mend.ts';

const FACE = 'stardos-stencil-700';
const base: Design = {
  ...emptyDesign(),
  head: { source: { kind: 'measured', alongMm: 540, acrossMm: 540 }, clearanceMm: 10, crownMm: 0 },
  plates: [{ id: 'large', name: 'Large', diameter: 'fit', quantity: 1 }],
  elements: [
    { ...newRingText('ring', FACE), text: 'MARROW LANE' },
    { ...newLineText('year', FACE), text: '27' },
  ],
};
const faces = (await loadFaces(base)).faces;
const store = createStore();
const made = (part: Partial<Design>, id = 'large'): PlateResult =>
  makePlate({ ...base, ...part }, id, faces, store, BUILT_IN);
/** What the lettering itself has to say is not this file's business. */
const said = (part: Partial<Design>, id?: string) => made(part, id).findings.filter((f) => f.code !== 'letters-spread');
const codes = (findings: readonly Finding[]) => findings.map((f) => `${f.severity} ${f.code}`);
const head = (part: Partial<Design['head']>) => ({ head: { ...base.head, ...part } });
const side = (part: object = {}): Design['surface'] => ({
  kind: 'side',
  bilgeMm: 660,
  endMm: 580,
  lengthMm: 900,
  lines: 'along-hoops',
  spread: false,
  ...part,
});
const mm = (diameter: number): Pick<Design, 'plates'> => ({
  plates: [{ id: 'large', name: 'Large', diameter: { mm: diameter }, quantity: 1 }],
});

it('a plate with room around it, on a flat head, has nothing to say', () => {
  expect(said({})).toEqual([]);
});

describe('openings to lift a plate by', () => {
  const tight = head({ clearanceMm: 5 });

  it('are offered where fingers find no room, and obey all rules once they are taken', () => {
    const [finding] = said(tight);
    expect(finding).toMatchObject({ code: 'no-finger-room', severity: 'note', measuredMm: 5, limitMm: 8 });
    const mended = applyMend({ ...base, ...tight }, finding!.mend!.change).design;
    const plate = makePlate(mended, 'large', faces, store, BUILT_IN);
    expect(codes(said(mended))).toEqual(['note lifting-marks']);
    expect(said(mended)[0]?.sentence).toContain('the finger holes');
    const holes = plate.openings.filter((o) => o.elementIds.includes(':finger-holes'));
    expect(holes).toHaveLength(2);
    for (const hole of holes) {
      const box = hole.region.outer.map((p) => p.x);
      expect(Math.max(...box) - Math.min(...box)).toBeCloseTo(FINGER_HOLE_MM, 2);
    }
    expect(plate.bridges).toEqual(made(tight).bridges);
    expect(fingerprintOf(mended)).not.toBe(fingerprintOf({ ...base, ...tight }));
  });

  it('are cut like all others, and the plan still proves', () => {
    const plate = made({ ...tight, lifting: { shape: 'slots', count: 2, firstDeg: 90, at: 0.86 } });
    const plan = planCuts(plate);
    const cut = plan.contours.filter((c) => c.kind === 'opening' && c.elementIds.includes(':hand-slots'));
    expect(cut).toHaveLength(2);
    expect(provePlan(plate, plan)).toBe(plate);
  });

  it('too near the rim, or in a text, are found', () => {
    const near = said({ ...tight, lifting: { shape: 'holes', count: 2, firstDeg: 90, at: 0.98 } });
    expect(near.find((f) => f.code === 'too-near-rim')).toMatchObject({ severity: 'stop' });
    expect(near.find((f) => f.code === 'too-near-rim')?.sentence).toMatch(/^The finger holes run|^The finger holes/);
    const crossing = said({ ...tight, lifting: { shape: 'holes', count: 1, firstDeg: 0, at: 0.76 } });
    expect(crossing.find((f) => f.code === 'text-overlap')?.sentence).toMatch(/^The finger holes and/);
  });

  it('are left out of a plate that has room around it, but not where the head lies deeper than fingers reach', () => {
    const lifting = { shape: 'holes', count: 2, firstDeg: 90, at: 0.9 } as const;
    expect(made({ lifting }).openings).toHaveLength(made({}).openings.length);
    const onSide = { surface: side(), ...mm(300) };
    expect(made({ ...onSide, lifting }).openings).toHaveLength(made(onSide).openings.length);
    expect(codes(said(head({ recessMm: 80 })))).toEqual(['note no-finger-room']);
    expect(codes(said({ ...head({ recessMm: 80 }), lifting }))).toEqual(['note lifting-marks']);
  });
});

it('a plate that comes out above the chime is said', () => {
  expect(codes(said(head({ recessMm: 1.4 })))).toEqual(['look stands-proud']);
  expect(said(head({ recessMm: 10, crownMm: 9.9 })).find((f) => f.code === 'stands-proud')?.measuredMm).toBeCloseTo(
    11.4,
    9,
  );
});

describe('a ring that masks', () => {
  const pair = (inner: number, ring: Design['plates'][number]['diameter'] = 'fit'): Pick<Design, 'plates'> => ({
    plates: [
      { id: 'small', name: 'Small', diameter: { mm: inner }, quantity: 1 },
      { id: 'ring', name: 'Ring', diameter: ring, quantity: 1, masks: 'small' },
    ],
  });

  it('is offered beside a plate that leaves much of the head open', () => {
    const plates = [base.plates[0]!, { id: 'small', name: 'Small', diameter: { mm: 300 }, quantity: 1 }];
    const finding = said({ plates }, 'small').find((f) => f.code === 'overspray');
    // 1 - (300 / 540)^2
    expect(finding?.sentence).toContain('120 mm');
    expect(finding?.sentence).toContain('69 %');
    const mended = applyMend({ ...base, plates }, finding!.mend!.change).design;
    expect(mended.plates[2]).toMatchObject({ masks: 'small', diameter: 'fit' });
    expect(codes(makePlate(mended, 'small', faces, store, BUILT_IN).findings)).not.toContain('note overspray');
  });

  it('is a ring and nothing else: one round opening that takes the plate in', () => {
    const plate = made(pair(300), 'ring');
    expect(plate.findings).toEqual([]);
    expect(plate.openings).toHaveLength(1);
    const opening = 150 + MASK_ROOM_MM;
    expect(plate.measures.openAreaMm2).toBeCloseTo(Math.PI * opening * opening, -2);
    const plan = planCuts(plate);
    expect(provePlan(plate, plan)).toBe(plate);
    expect(plan.contours).toHaveLength(2);
    const cut = plan.contours[0]!;
    if (cut.kind !== 'opening') throw new Error('the rim is cut last');
    expect(arcRadius(cut.contour)).toBeCloseTo(opening, 2);
  });

  it.each<[string, Pick<Design, 'plates'>, string]>([
    ['too thin to stay stiff', pair(512), 'look mask-thin'],
    ['thinner than the least web', pair(516), 'stop mask-thin'],
    ['no larger than its plate', pair(520), 'stop mask-none'],
    ['around nothing', { plates: pair(300).plates.slice(1) }, 'stop mask-missing'],
  ])('%s', (_, plates, code) => {
    const findings = said(plates, 'ring');
    expect(codes(findings)).toContain(code);
    expect(findings.find((f) => f.code.startsWith('mask'))?.sentence).toMatch(/^The .*“Ring”.*\.$/);
  });
});

describe('the side of the barrel', () => {
  it('takes a plate between its hoops', () => {
    expect(codes(said({ surface: side(), ...mm(300) }))).toEqual(['look stave-gap']);
    expect(codes(said({ surface: side({ endMm: 658 }), ...mm(300) }))).toEqual([]);
  });

  it.each<[string, Partial<Design>, string]>([
    ['a barrel that tapers the wrong way', { surface: side({ endMm: 700 }), ...mm(300) }, 'stop side-nonsense'],
    ['a belly that nobody measured', { surface: side({ bilgeMm: undefined }), ...mm(300) }, 'stop side-nonsense'],
    ['a plate longer than the staves', { surface: side({ lengthMm: 400 }), ...mm(420) }, 'stop plate-too-long'],
    ['more than half round', { surface: side({ bilgeMm: 240, endMm: 230 }), ...mm(400) }, 'stop plate-too-wide'],
    ['a plate over the hoops', { surface: side(), ...mm(330) }, 'look hoops-in-the-way'],
    ['measures from a table', { surface: side({ endMm: undefined }), ...mm(300) }, 'note side-not-measured'],
    ['a bulge beyond half a ball', { ...head({ crownMm: 101 }), ...withHead(200), ...mm(150) }, 'stop crown-nonsense'],
    ['a plate larger than the head', mm(545), 'stop plate-wont-drop'],
    ['a radius that the sheet does not stand', rolledTight(), 'stop bend-too-tight'],
    ['a sheet that nobody has rolled', { surface: side(), ...mm(300), stock: stock('pvc', 2) }, 'look bend-unknown'],
  ])('%s', (_, part, code) => {
    const findings = said(part);
    expect(codes(findings)).toContain(code);
    expect(findings.every((f) => /^[A-Z“].*[.?]$/s.test(f.sentence))).toBe(true);
  });

  it('a mend of what does not go on makes it go on', () => {
    for (const part of [
      { surface: side({ lengthMm: 400 }), ...mm(420) },
      { surface: side({ bilgeMm: 240, endMm: 230 }), ...mm(400) },
    ]) {
      const mend = said(part).find((f) => f.code.startsWith('plate-too'))?.mend;
      const mended = applyMend({ ...base, ...part }, mend!.change).design;
      expect(
        codes(makePlate(mended, 'large', faces, store, BUILT_IN).findings).filter((c) => c.includes('plate-too')),
      ).toEqual([]);
    }
  });
});

describe('the gap at the openings', () => {
  const square = (x: number, y: number): Opening => ({
    id: 'a/0',
    elementIds: ['a'],
    word: 'a/0',
    region: {
      outer: [
        { x: x - 5, y: y - 5 },
        { x: x + 5, y: y - 5 },
        { x: x + 5, y: y + 5 },
        { x: x - 5, y: y + 5 },
      ],
      holes: [],
    },
  });
  const R = (8 * 8 + 270 * 270) / 16;
  const fall = (r: number) => R - Math.sqrt(R * R - r * r);
  const openings = [square(0, 0), square(100, 0), square(0, -200)];

  it('of a bulging head is that of the corner farthest out, by the closed formula of a cap', () => {
    const surface = { kind: 'head', headDiameterMm: 540, crownMm: 8, plateDiameterMm: 520 } as const;
    const gaps = gapAtOpenings(openings, surface);
    [Math.hypot(5, 5), Math.hypot(105, 5), Math.hypot(5, 205)].forEach((r, i) => {
      expect(gaps[i]?.gapMm).toBeCloseTo(fall(r), 6);
      // Tangent of 20 degrees, from the tables.
      expect(gaps[i]?.bleedMm).toBeCloseTo(0.36397 * fall(r), 4);
    });
    expect(greatestGap(gaps)?.opening).toBe(2);
  });

  it('of a hollow head is that of the side nearest to the middle', () => {
    const surface = { kind: 'head', headDiameterMm: 540, crownMm: -8, plateDiameterMm: 520 } as const;
    const gaps = gapAtOpenings(openings, surface);
    [5, 95, 195].forEach((r, i) => expect(gaps[i]?.gapMm).toBeCloseTo(fall(260) - fall(r), 6));
  });

  it('is said with the text it is at', () => {
    const finding = said(head({ crownMm: 9 })).find((f) => f.code === 'crown-gap');
    expect(finding).toMatchObject({ severity: 'look', elementIds: ['ring'], place: { kind: 'point' } });
    expect(finding?.sentence).toMatch(/bulges by 9 mm.*at “MARROW LANE”\. By rule of thumb paint creeps/);
    expect(
      said({ ...head({ crownMm: 9 }), stock: { ...base.stock, use: 'torch' } })
        .map((f) => f.sentence)
        .join(),
    ).toMatch(/burnt edge is soft/);
  });
});

function stock(material: string, thicknessMm: number): Design['stock'] {
  return { ...base.stock, material, thicknessMm };
}

function withHead(diameter: number): Partial<Design> {
  return {
    head: { source: { kind: 'measured', alongMm: diameter, acrossMm: diameter }, clearanceMm: 5, crownMm: 101 },
  };
}

function rolledTight(): Partial<Design> {
  return { surface: side({ bilgeMm: 300, endMm: 280 }), ...mm(200), stock: stock('birch-plywood', 3) };
}
