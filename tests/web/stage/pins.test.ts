import { describe, expect, it } from 'vitest';
import type { Finding, Place } from '../../../geometry/findings.ts';
import { seededRandom } from '../../../web/barrel/painting/seeded.ts';
import { bareMetal } from '../../../web/design/stage/bare-metal.ts';
import { footOf, pinAt, PIN_RADIUS_PX, placePins } from '../../../web/design/stage/pins.ts';
import { toPlate, toScreen, type View } from '../../../web/design/stage/canvas/view.ts';

const view: View = { scale: 1.5, leftPx: 400, topPx: 300 };
const finding = (place: Place): Finding => ({
  code: 'test',
  severity: 'look',
  place,
  elementIds: [],
  sentence: 'Look here.',
});
const point = (x: number, y: number) => finding({ kind: 'point', at: { x, y }, radiusMm: 2 });

const everywhere = () => true;

function leastGap(pins: ReturnType<typeof placePins>): number {
  let least = Infinity;
  pins.forEach((a, i) =>
    pins.slice(i + 1).forEach((b) => {
      least = Math.min(least, Math.hypot(a.at.leftPx - b.at.leftPx, a.at.topPx - b.at.topPx));
    }),
  );
  return least;
}

describe('pins', () => {
  it('stand on their place when there is room', () => {
    const [a, b] = placePins([point(10, 20), point(-80, 5)], 200, view, everywhere);
    expect(a?.at).toEqual(toScreen(view, { x: 10, y: 20 }));
    expect(b?.at).toEqual(toScreen(view, { x: -80, y: 5 }));
  });

  it('never cover each other, even forty on one spot', () => {
    const pins = placePins(
      Array.from({ length: 40 }, () => point(0, 0)),
      200,
      view,
      everywhere,
    );
    expect(leastGap(pins.filter((p) => p.numbered))).toBeGreaterThanOrEqual(2 * PIN_RADIUS_PX);
    expect(pins.map((p) => p.index)).toEqual(Array.from({ length: 40 }, (_, n) => n));
    expect(pins[0]?.at).toEqual(pins[0]?.foot);
  });

  it('never cover each other for scattered findings of all kinds', () => {
    const random = seededRandom(42);
    const findings = Array.from({ length: 60 }, (_, n) => {
      if (n % 5 === 0) return finding({ kind: 'plate' });
      if (n % 5 === 1) return finding({ kind: 'band', innerMm: 150, outerMm: 160 });
      return point((random() - 0.5) * 150, (random() - 0.5) * 150);
    });
    const pins = placePins(findings, 200, view, everywhere);
    expect(leastGap(pins.filter((p) => p.numbered))).toBeGreaterThanOrEqual(2 * PIN_RADIUS_PX);
  });

  it('past a dozen are dots where they point to, so that they do not hide the lettering', () => {
    const pins = placePins(
      Array.from({ length: 30 }, (_, n) => point(n, 0)),
      200,
      view,
      everywhere,
    );
    expect(pins.map((p) => p.numbered)).toEqual(Array.from({ length: 30 }, (_, n) => n < 12));
    for (const pin of pins.slice(12)) expect(pin.at).toEqual(pin.foot);
  });

  it('step off an opening onto the nearest metal, and keep their foot on it', () => {
    const outer = [
      { x: -20, y: -10 },
      { x: 20, y: -10 },
      { x: 20, y: 10 },
      { x: -20, y: 10 },
    ];
    const isBare = bareMetal([{ id: 'a/0', elementIds: ['a'], word: 'a/0', region: { outer, holes: [] } }], 200);
    expect(isBare({ x: 0, y: 0 }, 2)).toBe(false);
    expect(isBare({ x: 0, y: 30 }, 10)).toBe(true);
    const [pin] = placePins([point(0, 0)], 200, view, isBare);
    expect(pin?.foot).toEqual(toScreen(view, { x: 0, y: 0 }));
    const at = pin && toPlate(view, pin.at);
    expect(at && (Math.abs(at.x) > 20 || Math.abs(at.y) > 10)).toBe(true);
    expect(at && Math.hypot(at.x, at.y)).toBeLessThan(45);
  });

  it('rather stand on an opening than far away', () => {
    const pins = placePins([point(0, 0), point(1, 0)], 200, view, () => false);
    expect(pins[0]?.at).toEqual(pins[0]?.foot);
    expect(leastGap(pins)).toBeGreaterThanOrEqual(2 * PIN_RADIUS_PX);
  });

  it('point at the middle of a ring, in a band, and at the rim for the whole plate', () => {
    const ring = [
      { x: 10, y: 10 },
      { x: 30, y: 10 },
      { x: 30, y: 20 },
    ];
    expect(footOf({ kind: 'ring', ring }, 200)).toEqual({ x: 20, y: 15 });
    const inBand = footOf({ kind: 'band', innerMm: 90, outerMm: 110 }, 200);
    expect(Math.hypot(inBand.x, inBand.y)).toBeCloseTo(100, 9);
    const atRim = footOf({ kind: 'plate' }, 200);
    expect(Math.hypot(atRim.x, atRim.y)).toBeCloseTo(200, 9);
  });

  it('are found by the nearest, within reach only', () => {
    const pins = placePins([point(0, 0), point(20, 0)], 200, view, everywhere);
    expect(pinAt(pins, { leftPx: 427, topPx: 300 }, 22)?.index).toBe(1);
    expect(pinAt(pins, { leftPx: 403, topPx: 303 }, 22)?.index).toBe(0);
    expect(pinAt(pins, { leftPx: 300, topPx: 300 }, 22)).toBeUndefined();
  });
});

describe('bare metal', () => {
  it('is what lies in the hole of an opening and outside it, and not the opening itself, however it is turned', () => {
    const around = (radius: number, turns: 1 | -1) =>
      Array.from({ length: 360 }, (_, i) => {
        const angle = (turns * i * Math.PI) / 180;
        return { x: radius * Math.cos(angle), y: radius * Math.sin(angle) };
      });
    const region = { outer: around(120, 1), holes: [around(80, -1)] };
    const isBare = bareMetal([{ id: 'a/0', elementIds: ['a'], word: 'a/0', region }], 200);
    for (let deg = 0; deg < 360; deg += 7) {
      const [x, y] = [Math.cos((deg * Math.PI) / 180), Math.sin((deg * Math.PI) / 180)];
      const bare = [60, 100, 140].map((r) => isBare({ x: r * x, y: r * y }, 3));
      expect(bare, `at ${deg} degrees`).toEqual([true, false, true]);
    }
  });
});
