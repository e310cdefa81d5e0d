import { describe, expect, it } from 'vitest';
import type { Opening } from '../../../geometry/bridges/types.ts';
import type { Extent } from '../../../geometry/layout/placed.ts';
import { clockPoint } from '../../../geometry/measure/clock.ts';
import { elementAt, extentHolds, sectorSpanDeg } from '../../../web/design/stage/carry/hit.ts';

const sector = (startDeg: number, endDeg: number, elementId = 'ring'): Extent & { kind: 'sector' } => ({
  kind: 'sector',
  elementId,
  innerMm: 80,
  outerMm: 100,
  startDeg,
  endDeg,
});

const square = (id: string, cx: number, cy: number, half: number): Opening => ({
  id: `${id}/0`,
  elementIds: [id],
  word: `${id}/0`,
  region: {
    outer: [
      { x: cx - half, y: cy - half },
      { x: cx + half, y: cy - half },
      { x: cx + half, y: cy + half },
      { x: cx - half, y: cy + half },
    ],
    holes: [],
  },
});

describe('extents', () => {
  it('knows a sector across twelve o’clock, however its angles are written', () => {
    for (const extent of [sector(-30, 40), sector(330, 40), sector(330, 400), sector(-390, -320)]) {
      expect(sectorSpanDeg(extent)).toBeCloseTo(70, 12);
      expect(extentHolds(extent, clockPoint(90, 0), 0)).toBe(true);
      expect(extentHolds(extent, clockPoint(90, 39), 0)).toBe(true);
      expect(extentHolds(extent, clockPoint(90, 331), 0)).toBe(true);
      expect(extentHolds(extent, clockPoint(90, 41), 0)).toBe(false);
      expect(extentHolds(extent, clockPoint(90, 180), 0)).toBe(false);
      expect(extentHolds(extent, clockPoint(79, 0), 0)).toBe(false);
      expect(extentHolds(extent, clockPoint(101, 0), 0)).toBe(false);
    }
  });

  it('takes a full turn for a whole ring', () => {
    const ring = sector(0, 360);
    for (let deg = 0; deg < 360; deg += 15) expect(extentHolds(ring, clockPoint(90, deg), 0)).toBe(true);
  });

  it('gives a finger the slack it asks for, along the arc as well', () => {
    const extent = sector(0, 40);
    const justPast = clockPoint(90, 40 + (2 / 90) * (180 / Math.PI));
    expect(extentHolds(extent, justPast, 1.9)).toBe(false);
    expect(extentHolds(extent, justPast, 2.1)).toBe(true);
  });

  it('turns a box clockwise', () => {
    const box: Extent = { kind: 'box', elementId: 'line', x: 10, y: 0, widthMm: 40, heightMm: 6, turnDeg: 30 };
    // Clockwise by 30 degrees: its right end points one hour past three, below the x axis.
    expect(extentHolds(box, { x: 10 + 19 * Math.cos(Math.PI / 6), y: -19 * Math.sin(Math.PI / 6) }, 0)).toBe(true);
    expect(extentHolds(box, { x: 10 + 19 * Math.cos(Math.PI / 6), y: 19 * Math.sin(Math.PI / 6) }, 0)).toBe(false);
  });
});

describe('choosing by pointing', () => {
  const inRing: Extent = { kind: 'box', elementId: 'centre', x: 0, y: 0, widthMm: 60, heightMm: 20, turnDeg: 0 };
  const disc: Extent = { kind: 'sector', elementId: 'border', innerMm: 0, outerMm: 90, startDeg: 0, endDeg: 360 };

  it('means the smaller of two that lie over each other', () => {
    expect(elementAt([disc, inRing], [], { x: 5, y: 5 }, 0)).toBe('centre');
    expect(elementAt([disc, inRing], [], { x: 5, y: 50 }, 0)).toBe('border');
    expect(elementAt([disc, inRing], [], { x: 95, y: 0 }, 0)).toBeUndefined();
  });

  it('prefers an opening that is hit, and one that is nearly hit, to any extent', () => {
    const openings = [square('bead', 20, 0, 2)];
    expect(elementAt([inRing], openings, { x: 21, y: 1 }, 0)).toBe('bead');
    expect(elementAt([inRing], openings, { x: 23, y: 0 }, 1.5)).toBe('bead');
    expect(elementAt([inRing], openings, { x: 24, y: 0 }, 1.5)).toBe('centre');
  });
});
