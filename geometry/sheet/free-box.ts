import type { BoxContainer, Disc } from './container.ts';

/**
 * The largest rectangle, sides level and upright, that keeps out of the squares about all discs, and so can be cut off
 * straight; undefined where nothing is free. For each left side tried the squares to its right are met one after
 * another, and what they leave of the height is kept.
 */
export function findFreeBox(container: BoxContainer, discs: readonly Disc[]): BoxContainer | undefined {
  const squares = discs
    .map(({ x, y, r }) => ({ minX: x - r, maxX: x + r, minY: y - r, maxY: y + r }))
    .filter(
      (s) => s.maxX > container.minX && s.minX < container.maxX && s.maxY > container.minY && s.minY < container.maxY,
    )
    .sort((a, b) => a.minX - b.minX);
  let best: BoxContainer | undefined;
  let bestArea = 0;
  for (const left of [container.minX, ...squares.map((s) => s.maxX)]) {
    if (left >= container.maxX) continue;
    let free = [{ low: container.minY, high: container.maxY }];
    const ahead = squares.filter((s) => s.maxX > left);
    for (let i = 0; i <= ahead.length; i++) {
      const square = ahead[i];
      const right = square ? square.minX : container.maxX;
      const tallest = free.reduce((a, b) => (b.high - b.low > a.high - a.low ? b : a), { low: 0, high: 0 });
      const height = tallest.high - tallest.low;
      if (height * (container.maxX - left) <= bestArea) break;
      if (right > left && height * (right - left) > bestArea) {
        bestArea = height * (right - left);
        best = { minX: left, maxX: right, minY: tallest.low, maxY: tallest.high };
      }
      if (square) free = subtractSpan(free, square.minY, square.maxY);
    }
  }
  return best;
}

interface Span {
  readonly low: number;
  readonly high: number;
}

function subtractSpan(spans: readonly Span[], low: number, high: number): Span[] {
  return spans.flatMap((span) =>
    high <= span.low || low >= span.high
      ? [span]
      : [
          { low: span.low, high: Math.min(span.high, low) },
          { low: Math.max(span.low, high), high: span.high },
        ].filter((one) => one.high > one.low),
  );
}
