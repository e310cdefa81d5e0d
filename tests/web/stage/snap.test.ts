import { describe, expect, it } from 'vitest';
import type { Extent } from '../../../geometry/layout/placed.ts';
import { clockPoint } from '../../../geometry/measure/clock.ts';
import { snapBox, snapSector, snapTurn } from '../../../web/design/stage/carry/snap.ts';
import { gapTargets } from '../../../web/design/stage/carry/snap-targets.ts';

const RADIUS_MM = 250;

const box = (x: number, y: number, widthMm = 40, heightMm = 20): Extent & { kind: 'box' } => {
  return { kind: 'box', elementId: `${x},${y}`, x, y, widthMm, heightMm, turnDeg: 0 };
};

const sector = (innerMm: number, outerMm: number, startDeg: number, endDeg: number): Extent & { kind: 'sector' } => {
  return { kind: 'sector', elementId: `${innerMm}-${startDeg}`, innerMm, outerMm, startDeg, endDeg };
};

const around = (x: number, y: number, w = 40, h = 20) => ({
  minX: x - w / 2,
  maxX: x + w / 2,
  minY: y - h / 2,
  maxY: y + h / 2,
});

const space = (others: readonly Extent[], reachMm = 5) => ({ radiusMm: RADIUS_MM, others, reachMm });

describe('something free', () => {
  it('rests on both middle lines, each by itself, and not when it is too far or snapping is off', () => {
    expect(snapBox(around(3, -4), space([]))).toMatchObject({ right: -3, up: 4 });
    expect(snapBox(around(3, -60), space([]))).toMatchObject({ right: -3, up: 0 });
    expect(snapBox(around(3, -4), space([], 0))).toEqual({ right: 0, up: 0, guides: [] });
    expect(snapBox(around(80, 71), space([], 0.2))).toMatchObject({ right: 0, up: 0 });
  });

  it('lines its edges up with those of others and shows on which line', () => {
    // Left edges: 80 - 20 and 63 - 5.
    const found = snapBox(around(63, 100, 10), space([box(80, 0)]));
    expect(found.right).toBeCloseTo(2);
    expect(found.guides).toContainEqual({ kind: 'upright', x: 60 });
  });

  it('finds the middle between two neighbours, and as much metal as they have between them', () => {
    const between = snapBox(around(0.5, 33), space([box(0, 80), box(0, -20)]));
    expect(between.up).toBeCloseTo(-3);
    const bars = between.guides.filter((g) => g.kind === 'gap');
    expect(bars.map((g) => Math.abs(g.to.y - g.from.y))).toEqual([30, 30]);
    // 80 and 40 leave 20 between them; the third comes 20 below the second.
    const below = snapBox(around(0, 2), space([box(0, 80), box(0, 40)], 2.5));
    expect(below.up).toBeCloseTo(-2);
  });

  it('takes bands for neighbours where they cross the middle line', () => {
    const found = snapBox(around(0, 62), space([sector(110, 140, -60, 60), box(0, 0)]));
    // From 10 to 110, 20 high: 50 to 70.
    expect(found.up).toBeCloseTo(-2);
  });

  it('away from all lines it rests on the hours, on half ones only when quite near, and on rings', () => {
    const at = (deg: number, r: number) => {
      const p = clockPoint(r, deg);
      return around(p.x, p.y, 4, 4);
    };
    const near = snapBox(at(61, 120), space([]));
    const p = clockPoint(120, 61);
    expect(Math.atan2(p.x + near.right, p.y + near.up) * (180 / Math.PI)).toBeCloseTo(60);
    expect(near.guides).toEqual([{ kind: 'ray', deg: 60 }]);
    // 2 degrees at 120 mm are 4.2 mm: within reach of an hour, but not of half an hour.
    expect(snapBox(at(47, 120), space([]))).toMatchObject({ right: 0, up: 0 });
    expect(snapBox(at(46, 120), space([])).guides).toEqual([{ kind: 'ray', deg: 45 }]);
    const ring = snapBox(at(50, 122), space([sector(110, 130, 200, 300)]));
    expect(ring.guides).toEqual([{ kind: 'ring', radiusMm: 120 }]);
  });
});

describe('a band', () => {
  it('rests on the hours', () => {
    const found = snapSector(sector(180, 210, -29, 31), space([]), { angle: true, radius: false });
    expect(found.deg).toBeCloseTo(-1);
    expect(snapSector(sector(180, 210, -29, 31), space([], 0), { angle: true, radius: true }).deg).toBe(0);
  });

  it('finds the middle between its neighbours on the ring', () => {
    // Free from 40 to 140: 90 is the middle, and no hour's half is nearer.
    const others = [sector(180, 210, -40, 40), sector(180, 210, 140, 220)];
    const found = snapSector(sector(180, 210, 71, 111), space(others), { angle: true, radius: false });
    expect(found.deg).toBeCloseTo(-1);
    expect(found.guides.filter((g) => g.kind === 'arc').map((g) => g.toDeg - g.fromDeg)).toEqual([30, 30]);
  });

  it('takes the radius of another, or equal metal between a band inside and the rim', () => {
    const same = snapSector(sector(178, 212, 80, 100), space([sector(180, 214, -40, 40)]), {
      angle: false,
      radius: true,
    });
    expect(same.outward).toBeCloseTo(2);
    // From 150 to the rim at 250, 20 wide: 190 to 210.
    const inside = sector(120, 150, 0, 360);
    const middle = snapSector(sector(192, 212, 80, 100), space([inside]), { angle: false, radius: true });
    expect(middle.outward).toBeCloseTo(-2);
    expect(middle.guides).toHaveLength(2);
  });
});

describe('turning and gaps', () => {
  it('a turn rests on every 15 degrees and along its ring', () => {
    expect(snapTurn(43.5, undefined, 2.5)).toBeCloseTo(45);
    expect(snapTurn(38, undefined, 2.5)).toBe(38);
    expect(snapTurn(37, 36.5, 2.5)).toBeCloseTo(36.5);
    expect(snapTurn(-141, 37, 2.5)).toBeCloseTo(-143);
    expect(snapTurn(359, undefined, 2.5)).toBeCloseTo(360);
  });

  it('there is no equal gap where there is no room', () => {
    const others = [
      { from: 0, to: 10 },
      { from: 25, to: 30 },
    ];
    expect(gapTargets({ from: 11, to: 31 }, others)).toEqual([]);
    const [fits] = gapTargets({ from: 12, to: 17 }, others);
    expect(fits?.by).toBeCloseTo(3);
  });
});
