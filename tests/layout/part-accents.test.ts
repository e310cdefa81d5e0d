import { describe, expect, it } from 'vitest';
import { ringsGap } from '../../geometry/measure/distance.ts';
import { flattenOutline } from '../../geometry/measure/flatten.ts';
import { partAccents } from '../../geometry/layout/part-accents.ts';
import type { Outline } from '../../geometry/shapes.ts';

const block = (x: number, y: number, w: number, h: number): Outline => [
  { type: 'M', x, y },
  { type: 'L', x: x + w, y },
  { type: 'L', x: x + w, y: y + h },
  { type: 'L', x, y: y + h },
  { type: 'Z' },
];
const rings = (o: Outline) => flattenOutline(o, 0.01);
const LETTER = block(0, 0, 6, 10);

describe('accents of a letter', () => {
  it('are raised together until the metal between is wide enough, the letter untouched', () => {
    const parted = partAccents([...LETTER, ...block(1, 10.4, 1, 1), ...block(4, 10.8, 1, 1)], 10, 1.5);
    const [letter, left, right] = rings(parted);
    expect(rings(LETTER)[0]).toEqual(letter);
    const gap = Math.min(...[left, right].map((r) => ringsGap([letter!], [r!], 20)!.mm));
    expect(gap).toBeGreaterThanOrEqual(1.5);
    expect(gap).toBeLessThan(1.53);
    expect(right![0]!.y - left![0]!.y).toBeCloseTo(0.4, 9);
  });

  it('stay where they are when there is metal enough', () => {
    const outline = [...LETTER, ...block(1, 12, 1, 1)];
    expect(partAccents(outline, 10, 1.5)).toBe(outline);
  });

  it('are not what lies beside or inside of a letter: bridges of a stencil face, counters, the point of a !', () => {
    for (const outline of [
      [...LETTER, ...block(6.4, 0, 6, 10)],
      [...block(0, 0, 6, 4.8), ...block(0, 5.2, 6, 4.8)],
      [...LETTER, ...block(2, 2, 2, 6)],
      [...block(0, 0, 2, 2), ...block(0, 2.5, 2, 7.5)],
    ])
      expect(partAccents(outline, 10, 1.5), JSON.stringify(outline.slice(0, 2))).toBe(outline);
  });
});
