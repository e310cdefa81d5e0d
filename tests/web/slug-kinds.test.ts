import { describe, expect, it } from 'vitest';
import type { Slug } from '../../geometry/cutplan/sheet-plan.ts';
import type { NestedSheet } from '../../geometry/sheet/sheets.ts';
import { slugKinds, withIds } from '../../web/cut/folds/slug-kinds.ts';

const plate = (id: string, turnDeg: number) => ({
  id,
  wish: 'A1',
  diameterMm: 500,
  x: 300,
  y: 300,
  turnDeg,
  locked: false,
});
const sheetOf = (...plates: ReturnType<typeof plate>[]): NestedSheet => ({
  kind: 'rack',
  number: 1,
  widthMm: 2500,
  heightMm: 1250,
  gone: [],
  plates,
  usedShare: 0,
});
const slug = (of: string, tips: number, isTabbed = false): Slug => ({
  pass: `${of}/opening1`,
  plate: of,
  isTabbed,
  tips,
  lies: 1 - tips,
  drops: 0,
  riseMm: 4,
});
const planOf = (slugs: Slug[]) => ({
  widthMm: 2500,
  heightMm: 1250,
  passes: [],
  rapids: [],
  cuttingMm: 0,
  rapidMm: 0,
  notes: [],
  slugs,
});

describe('pieces that may tip', () => {
  const sheets = [sheetOf(plate('A1#1', 0), plate('A1#2', 180), plate('A1#3', 30)), sheetOf(plate('A1#4', 0))];
  it('are one kind on plates that lie alike, half a turn counted as none, on all sheets', () => {
    const kinds = slugKinds(planOf([slug('A1#1', 0.4), slug('A1#2', 0.4), slug('A1#3', 0.2)]), 0, sheets, []);
    expect(kinds.map(({ plates }) => plates)).toEqual([['A1#1', 'A1#2', 'A1#4'], ['A1#3']]);
  });
  it('leave out what hardly tips or is held with all, and keep what is held by itself', () => {
    const slugs = [slug('A1#1', 0.4, true), slug('A1#3', 0.01)];
    expect(slugKinds(planOf(slugs), 0, sheets, [])).toEqual([]);
    const [kept] = slugKinds(planOf(slugs), 0, sheets, ['A1#1/opening1']);
    expect(kept!.isHeld).toBe(true);
  });
  it('are put into a list of wishes once, and out again', () => {
    expect(withIds(['a', 'b'], ['b', 'c'], true)).toEqual(['a', 'b', 'c']);
    expect(withIds(['a', 'b', 'c'], ['b', 'c'], false)).toEqual(['a']);
  });
});
