import { describe, expect, it } from 'vitest';
import type { Opening } from '../../geometry/bridges/types.ts';
import { checkPlate } from '../../geometry/checks/check-plate.ts';
import { surfaceOf } from '../../geometry/barrel/surface-of.ts';
import type { CheckInput } from '../../geometry/checks/input.ts';
import { checkTextOverlap } from '../../geometry/checks/text-overlap.ts';
import { emptyDesign, newBorder, newLineText, newRingText } from '../../geometry/design/defaults.ts';
import type { Design } from '../../geometry/design/schema.ts';
import type { Finding } from '../../geometry/findings.ts';
import { clockPoint } from '../../geometry/measure/clock.ts';
import type { Point, Ring } from '../../geometry/shapes.ts';
import { BUILT_IN } from '../../geometry/stock/built-in-stock.ts';
import { stockRules } from '../../geometry/stock/stock-rules.ts';

const design: Design = {
  ...emptyDesign(),
  head: { source: { kind: 'measured', alongMm: 537, acrossMm: 532 }, clearanceMm: 8, crownMm: 0 },
  elements: [
    { ...newLineText('name', 'cinzel-700'), text: 'PERRY', x: 0.2, y: 0.1 },
    { ...newRingText('top', 'cinzel-700'), text: 'MARROW LANE' },
    newBorder('edge'),
  ],
};

function opening(elementIds: string[], outer: Ring, holes: Ring[] = []): Opening {
  return { id: `${elementIds.join('+')}/0`, elementIds, word: `${elementIds[0]}/0`, region: { outer, holes } };
}

function square(x: number, y: number, side: number): Ring {
  const h = side / 2;
  return [
    { x: x - h, y: y - h },
    { x: x + h, y: y - h },
    { x: x + h, y: y + h },
    { x: x - h, y: y + h },
  ];
}

/** Part of a ring between two radii, counter-clockwise, from one clock angle to another. */
function sector(inner: number, outer: number, from: number, to: number): Ring {
  const steps = Array.from({ length: 41 }, (_, i) => from + ((to - from) * i) / 40);
  return [...steps.map((a) => clockPoint(inner, a)), ...steps.reverse().map((a) => clockPoint(outer, a))];
}

function input(openings: Opening[], parts: Partial<CheckInput> = {}): CheckInput {
  const plate = design.plates[0];
  if (!plate) throw new Error('the default design has plates');
  return {
    design,
    plate,
    diameterMm: 516,
    lying: surfaceOf(parts.design ?? design, parts.diameterMm ?? 516, design.stock.thicknessMm),
    rules: stockRules(design.stock, 'auto', BUILT_IN).rules,
    book: BUILT_IN,
    layout: { shapes: [], extents: [], findings: [] },
    openings,
    bridges: [],
    islands: [],
    unbridged: [],
    ...parts,
  };
}

const codes = (findings: readonly Finding[]) => findings.map((f) => `${f.severity} ${f.code}`);
const middle = opening(['name'], square(0, 0, 40));

describe('a sound plate', () => {
  it('has nothing to say', () => {
    const ring = opening(['edge'], sector(220, 230, 10, 80));
    expect(checkPlate(input([middle, ring]))).toEqual([]);
  });

  it('without an opening says so', () => {
    expect(codes(checkPlate(input([])))).toEqual(['look nothing-to-cut']);
  });
});

describe('a place that no table has filled', () => {
  const texts = (text: string, title = 'Cask 7') => ({
    ...design,
    title,
    elements: [{ ...newLineText('name', 'cinzel-700'), text }],
  });
  const found = (of: Design) =>
    codes(checkPlate(input([middle], { design: of }))).filter((c) => c.includes('unfilled'));
  it('stops the cut, wherever it stands in a text', () => {
    for (const text of ['{cask}', 'CASK {Cask no} 27', '{a}{b}'])
      expect(found(texts(text))).toEqual(['stop unfilled-place']);
    const [finding] = checkPlate(input([middle], { design: texts('{a} {b} {a}') })).filter(
      (f) => f.severity === 'stop',
    );
    expect(finding!.sentence).toContain('{a}, {b} is not filled');
    expect(finding!.elementIds).toEqual(['name']);
  });
  it('is worth a look on paper, and braces with nothing in them are none', () => {
    expect(found(texts('PERRY', 'Cask {cask}'))).toEqual(['look unfilled-paper']);
    for (const text of ['{}', '} 7 {', 'A { B']) expect(found(texts(text))).toEqual([]);
  });
});

describe('too near the rim', () => {
  const at = (reach: number, ids = ['top']) => [middle, opening(ids, sector(200, reach, -20, 20))];

  it.each<[number, string[]]>([
    [252.9, []],
    [253.1, ['look too-near-rim']],
    [256.4, ['look too-near-rim']],
    [256.6, ['stop too-near-rim']],
    [260, ['stop too-near-rim']],
  ])('an opening out to %f mm on a plate of 258 mm radius', (reach, expected) => {
    const findings = checkPlate(input(at(reach)));
    expect(codes(findings)).toEqual(expected);
    if (findings[0]) expect(findings[0].measuredMm).toBeCloseTo(258 - reach, 9);
  });

  it('the mend of a band keeps its height and is just enough', () => {
    const [finding] = checkPlate(input(at(256)));
    const change = finding?.mend?.change;
    if (change?.kind !== 'move-band') throw new Error('no band moved');
    const moved = 256 - (0.84 - change.outer) * 258;
    expect(moved).toBeLessThan(253);
    expect(moved).toBeGreaterThan(252.5);
    expect(change.outer - change.inner).toBeCloseTo(0.84 - 0.68, 12);
    expect(finding?.sentence).toContain('“MARROW LANE”');
  });

  it('the mend of a line shrinks it about its own middle until it fits', () => {
    const corner: Point = { x: 240, y: 100 };
    const ring: Ring = [{ x: 60, y: 20 }, { x: 240, y: 20 }, corner, { x: 60, y: 100 }];
    const [finding] = checkPlate(input([opening(['name'], ring)]));
    const change = finding?.mend?.change;
    if (change?.kind !== 'scale-text') throw new Error('no text scaled');
    const [cx, cy] = [0.2 * 258, 0.1 * 258];
    const reach = Math.hypot(cx + change.share * (corner.x - cx), cy + change.share * (corner.y - cy));
    expect(reach).toBeLessThan(253);
    expect(reach).toBeGreaterThan(252);
    expect(finding?.place).toMatchObject({ kind: 'point', at: corner });
  });

  it('says over the edge when it is', () => {
    expect(checkPlate(input(at(261)))[0]?.sentence).toMatch(/^“MARROW LANE” runs over the edge of the plate by 3 mm/);
  });
});

describe('elements that meet', () => {
  it.each<[number, string[]]>([
    [1.6, []],
    [1.4, ['stop text-overlap']],
    [0, ['stop text-overlap']],
  ])('%f mm apart', (gap, expected) => {
    const other = opening(['top'], square(40 + gap, 0, 40));
    const findings = checkPlate(input([middle, other]));
    expect(codes(findings)).toEqual(expected);
    if (findings[0]) expect(findings[0].measuredMm).toBeCloseTo(gap, 9);
  });

  it('run together into one opening', () => {
    const [finding] = checkPlate(input([opening(['name', 'top'], square(0, 0, 60))]));
    expect(finding).toMatchObject({ code: 'text-overlap', measuredMm: 0, elementIds: ['name', 'top'] });
    expect(finding?.sentence).toContain('run into each other');
  });

  it('letters of one element are not this check’s business', () => {
    expect(checkPlate(input([middle, opening(['name'], square(40.2, 0, 40))]))).toEqual([]);
  });

  it('a border around a text is far from it, though its box holds it', () => {
    const ring = opening(['edge'], sector(100, 110, -170, 170));
    expect(checkPlate(input([middle, ring]))).toEqual([]);
  });

  it('one finding a pair, at the closest place', () => {
    const others = [opening(['top'], square(41.2, 0, 40)), opening(['top'], square(-40.7, 0, 40))];
    const findings = checkTextOverlap(input([middle, ...others]));
    expect(findings).toHaveLength(1);
    expect(findings[0]?.measuredMm).toBeCloseTo(0.7, 9);
    expect(findings[0]?.place).toMatchObject({ kind: 'point', at: { x: -20 } });
  });

  it('160 letters in two rings of text and a border are compared in far fewer steps than all against all', () => {
    let reads = 0;
    const counted = (ring: Ring): Ring =>
      new Proxy(ring as Point[], {
        get(target, key) {
          if (typeof key === 'string' && /^\d+$/.test(key)) reads++;
          return Reflect.get(target, key) as unknown;
        },
      });
    const letters = Array.from({ length: 160 }, (_, i) => {
      const inner = i % 2 === 0 ? 200 : 170;
      return opening([i % 2 === 0 ? 'top' : 'name'], counted(sector(inner, inner + 25, i * 2, i * 2 + 2)));
    });
    expect(checkTextOverlap(input(letters))).toEqual([]);
    // Twice over every point to learn its reach, and a little more; all edges against all would be 82² a pair.
    expect(reads).toBeLessThan(160 * 82 * 10);
  });
});

describe('the plate and the barrel', () => {
  it.each<[number, string[]]>([
    [516, []],
    [516.5, ['note no-finger-room']],
    [518, ['look plate-wont-drop', 'note no-finger-room']],
    [532, ['look plate-wont-drop', 'note no-finger-room']],
    [532.5, ['stop plate-wont-drop']],
  ])('%f mm in a head of 532 with 8 mm clearance', (diameterMm, expected) => {
    const findings = checkPlate(input([middle], { diameterMm }));
    expect(codes(findings)).toEqual(expected);
    if (findings[0]?.code === 'plate-wont-drop')
      expect(findings[0].mend?.change).toEqual({ kind: 'set-plate-diameter', plateId: 'large', diameter: 'fit' });
  });

  it.each<[number, string[]]>([
    [0.4, []],
    [2, ['note crown-gap']],
    [-2, ['note crown-gap']],
    [5, ['look crown-gap']],
  ])('a crown of %f mm', (crownMm, expected) => {
    const crowned = { ...design, head: { ...design.head, crownMm } };
    const ring = opening(['edge'], sector(235, 245, 10, 80));
    expect(codes(checkPlate(input([middle, ring], { design: crowned })))).toEqual(expected);
  });

  it('a heavy blank is a note', () => {
    const thick = { ...design, stock: { ...design.stock, thicknessMm: 6 } };
    const [finding] = checkPlate(input([middle], { design: thick }));
    // pi / 4 x 0.516 m^2 x 6 mm x 7900 kg/m3
    expect(finding).toMatchObject({ code: 'heavy-plate', severity: 'note' });
    expect(finding?.sentence).toContain('9.9 kg');
  });
});

describe('a bridge below the rule', () => {
  it('stops the plate, and lights up', () => {
    const outline = square(0, 0, 1);
    const [from, to] = [
      { x: -1, y: 0 },
      { x: 1, y: 0 },
    ];
    const bridge = { id: 'b1', elementIds: ['name'], from, to, outline, widens: false, shapeId: 'name/0' };
    const thin = checkPlate(input([middle], { bridges: [{ ...bridge, widthMm: 1.2 }] }));
    expect(thin).toEqual([
      expect.objectContaining({ code: 'bridge-too-thin', severity: 'stop', place: { kind: 'ring', ring: outline } }),
    ]);
    expect(checkPlate(input([middle], { bridges: [{ ...bridge, widthMm: 1.5 }] }))).toEqual([]);
  });
});
