import { describe, expect, test } from 'vitest';
import { loadFace } from '../../fonts/node-faces.ts';
import type { Face } from '../../geometry/adapters/face.ts';
import { clockAngleDeg, placePoint } from '../../geometry/measure/clock.ts';
import type { PlacedShape } from '../../geometry/layout/placed.ts';
import { FREE_RULES, codes, lay, onPlate, ringText } from './set-up.ts';

const FACES = ['stardos-stencil-700', 'playfair-display-700', 'bebas-neue-400'];

test.each(FACES)('%s: capitals fill the band, whichever way they read', async (face) => {
  for (const reads of ['outward', 'inward'] as const) {
    const { shapes } = await lay([ringText({ face, reads, text: 'HITHE' })], 500);
    for (const shape of shapes) {
      const middles = middleHeights(shape);
      // 0.74 and 0.86 of 250 mm; up to one hundredth of the height for capitals that differ by an overshoot.
      expect(middles.base).toBeCloseTo(reads === 'outward' ? 185 : 215, 3);
      expect(Math.abs(middles.head - (reads === 'outward' ? 215 : 185))).toBeLessThan(0.5);
    }
  }
});

test('the ink is centred on the middle angle', async () => {
  for (const [reads, middleDeg] of [
    ['outward', 0],
    ['inward', 180],
    ['outward', 77],
    ['inward', -33],
  ] as const) {
    const { shapes, extents } = await lay([ringText({ reads, middleDeg, text: 'Aged in oak, 2027' })]);
    const angles = shapes.flatMap((s) => onPlate(s).flat()).map((p) => from(middleDeg, clockAngleDeg(p)));
    expect(Math.min(...angles) + Math.max(...angles)).toBeCloseTo(0, 6);
    const extent = extents[0];
    if (extent?.kind !== 'sector') throw new Error('a sector was expected');
    expect(extent.endDeg - extent.startDeg).toBeCloseTo(Math.max(...angles) - Math.min(...angles), 6);
  }
});

test('turning the middle angle turns every letter with it', async () => {
  for (const reads of ['outward', 'inward'] as const) {
    const still = await lay([ringText({ reads, middleDeg: 10 })]);
    const turned = await lay([ringText({ reads, middleDeg: 147 })]);
    expect(turned.shapes.length).toBe(still.shapes.length);
    still.shapes.forEach((shape, i) => {
      const wanted = placePoint(shape.placement, { x: 0, y: 0, turnDeg: 137 });
      const got = turned.shapes[i]?.placement;
      expect(got?.x).toBeCloseTo(wanted.x, 9);
      expect(got?.y).toBeCloseTo(wanted.y, 9);
      expect(from(0, (got?.turnDeg ?? 0) - shape.placement.turnDeg - 137)).toBeCloseTo(0, 9);
    });
  }
});

test('doubling the plate doubles everything when no letter has to be moved', async () => {
  const elements = [ringText({ tracking: 0.15 })];
  const [one, two] = [await lay(elements, 260, FREE_RULES), await lay(elements, 520, FREE_RULES)];
  one.shapes.forEach((shape, i) => {
    // The em is held to 0.1 micrometre so that store keys are exact; seventeen letters may add that up.
    expect(two.shapes[i]?.placement.x).toBeCloseTo(2 * shape.placement.x, 2);
    expect(two.shapes[i]?.placement.turnDeg).toBeCloseTo(shape.placement.turnDeg, 2);
  });
});

test('inward text at the bottom reads left to right with its heads up', async () => {
  const { shapes } = await lay([ringText({ reads: 'inward', middleDeg: 180, text: 'OAK' })]);
  const xs = shapes.map((shape) => shape.placement.x);
  expect(xs).toEqual([...xs].sort((a, b) => a - b));
  const middle = shapes[1];
  if (!middle) throw new Error('three letters were expected');
  expect(Math.abs(from(0, middle.placement.turnDeg))).toBeLessThan(6);
  expect(
    Math.max(
      ...onPlate(middle)
        .flat()
        .map((p) => p.y),
    ),
  ).toBeLessThan(0);
});

test('kerning is applied on the ring, at half the height of the capitals', async () => {
  const { shapes } = await lay([ringText({ face: 'playfair-display-700', text: 'AV' })], 520, FREE_RULES);
  const face = await faceOf('playfair-display-700');
  const [a, v] = shapes.map((s) => from(0, s.placement.turnDeg));
  const emMm = (0.12 * 260) / face.capHeight;
  // -74 thousandths of the em for AV: measured with HarfBuzz, a third library.
  const apart = ((face.glyph('A')?.advance ?? 0) + (face.glyph('V')?.advance ?? 0)) / 2 - 0.074;
  expect((v ?? 0) - (a ?? 0)).toBeCloseTo(((apart * emMm) / (0.8 * 260)) * (180 / Math.PI), 3);
});

describe('a span', () => {
  test('is met by spacing alone, letters keeping their size', async () => {
    const natural = await lay([ringText({})]);
    const wide = await lay([ringText({ fit: { spanDeg: 200 } })]);
    const extent = wide.extents[0];
    expect(extent?.kind === 'sector' && extent.endDeg - extent.startDeg).toBeCloseTo(200, 6);
    expect(wide.shapes.map((s) => s.storeKey)).toEqual(natural.shapes.map((s) => s.storeKey));
    expect(codes(wide)).not.toContain('look text-squeezed');
  });

  test('of the whole ring closes evenly, the last space counting', async () => {
    const { shapes, findings } = await lay([ringText({ text: 'OAK OAK OAK ', fit: { spanDeg: 360 } })]);
    const turns = shapes.map((s) => s.placement.turnDeg);
    [0, 1, 2].forEach((k) => {
      expect(from(0, (turns[k + 3] ?? 0) - (turns[k] ?? 0))).toBeCloseTo(120, 6);
      expect(from(0, (turns[k] ?? 0) - (turns[k + 6] ?? 0))).toBeCloseTo(120, 6);
    });
    expect(findings).toEqual([]);
  });

  test('too short for the letters is said', async () => {
    expect(codes(await lay([ringText({ fit: { spanDeg: 30 } })]))).toContain('look text-squeezed');
  });
});

test('a text longer than its ring stops the plate, one that nearly closes is looked at', async () => {
  const worst = [];
  for (let words = 3; words < 20; words++) {
    const found = await lay([ringText({ text: 'BARREL '.repeat(words), inner: 0.8, outer: 0.9, face: 'oswald-700' })]);
    const long = found.findings.find((finding) => finding.code === 'text-too-long-for-ring');
    worst.push(long?.severity ?? 'fits');
    const mend = long?.mend?.change;
    if (mend?.kind === 'scale-text') expect(mend.share).toBeLessThan(1);
  }
  expect(worst.join(' ')).toMatch(/^fits( fits)*( look)?( stop)+$/);
  expect(codes(await lay([ringText({ text: 'BARREL BARREL BARREL', fit: { spanDeg: 350 } })]))).toContain(
    'look text-too-long-for-ring',
  );
});

/** Between -180 and 180. */
function from(middleDeg: number, deg: number): number {
  return ((((deg - middleDeg + 180) % 360) + 360) % 360) - 180;
}

/** Radii of a letter's foot and head, in the middle of its own axis. */
function middleHeights(shape: PlacedShape): { base: number; head: number } {
  const radii = shape.outline.flatMap((c) => (c.type === 'Z' ? [] : [c]));
  const top = Math.max(...radii.map((c) => c.y));
  const advanceMiddle = placePoint({ x: 0, y: 0 }, { ...shape.placement, x: 0, y: 0 });
  expect(advanceMiddle).toEqual({ x: 0, y: 0 });
  // The letter's up direction is the spoke through the middle of its advance: drop the origin's part along the foot.
  const up = placePoint({ x: 0, y: 1 }, { x: 0, y: 0, turnDeg: shape.placement.turnDeg });
  const base = shape.placement.x * up.x + shape.placement.y * up.y;
  return { base: Math.abs(base), head: Math.abs(base + top) };
}

async function faceOf(faceId: string): Promise<Face> {
  const outcome = await loadFace(faceId);
  if ('problem' in outcome) throw new Error(outcome.problem);
  return outcome.face;
}
