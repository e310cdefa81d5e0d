import { describe, expect, it } from 'vitest';
import { measureGaps } from '../../geometry/checks/measure-gaps.ts';
import { verifyPlate } from '../../geometry/checks/verify-plate.ts';
import type { Region, Ring } from '../../geometry/shapes.ts';

const WIDTH_MM = 2;

/** Part of a ring between two radii and two angles (degrees), counter-clockwise. */
function arc(inner: number, outer: number, fromDeg: number, toDeg: number): Region {
  const along = (r: number, from: number, to: number): Ring =>
    Array.from({ length: 181 }, (_, i) => {
      const a = ((from + ((to - from) * i) / 180) * Math.PI) / 180;
      return { x: r * Math.cos(a), y: r * Math.sin(a) };
    });
  return { outer: [...along(outer, fromDeg, toDeg), ...along(inner, toDeg, fromDeg)], holes: [] };
}

function square(x: number, y: number, half: number): Region {
  return {
    outer: [
      { x: x - half, y: y - half },
      { x: x + half, y: y - half },
      { x: x + half, y: y + half },
      { x: x - half, y: y + half },
    ],
    holes: [],
  };
}

/** A cut ring of mean radius 50 with two bridges of the given width, left and right. */
function bridgedRing(widthMm: number): Region[] {
  const half = ((widthMm / 2 / 50) * 180) / Math.PI;
  return [arc(46, 54, half, 180 - half), arc(46, 54, 180 + half, 360 - half)];
}

describe('verifyPlate', () => {
  it('passes a ring on two bridges of the least width', () => {
    expect(verifyPlate(150, bridgedRing(2.2), WIDTH_MM)).toMatchObject({ onePiece: true, loose: [] });
  });

  it.each([0.5, 1, 1.5, 1.7])('refuses bridges of %d mm where 2 mm are asked', (width) => {
    const { onePiece, loose } = verifyPlate(150, bridgedRing(width), WIDTH_MM);
    expect(onePiece).toBe(false);
    expect(loose).toHaveLength(1);
  });

  it('refuses a ring with no bridge at all', () => {
    const ring: Region = { outer: arc(0, 54, 0, 359.9).outer.slice(0, 181), holes: [] };
    const hole = [...arc(0, 46, 0, 359.9).outer.slice(0, 181)].reverse();
    expect(verifyPlate(150, [{ ...ring, holes: [hole] }], WIDTH_MM).onePiece).toBe(false);
  });

  it('refuses an opening that leaves the plate', () => {
    expect(verifyPlate(150, [square(74, 0, 3)], WIDTH_MM).onePiece).toBe(false);
  });

  it('refuses metal walled in by openings that leave thin webs', () => {
    // Four strokes around a square of metal, 0.6 mm apart at the corners.
    const bar = (x: number, y: number, w: number, h: number): Region => ({
      outer: [
        { x: x - w, y: y - h },
        { x: x + w, y: y - h },
        { x: x + w, y: y + h },
        { x: x - w, y: y + h },
      ],
      holes: [],
    });
    const walls = [bar(0, 12, 9.4, 2), bar(0, -12, 9.4, 2), bar(12, 0, 2, 14), bar(-12, 0, 2, 14)];
    expect(verifyPlate(150, walls, WIDTH_MM).onePiece).toBe(false);
    const apart = [bar(0, 12, 7.5, 2), bar(0, -12, 7.5, 2), bar(12, 0, 2, 14), bar(-12, 0, 2, 14)];
    expect(verifyPlate(150, apart, WIDTH_MM).onePiece).toBe(true);
  });

  it('passes an empty plate', () => {
    expect(verifyPlate(150, [], WIDTH_MM).onePiece).toBe(true);
  });
});

describe('measureGaps', () => {
  it('measures the web between two openings and the slot in one', () => {
    const { graph } = verifyPlate(150, [square(-6, 0, 5), square(6, 0, 5), arc(40, 41.2, 20, 100)], WIDTH_MM);
    const gaps = measureGaps(graph, 4, 4);
    expect(gaps.webs[0]?.mm).toBeCloseTo(2, 6);
    // Chords of 180 to an arc of 80 degrees stand 1e-3 mm inside it.
    expect(gaps.slots[0]?.mm).toBeCloseTo(1.2, 2);
  });

  it('measures the web to the rim', () => {
    const { graph } = verifyPlate(150, [square(68, 0, 5)], WIDTH_MM);
    const web = measureGaps(graph, 4, 1).webs[0];
    // The corners at (73, +-5) are the nearest: 75 - hypot(73, 5).
    expect(web?.mm).toBeCloseTo(75 - Math.hypot(73, 5), 1);
  });
});

describe('an opening within another opening', () => {
  it('is metal that falls out', () => {
    expect(verifyPlate(150, [square(0, 0, 20), square(0, 0, 8)], WIDTH_MM).onePiece).toBe(false);
    expect(verifyPlate(150, [square(-30, 0, 20), square(20, 0, 8)], WIDTH_MM).onePiece).toBe(true);
  });
});
