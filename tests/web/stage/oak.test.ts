import { describe, expect, it } from 'vitest';
import { headBoards, oakPixels } from '../../../web/barrel/painting/oak.ts';
import { traceRegions, type PathSink } from '../../../web/barrel/painting/trace.ts';

describe('painted oak', () => {
  it('is the same wood every time, another for another seed', () => {
    const wish = { sizePx: 48, sideMm: 400, seed: 3, theme: 'light' } as const;
    expect(oakPixels(wish).rgba).toEqual(oakPixels(wish).rgba);
    expect(oakPixels({ ...wish, seed: 4 }).rgba).not.toEqual(oakPixels(wish).rgba);
  });

  it('has six to eight boards that fill the head without a gap', () => {
    for (let seed = 0; seed < 40; seed++) {
      const boards = headBoards(540, seed);
      expect(boards.length).toBeGreaterThanOrEqual(6);
      expect(boards.length).toBeLessThanOrEqual(8);
      expect(boards[0]?.startMm).toBe(0);
      expect(boards.at(-1)?.endMm).toBeCloseTo(540, 9);
      boards.slice(1).forEach((b, n) => expect(b.startMm).toBe(boards[n]?.endMm));
    }
  });

  it('is darker at night', () => {
    const mean = (theme: 'light' | 'dark') => {
      const { rgba } = oakPixels({ sizePx: 64, sideMm: 400, seed: 3, theme });
      return rgba.filter((_, i) => i % 4 === 0).reduce((a, b) => a + b, 0);
    };
    expect(mean('dark')).toBeLessThan(mean('light') * 0.8);
  });
});

describe('paths of openings', () => {
  it('draws each ring once: one move, the rest lines, one closing; broken rings not at all', () => {
    const counts = { moves: 0, lines: 0, closings: 0 };
    const sink: PathSink = {
      moveTo: () => counts.moves++,
      lineTo: () => counts.lines++,
      closePath: () => counts.closings++,
    };
    const ring = (n: number) => Array.from({ length: n }, (_, i) => ({ x: Math.cos(i), y: Math.sin(i) }));
    traceRegions(sink, [
      { outer: ring(5), holes: [ring(4), ring(3)] },
      { outer: ring(6), holes: [] },
      { outer: ring(2), holes: [] },
    ]);
    expect(counts).toEqual({ moves: 4, lines: 14, closings: 4 });
  });
});
