import { describe, expect, it } from 'vitest';
import { checkNest } from '../../geometry/sheet/check-nest.ts';
import type { NestedSheet, PlacedPlate } from '../../geometry/sheet/sheets.ts';
import { GAPS, ring, SHEET, wish } from './lists.ts';

const WISHES = [wish('a', 500, 2), ring('r', 600, 1, 40), wish('s', 200, 1)];
const KINDS = [{ ...SHEET, count: 1, gone: [{ x: 1000, y: 2200, radiusMm: 100 }] }];

// by hand: all gaps of 6 and margins of 10 just kept
const A1 = plate('a#1', 'a', 500, 260, 260);
const A2 = plate('a#2', 'a', 500, 766, 260);
const R1 = plate('r#1', 'r', 600, 310, 900);
const S1: PlacedPlate = { ...plate('s#1', 's', 200, 310 + 154, 900), inside: 'r#1' };

describe('the check of plates on sheets', () => {
  it('finds nothing where gaps and margins are just kept', () => {
    expect(faults([A1, A2, R1, S1])).toEqual([]);
  });
  it.each([
    ['two plates a hair too near', [A1, { ...A2, x: 765.9 }, R1, S1], ['overlap']],
    ['a plate over the margin', [{ ...A1, x: 259.9 }, A2, R1, S1], ['edge']],
    ['a plate that is nowhere', [{ ...A1, x: NaN }, A2, R1, S1], ['edge', 'hole', 'overlap', 'overlap', 'overlap']],
    ['a plate too near a hole', [A1, { ...A2, x: 980, y: 1845 }, R1, S1], ['hole']],
    ['a plate half out of the waste', [A1, A2, R1, { ...S1, x: S1.x + 0.1 }], ['waste']],
    ['a plate in the waste of none', [A1, A2, R1, { ...S1, inside: 'r#2' }], ['overlap', 'waste']],
    ['a plate in metal that stays', [A1, A2, R1, { ...S1, x: 310, inside: 'a#1' }], ['overlap', 'waste']],
    ['a plate in the waste that does not say so', [A1, A2, R1, plate('s#1', 's', 200, 310, 900)], ['overlap']],
    ['a plate too few', [A1, R1, S1], ['count']],
    ['one plate twice', [A1, { ...A2, id: 'a#1' }, R1, S1], ['plate']],
    ['a plate of another size', [A1, { ...A2, diameterMm: 490 }, R1, S1], ['plate']],
  ])('finds %s', (_, plates, codes) => {
    expect(
      faults(plates)
        .map(({ code }) => code)
        .sort(),
    ).toEqual(codes);
  });
  it('finds a sheet that is not on the rack, one used twice, and one without its holes', () => {
    const there = sheet([A1, A2, R1, S1]);
    const codes = (sheets: readonly NestedSheet[]) => checkNest(sheets, WISHES, KINDS, GAPS).map(({ code }) => code);
    expect(codes([{ ...there, number: 2 }])).toEqual(['sheet']);
    expect(codes([{ ...there, gone: [] }])).toEqual(['sheet']);
    expect(codes([there, { ...there, plates: [] }])).toEqual(['sheet']);
  });
  it('turns waste with its plate, clockwise', () => {
    const lopsided = [wish('s', 200, 1), { ...wish('o', 800, 1), waste: [{ x: 0, y: 200, radiusMm: 120 }] }];
    const outer = { ...plate('o#1', 'o', 800, 500, 500), turnDeg: 90 };
    const look = (x: number, y: number) =>
      checkNest([sheet([outer, { ...plate('s#1', 's', 200, x, y), inside: 'o#1' }])], lopsided, KINDS, GAPS);
    expect(look(700, 500)).toEqual([]);
    expect(look(300, 500)).toHaveLength(1);
    expect(look(500, 700)).toHaveLength(1);
  });
});

function faults(plates: readonly PlacedPlate[]) {
  return checkNest([sheet(plates)], WISHES, KINDS, GAPS);
}

function sheet(plates: readonly PlacedPlate[]): NestedSheet {
  const { id, widthMm, heightMm, gone } = KINDS[0]!;
  return { kind: id, number: 1, widthMm, heightMm, gone: gone ?? [], plates, usedShare: 0 };
}

function plate(id: string, of: string, diameterMm: number, x: number, y: number): PlacedPlate {
  return { id, wish: of, diameterMm, x, y, turnDeg: 0, locked: false };
}
