import { describe, expect, test } from 'vitest';
import type { Grey } from '../../../geometry/artwork/grey.ts';
import { trace } from '../../../geometry/artwork/trace.ts';
import { flattenOutline } from '../../../geometry/measure/flatten.ts';
import { readPathData } from '../../../geometry/measure/path-data.ts';

/** A picture by a formula: 0 black to 255 white, four samples to a pixel each way. */
function picture(width: number, height: number, inside: (x: number, y: number) => boolean): Grey {
  const values = new Uint8Array(width * height);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      let hits = 0;
      for (let i = 0; i < 16; i++) if (inside(x + ((i % 4) + 0.5) / 4, y + ((i >> 2) + 0.5) / 4)) hits++;
      values[y * width + x] = Math.round(255 * (1 - hits / 16));
    }
  return { width, height, values };
}

const WISH = { threshold: 0.5, smoothing: 0.2, cut: 'dark' } as const;

function drawn(grey: Grey, wish: Parameters<typeof trace>[1] = WISH) {
  const done = trace(grey, wish);
  if ('trouble' in done) throw new Error(done.trouble);
  const read = readPathData(done.path);
  if ('problem' in read) throw new Error(read.problem.english);
  const rings = flattenOutline(read.outline, 1e-5);
  const area = (ring: (typeof rings)[number]): number =>
    ring.reduce((a, p, i) => a + (p.x * ring[(i + 1) % ring.length]!.y - ring[(i + 1) % ring.length]!.x * p.y) / 2, 0);
  return {
    ...done,
    rings,
    area: rings.reduce((s, r) => s + area(r), 0) * done.height ** 2,
    commands: read.outline.length,
  };
}

describe('traced pictures', () => {
  const disc = picture(200, 160, (x, y) => Math.hypot(x - 100, y - 80) < 60);

  test('a disc comes back as a disc: its area, nowhere half a pixel off its circle, in a few curves', () => {
    const done = drawn(disc);
    expect(done.area / (Math.PI * 3600)).toBeCloseTo(1, 2);
    for (const p of done.rings[0]!) expect(Math.abs(Math.hypot(p.x, p.y) * done.height - 60)).toBeLessThan(0.5);
    expect(done.commands).toBeLessThan(16);
  });

  test('a ring keeps its hole, a square its corners', () => {
    const ring = drawn(picture(200, 200, (x, y) => Math.abs(Math.hypot(x - 100, y - 100) - 60) < 20));
    expect(ring.rings).toHaveLength(2);
    expect(ring.area / (Math.PI * (6400 - 1600))).toBeCloseTo(1, 2);
    const square = drawn(picture(200, 200, (x, y) => Math.abs(x - 100) < 60 && Math.abs(y - 100) < 60));
    expect(square.area / 14400).toBeCloseTo(1, 2);
    expect(square.commands).toBeLessThan(20);
  });

  test('light can be cut instead, up to the edge of the picture', () => {
    expect(drawn(disc, { ...WISH, cut: 'light' }).area / (200 * 160 - Math.PI * 3600)).toBeCloseTo(1, 1);
  });

  test('the threshold moves the edge of a soft picture', () => {
    const soft: Grey = {
      width: 100,
      height: 100,
      values: Uint8Array.from({ length: 10_000 }, (_, i) => Math.min(255, 4 * Math.abs((i % 100) - 50))),
    };
    const width = (threshold: number): number => drawn(soft, { ...WISH, threshold }).width;
    expect(width(0.6)).toBeGreaterThan(width(0.3) * 1.5);
  });

  test('specks are left out and counted', () => {
    const spotted = picture(
      300,
      300,
      (x, y) => Math.hypot(x - 150, y - 150) < 80 || (x < 20 && Math.hypot((x % 10) - 5, (y % 10) - 5) < 1.3),
    );
    const done = drawn(spotted);
    expect(done.openings).toBe(1);
    expect(done.specks).toBeGreaterThan(10);
  });

  test('nothing dark is nothing', () => {
    expect(
      trace(
        picture(50, 50, () => false),
        WISH,
      ),
    ).toEqual({ trouble: 'nothing' });
    expect(
      trace(
        picture(1, 1, () => true),
        WISH,
      ),
    ).toEqual({ trouble: 'flat' });
  });
});
