import type { Point } from '../../../geometry/shapes.ts';

/** What of a plate is cut away, coarsely: squares of a grid over its diameter, row by row from above. */
export interface CutMask {
  readonly cells: number;
  readonly cut: readonly boolean[];
}

const STEPS = 12;
const DIRECTIONS = 36;

/**
 * Where a label hides least of what is cut, of those places the one nearest to the lower rim: the middle of the label,
 * from the plate's centre, y down. All in the same unit; turnRad is how far the plate is turned, clockwise.
 */
export function placeLabel(
  mask: CutMask | undefined,
  radius: number,
  width: number,
  height: number,
  turnRad: number,
): Point {
  const reach = radius - Math.hypot(width, height) / 2;
  const usual = { x: 0, y: Math.max(0, radius - height) };
  if (!mask || reach <= 0) return usual;
  const [c, s] = [Math.cos(-turnRad), Math.sin(-turnRad)];
  let best = { at: usual, worth: Infinity };
  for (let step = 0; step <= STEPS; step++) {
    const far = (step / STEPS) * reach;
    for (let k = 0; k < (step === 0 ? 1 : DIRECTIONS); k++) {
      const rad = (k / DIRECTIONS) * 2 * Math.PI;
      const at = { x: far * Math.cos(rad), y: far * Math.sin(rad) };
      const hidden = hiddenShare(mask, radius, at, width, height, c, s);
      const worth = hidden + (0.02 * Math.hypot(at.x - usual.x, at.y - usual.y)) / radius;
      if (worth < best.worth) best = { at, worth };
    }
  }
  return best.at;
}

const ACROSS = 9;
const DOWN = 5;

function hiddenShare(
  { cells, cut }: CutMask,
  radius: number,
  at: Point,
  width: number,
  height: number,
  c: number,
  s: number,
): number {
  let hidden = 0;
  for (let i = 0; i < ACROSS; i++) {
    for (let j = 0; j < DOWN; j++) {
      const x = at.x + (i / (ACROSS - 1) - 0.5) * width;
      const y = at.y + (j / (DOWN - 1) - 0.5) * height;
      const column = Math.floor(((x * c - y * s) / radius + 1) * 0.5 * cells);
      const row = Math.floor(((x * s + y * c) / radius + 1) * 0.5 * cells);
      if (cut[row * cells + column]) hidden++;
    }
  }
  return hidden / (ACROSS * DOWN);
}
