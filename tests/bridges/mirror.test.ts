import { describe, expect, it } from 'vitest';
import { findPieces } from '../../geometry/bridges/find-pieces.ts';
import { mirroredBar } from '../../geometry/bridges/mirror.ts';
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
