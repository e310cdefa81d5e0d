import type { BoxRoom, Disc } from './room.ts';

/**
 * The largest rectangle, sides level and upright, that keeps out of the squares about all discs, and so can be cut off
 * straight; undefined where nothing is free. For each left side tried the squares to its right are met one after
 * another, and what they leave of the height is kept.
 */
export function freeBox(room: BoxRoom, discs: readonly Disc[]): BoxRoom | undefined {
  const squares = discs
    .map(({ x, y, r }) => ({ minX: x - r, maxX: x + r, minY: y - r, maxY: y + r }))
    .filter((s) => s.maxX > room.minX && s.minX < room.maxX && s.maxY > room.minY && s.minY < room.maxY)
    .sort((a, b) => a.minX - b.minX);
  let best: BoxRoom | undefined;
  let bestArea = 0;
  for (const left of [room.minX, ...squares.map((s) => s.maxX)]) {
    if (left >= room.maxX) continue;
    let free = [{ low: room.minY, high: room.maxY }];
    const ahead = squares.filter((s) => s.maxX > left);
    for (let i = 0; i <= ahead.length; i++) {
      const square = ahead[i];
      const right = square ? square.minX : room.maxX;
      const tallest = free.reduce((a, b) => (b.high - b.low > a.high - a.low ? b : a), { low: 0, high: 0 });
      const height = tallest.high - tallest.low;
      if (height * (room.maxX - left) <= bestArea) break;
      if (right > left && height * (right - left) > bestArea) {
        bestArea = height * (right - left);
        best = { minX: left, maxX: right, minY: tallest.low, maxY: tallest.high };
      }
      if (square) free = without(free, square.minY, square.maxY);
    }
  }
  return best;
}

interface Span {
  readonly low: number;
  readonly high: number;
}

function without(spans: readonly Span[], low: number, high: number): Span[] {
  return spans.flatMap((span) =>
    high <= span.low || low >= span.high
      ? [span]
      : [
          { low: span.low, high: Math.min(span.high, low) },
          { low: Math.max(span.low, high), high: span.high },
        ].filter((one) => one.high > one.low),
  );
}
