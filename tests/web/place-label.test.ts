import { describe, expect, it } from 'vitest';
import { type CutMask, placeLabel } from '../../web/cut/stage/place-label.ts';

const CELLS = 96;
/** A plate whose cut part is told by a rule over x and y, y down, in shares of the radius. */
function mask(isCut: (x: number, y: number) => boolean): CutMask {
  const at = (i: number) => ((i + 0.5) / CELLS) * 2 - 1;
  return {
    cells: CELLS,
    cut: Array.from({ length: CELLS * CELLS }, (_, i) => isCut(at(i % CELLS), at(Math.floor(i / CELLS)))),
  };
}

describe('the label of a plate', () => {
  it('lies at the lower rim of a plate that is whole', () => {
    const { x, y } = placeLabel(
      mask(() => false),
      100,
      30,
      16,
      0,
    );
    expect(x).toBeCloseTo(0, 6);
    expect(y).toBeGreaterThan(70);
  });
  it('keeps off what is cut, however the plate is turned', () => {
    // All is cut but one window to the right of the middle.
    const window = mask((x, y) => !(x > 0.2 && x < 0.8 && Math.abs(y) < 0.15));
    const level = placeLabel(window, 100, 30, 16, 0);
    expect(level.x).toBeGreaterThan(30);
    expect(Math.abs(level.y)).toBeLessThan(10);
    // Turned clockwise by a quarter, what was right is below: the label stays level, so it stands across the window.
    const turned = placeLabel(window, 100, 20, 16, Math.PI / 2);
    expect(Math.abs(turned.x)).toBeLessThan(10);
    expect(turned.y).toBeGreaterThan(30);
  });
  it('is at the rim where the plate is too small for it', () => {
    expect(
      placeLabel(
        mask(() => true),
        10,
        60,
        16,
        0,
      ),
    ).toEqual({ x: 0, y: 0 });
  });
});
