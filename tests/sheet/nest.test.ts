import { describe, expect, it } from 'vitest';
import { checkNest } from '../../geometry/sheet/check-nest.ts';
import { nest } from '../../geometry/sheet/nest.ts';
import { seeded } from '../../geometry/sheet/seeded.ts';
import type { Nest, NestedSheet, PlacedPlate, PlateWish, SheetKind } from '../../geometry/sheet/sheets.ts';
import { rowsHold, smallBeyondLarge } from './hexagonal-rows.ts';
import { GAPS, ring, SHEET, THOUSAND, wish } from './lists.ts';

function placed({ sheets }: Nest, id: string): readonly PlacedPlate[] {
  return sheets.flatMap(({ plates }) => plates.filter((plate) => plate.wish === id));
}

describe('a nest', () => {
  it.each([0, 4, 8])('of %i large and many small plates is no thinner than hexagonal rows', (count) => {
    const wishes = [wish('large', 508, count), wish('small', 254, 60)];
    const found = nest(wishes, [{ ...SHEET, count: 1 }], GAPS);
    expect(checkNest(found.sheets, wishes, [SHEET], GAPS, false)).toEqual([]);
    expect(placed(found, 'large')).toHaveLength(count);
    const rows = smallBeyondLarge(SHEET, { diameterMm: 508, count }, 254, GAPS);
    expect(rows).toBeDefined();
    expect(placed(found, 'small').length).toBeGreaterThanOrEqual(rows ?? Infinity);
  });

  it('takes remnants first and lays nothing where they have lost metal', () => {
    const remnant: SheetKind = {
      id: 'rest',
      widthMm: 1000,
      heightMm: 1200,
      count: 1,
      gone: [{ x: 300, y: 300, radiusMm: 254 }],
    };
    const wishes = [wish('large', 508, 4), wish('small', 254, 12)];
    const found = nest(wishes, [SHEET, remnant], GAPS);
    expect(found.sheets[0]).toMatchObject({ kind: 'rest', number: 1 });
    expect(found.sheets[0]?.plates.length).toBeGreaterThan(3);
    expect(found.sheets).toHaveLength(2);
    expect(checkNest(found.sheets, wishes, [SHEET, remnant], GAPS)).toEqual([]);
  });

  it('fills the waste inside rings, rings in rings too, and nothing that must hold', () => {
    const wishes = [ring('outer', 900, 2, 60), ring('inner', 600, 2, 60), wish('plate', 400, 2), wish('small', 100, 8)];
    const found = nest(wishes, [SHEET], GAPS);
    expect(checkNest(found.sheets, wishes, [SHEET], GAPS)).toEqual([]);
    expect(placed(found, 'inner').every(({ inside }) => inside?.startsWith('outer#'))).toBe(true);
    expect(placed(found, 'plate').every(({ inside }) => inside?.startsWith('inner#'))).toBe(true);
    expect(found.sheets).toHaveLength(1);
    for (const { usedShare } of found.sheets) expect(usedShare).toBeLessThan(1);
  });

  it('leaves locked plates where they lie, and goes around them', () => {
    const wishes = [wish('large', 508, 8), wish('small', 254, 10), ring('ring', 700, 1, 50)];
    const locked: PlacedPlate[] = [
      plate('large#7', 'large', 508, 625, 1250, { turnDeg: 30, locked: true }),
      plate('ring#1', 'ring', 700, 400, 2100, { turnDeg: 0, locked: false }),
      plate('small#2', 'small', 254, 400, 2250, { turnDeg: 0, locked: true, inside: 'ring#1' }),
      plate('large#1', 'large', 508, 300, 300, { turnDeg: 0, locked: false }),
    ];
    const kept: NestedSheet = { ...sheetOf(locked), number: 2 };
    const found = nest(wishes, [SHEET], GAPS, [kept]);
    expect(checkNest(found.sheets, wishes, [SHEET], GAPS)).toEqual([]);
    const second = found.sheets.find(({ number }) => number === 2);
    expect(second?.plates).toContainEqual(locked[0]);
    expect(second?.plates).toContainEqual({ ...locked[1], locked: true });
    expect(second?.plates).toContainEqual(locked[2]);
    // another small plate finds room in the locked ring, around the locked one
    expect(second?.plates.filter(({ inside }) => inside === 'ring#1').length).toBeGreaterThan(1);
    expect(placed(found, 'large').filter(({ id }) => id === 'large#7')).toHaveLength(1);
  });

  it('drops locked plates that nobody wants any more', () => {
    const kept = sheetOf([
      plate('gone#1', 'gone', 508, 300, 300, { turnDeg: 0, locked: true }),
      plate('a#1', 'a', 508, 900, 900, { turnDeg: 0, locked: true }),
      plate('a#2', 'a', 508, 300, 2000, { turnDeg: 0, locked: true }),
    ]);
    const wishes = [wish('a', 508, 1)];
    const found = nest(wishes, [SHEET], GAPS, [kept]);
    expect(found.sheets.flatMap(({ plates }) => plates.map(({ id }) => id))).toEqual(['a#1']);
    expect(checkNest(found.sheets, wishes, [SHEET], GAPS)).toEqual([]);
  });

  it('leaves a rectangle of the last sheet over that no plate reaches', () => {
    const wishes = [wish('a', 508, 3), wish('b', 254, 2)];
    const found = nest(wishes, [SHEET], GAPS);
    const { rest } = found;
    expect(rest?.kind).toMatchObject({ remnant: true, count: 1 });
    const [w, h] = [rest?.kind.widthMm ?? 0, rest?.kind.heightMm ?? 0];
    expect(w * h).toBeGreaterThan(0.6 * SHEET.widthMm * SHEET.heightMm);
    for (const { x, y, diameterMm } of found.sheets[0]?.plates ?? []) {
      const dx = Math.max((rest?.x ?? 0) - x, x - (rest?.x ?? 0) - w, 0);
      const dy = Math.max((rest?.y ?? 0) - y, y - (rest?.y ?? 0) - h, 0);
      expect(Math.hypot(dx, dy)).toBeGreaterThanOrEqual(diameterMm / 2 + GAPS.betweenMm - 1e-4);
    }
    // and what is left over takes plates as a sheet of its own
    const next = nest([wish('c', 508, 2)], [SHEET, ...(rest ? [rest.kind] : [])], GAPS);
    expect(next.sheets.map(({ kind }) => kind)).toEqual([rest?.kind.id]);
  });

  it('takes the fewest sheets, and for the last one a kind that is no larger than it must be', () => {
    const kinds = [SHEET, { id: 'small', widthMm: 1000, heightMm: 1250 }];
    const wishes = [wish('a', 508, 12)];
    const found = nest(wishes, kinds, GAPS);
    expect(found.sheets.map(({ kind }) => kind)).toEqual(['large', 'small']);
    expect(checkNest(found.sheets, wishes, kinds, GAPS)).toEqual([]);
  });

  it('says why a plate is on no sheet', () => {
    const wishes = [wish('wide', 1300, 2), wish('many', 508, 12), wish('half', NaN, 1), wish('many', 508, 1)];
    const found = nest(wishes, [{ ...SHEET, count: 1 }], GAPS);
    const said = (id: string) => found.missing.filter((one) => one.wish === id).map(({ sentence }) => sentence);
    expect(said('wide')[0]).toMatch(/1300 mm.*fits on no sheet.*1230 mm/);
    expect(said('many').join(' ')).toMatch(/twice.*2 × “many” found no place: the sheets are used up/);
    expect(said('half')[0]).toMatch(/makes no sense/);
    expect(nest([wish('a', 508, 1)], [], GAPS).missing[0]?.sentence).toMatch(/no sheet/);
    const holed = { ...SHEET, gone: [{ x: 625, y: 1250, radiusMm: 600 }] };
    expect(nest([wish('a', 900, 1)], [holed], GAPS).missing[0]?.sentence).toMatch(/between the holes/);
    expect(nest([], [SHEET], GAPS)).toEqual({ sheets: [], missing: [] });
  });

  it('lays a thousand plates on fewer sheets than rows of each size take', () => {
    const found = nest(THOUSAND, [SHEET], GAPS);
    expect(checkNest(found.sheets, THOUSAND, [SHEET], GAPS)).toEqual([]);
    const inRows = THOUSAND.map(({ diameterMm, quantity }) => Math.ceil(quantity / rowsHold(SHEET, diameterMm, GAPS)));
    expect(found.sheets.length).toBeLessThan(inRows.reduce((sum, count) => sum + count, 0));
  });

  it('of a series, every plate with a design of its own, is laid on as few sheets as one design', () => {
    const wishes = Array.from({ length: 300 }, (_, i) => wish(`row ${i + 1}`, 508, 1));
    const found = nest(wishes, [SHEET], GAPS);
    expect(checkNest(found.sheets, wishes, [SHEET], GAPS)).toEqual([]);
    expect(found.sheets).toHaveLength(30);
    expect(found.sheets[0]?.plates[1]).toMatchObject({ id: 'row 2#1', wish: 'row 2' });
  });

  it.each([1, 2, 3, 4, 5, 6, 7, 8])('of a list made up from seed %i is sound, the same twice, in any order', (seed) => {
    const chance = seeded(seed);
    const some = (least: number, most: number) => Math.floor(least + chance() * (most - least + 1));
    const wishes: PlateWish[] = Array.from({ length: some(1, 4) }, (_, i) =>
      chance() < 0.3
        ? ring(`r${i}`, some(300, 700), some(1, 4), some(20, 60))
        : wish(`p${i}`, some(90, 600), some(1, 14)),
    );
    const kinds: SheetKind[] = [
      { id: 'fresh', widthMm: some(800, 1500), heightMm: some(1000, 3000) },
      { id: 'old', widthMm: 900, heightMm: 1100, count: 1, gone: [{ x: some(100, 800), y: 400, radiusMm: 150 }] },
    ];
    const gaps = { betweenMm: some(0, 12), edgeMm: some(0, 20) };
    const found = nest(wishes, kinds, gaps);
    expect(found.missing).toEqual([]);
    expect(checkNest(found.sheets, wishes, kinds, gaps)).toEqual([]);
    expect(nest(wishes, kinds, gaps)).toEqual(found);
    const turnedAbout = nest([...wishes].reverse(), [...kinds].reverse(), gaps);
    expect(turnedAbout.sheets.map(({ kind }) => kind)).toEqual(found.sheets.map(({ kind }) => kind));
  });
});

function plate(
  id: string,
  of: string,
  diameterMm: number,
  x: number,
  y: number,
  rest: Pick<PlacedPlate, 'turnDeg' | 'locked' | 'inside'>,
): PlacedPlate {
  return { id, wish: of, diameterMm, x, y, ...rest };
}

function sheetOf(plates: readonly PlacedPlate[]): NestedSheet {
  return { kind: SHEET.id, number: 1, widthMm: 1250, heightMm: 2500, gone: [], plates, usedShare: 0 };
}
