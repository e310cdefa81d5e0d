import { describe, expect, it } from 'vitest';
import { amountOf, isTooMuch } from '../../geometry/design/amount.ts';
import { emptyDesign, newBorder, newRingText } from '../../geometry/design/defaults.ts';
import { MOST_LINES, MOST_SHAPES } from '../../geometry/design/limits.ts';
import type { Artwork, DesignElement } from '../../geometry/design/schema.ts';
import { amountFault } from '../../geometry/design/work-fault.ts';

const ring = { ...newRingText('r', 'cinzel-700'), text: 'ABCDE' };
const artwork = (copies: number): DesignElement =>
  ({
    kind: 'artwork',
    id: `a${copies}`,
    path: 'M0 0L1 0L1 1Q2 2 3 3C1 1 2 2 3 3Z',
    around: copies === 1 ? 'once' : { count: copies, radius: 0.5 },
  }) as unknown as Artwork;

describe('how much there is to work out', () => {
  it('counts letters, dashes, copies, and the commands of each copy', () => {
    expect(amountOf([])).toEqual({ shapes: 0, lines: 0 });
    expect(amountOf([ring])).toEqual({ shapes: 5, lines: 0 });
    expect(amountOf([ring, artwork(1)])).toEqual({ shapes: 6, lines: 6 });
    expect(amountOf([artwork(24), artwork(1)])).toEqual({ shapes: 25, lines: 150 });
    expect(amountOf([newBorder('b')]).shapes).toBeGreaterThan(0);
  });

  it('is too much only beyond the limit, and then a sentence says what to do', () => {
    expect(isTooMuch({ shapes: MOST_SHAPES, lines: MOST_LINES })).toBe(false);
    expect(isTooMuch({ shapes: MOST_SHAPES + 1, lines: 0 })).toBe(true);
    expect(isTooMuch({ shapes: 0, lines: MOST_LINES + 1 })).toBe(true);
    const letters = { ...ring, text: 'A'.repeat(200) };
    const full = Array.from({ length: 100 }, () => letters);
    expect(amountFault(full)).toBeUndefined();
    expect(amountFault([...full, ring])?.problem).toMatch(/20,?005 shapes.*Remove elements/);
    expect(amountFault(emptyDesign().elements)).toBeUndefined();
  });
});
