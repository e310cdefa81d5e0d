import { describe, expect, it } from 'vitest';
import { checkNest } from '../../geometry/sheet/check-nest.ts';
import { lockOnSheets, moveOnSheets, turnOnSheets } from '../../geometry/sheet/move-on-sheet.ts';
import { nest } from '../../geometry/sheet/nest.ts';
import { seeded } from '../../geometry/sheet/seeded.ts';
import type { NestedSheet } from '../../geometry/sheet/sheets.ts';
import { GAPS, ring, SHEET, wish } from './lists.ts';

const WISHES = [
  wish('a', 400, 2),
  { ...wish('o', 800, 1), waste: [{ x: 0, y: 200, radiusMm: 130 }] },
  wish('s', 200, 1),
];
const BY_HAND = { wishes: WISHES, gaps: GAPS };

const SHEETS: readonly NestedSheet[] = [
  sheet(1, [
    { ...plate('a#1', 400), x: 300, y: 300 },
    { ...plate('a#2', 400), x: 900, y: 300 },
    { ...plate('o#1', 800), x: 500, y: 1200 },
    { ...plate('s#1', 200), x: 500, y: 1400, inside: 'o#1' },
  ]),
  sheet(2, []),
];

describe('a plate moved by hand', () => {
  it('lies where there is room, and is locked', () => {
    const { sheets, faults } = moveOnSheets(SHEETS, 'a#1', 0, { x: 400, y: 2000 }, BY_HAND);
    expect(faults).toEqual([]);
    expect(found(sheets, 'a#1')).toMatchObject({ x: 400, y: 2000, locked: true });
    expect(found(SHEETS, 'a#1')).toMatchObject({ x: 300, y: 300, locked: false });
  });
  it('slides along its neighbour: straight away from it, just a gap off', () => {
    const { sheets, faults } = moveOnSheets(SHEETS, 'a#1', 0, { x: 600, y: 300 }, BY_HAND);
    expect(faults).toEqual([]);
    const { x, y } = found(sheets, 'a#1');
    expect(x).toBeCloseTo(900 - 406, 6);
    expect(y).toBeCloseTo(300, 6);
  });
  it('stops at the margin, and in the corner', () => {
    const { sheets } = moveOnSheets(SHEETS, 'a#2', 0, { x: 1300, y: -50 }, BY_HAND);
    expect(found(sheets, 'a#2')).toMatchObject({ x: 1250 - 210, y: 210 });
  });
  it('stays under the hand and says what it overlaps, where it may not slide', () => {
    const { sheets, faults } = moveOnSheets(SHEETS, 'a#1', 0, { x: 600, y: 300 }, BY_HAND, false);
    expect(found(sheets, 'a#1')).toMatchObject({ x: 600, y: 300 });
    expect(faults.map(({ code, plates }) => [code, ...plates])).toEqual([['overlap', 'a#1', 'a#2']]);
    expect(faults[0]?.sentence).toMatch(/“a#1” and “a#2” are 106 mm too near/);
  });
  it('takes along what lies inside it, to another sheet too, and both sheets are weighed anew', () => {
    const { sheets, faults } = moveOnSheets(SHEETS, 'o#1', 1, { x: 600, y: 600 }, BY_HAND);
    expect(faults).toEqual([]);
    expect(found(sheets, 's#1')).toMatchObject({ x: 600, y: 800, inside: 'o#1' });
    expect(sheets.map(({ plates }) => plates.length)).toEqual([2, 2]);
    const area = Math.PI * (400 ** 2 - 130 ** 2 + 100 ** 2);
    expect(sheets[1]?.usedShare).toBeCloseTo(area / (1250 * 2500), 9);
  });
  it('leaves the waste it lay in, and comes to lie in waste', () => {
    const out = moveOnSheets(SHEETS, 's#1', 0, { x: 1100, y: 2000 }, BY_HAND);
    expect(found(out.sheets, 's#1').inside).toBeUndefined();
    const back = moveOnSheets(out.sheets, 's#1', 0, { x: 505, y: 1400 }, BY_HAND);
    expect(found(back.sheets, 's#1')).toMatchObject({ inside: 'o#1', x: 505, y: 1400 });
    expect(back.faults).toEqual([]);
    // let go farther from the opening's middle than there is room, it is drawn back to the opening's edge
    const edge = moveOnSheets(out.sheets, 's#1', 0, { x: 540, y: 1400 }, BY_HAND);
    expect(found(edge.sheets, 's#1').x).toBeCloseTo(500 + 130 - 6 - 100, 6);
  });
  it('is turned with what lies inside it', () => {
    const sheets = turnOnSheets(SHEETS, 'o#1', 90, WISHES);
    expect(found(sheets, 'o#1')).toMatchObject({ turnDeg: 90, locked: true });
    const inner = found(sheets, 's#1');
    expect([inner.x, inner.y, inner.turnDeg]).toEqual([700, expect.closeTo(1200, 9), 90]);
    expect(checkNest(sheets, WISHES, [SHEET], GAPS)).toEqual([]);
    expect(found(turnOnSheets(sheets, 'o#1', -90, WISHES), 'o#1').turnDeg).toBe(270);
  });
  it('is locked and given back', () => {
    const locked = lockOnSheets(SHEETS, 'a#1', true);
    expect(found(locked, 'a#1').locked).toBe(true);
    expect(found(lockOnSheets(locked, 'a#1', false), 'a#1').locked).toBe(false);
    expect(moveOnSheets(SHEETS, 'nobody', 0, { x: 0, y: 0 }, BY_HAND)).toEqual({ sheets: SHEETS, faults: [] });
  });

  it('never comes to overlap, wherever it is dropped, and stays at the next nest', () => {
    const wishes = [wish('a', 508, 6), wish('b', 254, 10), ring('r', 450, 2, 50)];
    const byHand = { wishes, gaps: GAPS };
    const chance = seeded(5);
    let { sheets } = nest(wishes, [SHEET], GAPS);
    let slid = 0;
    for (let i = 0; i < 60; i++) {
      const ids = sheets.flatMap(({ plates }) => plates.map(({ id }) => id));
      const id = ids[Math.floor(chance() * ids.length)] ?? '';
      const at = { x: chance() * 1250, y: chance() * 2500 };
      const moved = moveOnSheets(sheets, id, sheets.length - 1, at, byHand);
      if (moved.faults.length > 0) continue;
      slid++;
      sheets = moved.sheets;
      expect(checkNest(sheets, wishes, [SHEET], GAPS)).toEqual([]);
    }
    expect(slid).toBeGreaterThan(10);
    const again = nest(wishes, [SHEET], GAPS, sheets);
    expect(checkNest(again.sheets, wishes, [SHEET], GAPS)).toEqual([]);
    for (const one of sheets.flatMap(({ plates }) => plates.filter(({ locked }) => locked))) {
      expect(found(again.sheets, one.id)).toEqual(one);
    }
  });
});

function found(sheets: readonly NestedSheet[], id: string) {
  const one = sheets.flatMap(({ plates }) => plates).find((p) => p.id === id);
  if (!one) throw new Error(`no plate ${id}`);
  return one;
}

function plate(id: string, diameterMm: number) {
  return { id, wish: id.split('#')[0] ?? '', diameterMm, turnDeg: 0, locked: false };
}

function sheet(number: number, plates: NestedSheet['plates']): NestedSheet {
  return { kind: SHEET.id, number, widthMm: 1250, heightMm: 2500, gone: [], plates, usedShare: 0 };
}
