import { describe, expect, it } from 'vitest';
import { findPieces } from '../../geometry/bridges/find-pieces.ts';
import { mirrorAxis, mirroredBar, ontoAxis } from '../../geometry/bridges/mirror.ts';
import type { Ring } from '../../geometry/shapes.ts';

const SHRINK_MM = 0.5;

function rectangle(left: number, right: number, halfY: number): Ring {
  return [
    { x: left, y: -halfY },
    { x: right, y: -halfY },
    { x: right, y: halfY },
    { x: left, y: halfY },
  ];
}

/** The image about x = 0 of a bar across the right stroke of a frame whose island reaches farther left by so much. */
function imageOf(fartherMm: number, widthMm: number) {
  const island = [...rectangle(-10 - fartherMm, 10, 10)].reverse();
  const pieces = findPieces([{ outer: rectangle(-20, 20, 20), holes: [island] }], SHRINK_MM);
  const [from, to] = [
    { x: 10 - SHRINK_MM, y: 3 },
    { x: 20 + SHRINK_MM, y: 3 },
  ];
  return mirroredBar({ from, to, a: 1, b: 0, cost: 1, widthMm, widens: false, alongMm: 0 }, 0, pieces, widthMm);
}

describe('the mirror image of a bar', () => {
  it.each([
    [0, 1],
    [0.25, 1],
    [-0.25, 1],
    [0.45, 6],
    [-0.45, 6],
  ])('ends on the metal that is there: an island %d mm farther out, a bar %d mm wide', (fartherMm, widthMm) => {
    const image = imageOf(fartherMm, widthMm);
    expect(image).toMatchObject({ a: 1, b: 0 });
    expect(image!.from.x).toBeCloseTo(-10 - fartherMm + SHRINK_MM, 3);
    expect(image!.to.x).toBeCloseTo(-20 - SHRINK_MM, 3);
    expect([image!.from.y, image!.to.y]).toEqual([3, 3]);
  });

  it.each([
    [0.4, 1],
    [-0.4, 1],
    [0.8, 6],
    [-0.8, 6],
  ])('is none where the metal is elsewhere: an island %d mm farther out, a bar %d mm wide', (fartherMm, widthMm) => {
    expect(imageOf(fartherMm, widthMm)).toBeUndefined();
  });
});

describe('the axis of a letter', () => {
  const withHole = (sideMm: number, atX: number) => [
    { outer: rectangle(-5, 15, 10), holes: [[...rectangle(atX, atX + sideMm, sideMm / 2)].reverse()] },
  ];

  it('is in the middle of what is its own mirror image', () => {
    expect(mirrorAxis([{ outer: rectangle(-5, 15, 10), holes: [] }])).toBe(5);
    expect(mirrorAxis(withHole(8, 1))).toBe(5);
    expect(mirrorAxis([-20, 20].map((x) => ({ outer: rectangle(x + 1, x + 9, 4), holes: [] })))).toBe(5);
  });

  it('is none where more than a twentieth of the area differs', () => {
    // A hole at the side differs twice: 2 * 3.0^2 of 391 mm2 is 4.6 %, 2 * 3.2^2 of 389.8 mm2 is 5.3 %.
    expect(mirrorAxis(withHole(3, 8))).toBe(5);
    expect(mirrorAxis(withHole(3.2, 8))).toBeUndefined();
  });
});

describe('an upright bar beside the axis', () => {
  function moved(fromX: number, toX: number, widthMm: number) {
    const pieces = findPieces([{ outer: rectangle(-20, 20, 20), holes: [[...rectangle(-10, 10, 10)].reverse()] }], 0.5);
    const [from, to] = [
      { x: fromX, y: 10 - SHRINK_MM },
      { x: toX, y: 20 + SHRINK_MM },
    ];
    return ontoAxis({ from, to, a: 1, b: 0, cost: 1, widthMm, widens: false, alongMm: 0 }, 0, pieces, widthMm);
  }

  it.each([
    [0.4, 0.4, 1],
    [-0.4, -0.4, 1],
    [0.9, 0.9, 2],
  ])('is put on it when nearer than half its width: from %d, to %d, %d mm wide', (fromX, toX, widthMm) => {
    const bar = moved(fromX, toX, widthMm);
    expect(bar).toMatchObject({ a: 1, b: 0 });
    for (const [end, y] of [
      [bar!.from, 9.5],
      [bar!.to, 20.5],
    ] as const) {
      expect(end.x).toBeCloseTo(0, 9);
      expect(end.y).toBeCloseTo(y, 3);
    }
  });

  it.each([
    [0.6, 0.6, 1],
    [0.4, 0.6, 1],
    [-0.6, -0.4, 1],
    [1.1, 1.1, 2],
  ])('stays where it is when farther off: from %d, to %d, %d mm wide', (fromX, toX, widthMm) => {
    expect(moved(fromX, toX, widthMm)).toBeUndefined();
  });
});
