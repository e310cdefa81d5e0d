import { areaOfKind, countsOf, packTask, type FilledSheet, type NestTask } from './fill-sheets.ts';
import { findFreeBox } from './free-box.ts';
import { packSheet, type Packed, type PackTask } from './pack-sheet.ts';
import { areaOf, type BoxContainer } from './container.ts';
import type { SheetKind } from './sheets.ts';

/** Halvings of the strip that the last sheet's plates take: to a hundredth of the sheet and less; the rest is theirs. */
const HALVINGS = 6;

/** The same sheets, the last of them taken from the smallest fresh kind that holds its plates and is still to be had. */
export function onSmallerKind(
  sheets: readonly FilledSheet[],
  fresh: readonly SheetKind[],
  task: NestTask,
): readonly FilledSheet[] {
  const last = sheets.at(-1);
  if (!last || last.kept.length > 0 || !fresh.includes(last.kind)) return sheets;
  const smaller = fresh.filter((kind) => areaOfKind(kind) < areaOfKind(last.kind));
  for (const kind of smaller.sort((a, b) => areaOfKind(a) - areaOfKind(b))) {
    const used = sheets.filter((sheet) => sheet.kind === kind).map(({ number }) => number);
    if (used.length >= (kind.count ?? Infinity)) continue;
    const packed = packSheet(packTask(task, kind, [], countsOf(last.packed, task), true));
    if (packed.length < last.packed.length) continue;
    return [...sheets.slice(0, -1), { kind, number: Math.max(0, ...used) + 1, kept: [], packed }];
  }
  return sheets;
}

/**
 * The last sheet's plates crowded to the left or to the bottom, whichever leaves the larger rectangle free: the shortest
 * strip that still holds them, found by halving.
 */
export function compactLast(sheets: readonly FilledSheet[], task: NestTask): readonly FilledSheet[] {
  const last = sheets.at(-1);
  if (!last || last.packed.length === 0) return sheets;
  const whole = packTask(task, last.kind, last.kept, countsOf(last.packed, task), false);
  const crowded = [last.packed, ...inShortestStrip(whole, 'maxX', 'minX'), ...inShortestStrip(whole, 'maxY', 'minY')];
  const ranked = crowded.map((packed) => ({ packed, free: freeArea(whole, packed) }));
  const { packed } = ranked.reduce((a, b) => (b.free > a.free ? b : a));
  return [...sheets.slice(0, -1), { ...last, packed }];
}

function inShortestStrip(whole: PackTask, far: 'maxX' | 'maxY', start: 'minX' | 'minY'): readonly Packed[][] {
  const wanted = whole.sizes.reduce((sum, { count }) => sum + count, 0);
  let [low, high] = [whole.container[start], whole.container[far]];
  let best: readonly Packed[] | undefined;
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2;
    const packed = packSheet({ ...whole, container: { ...whole.container, [far]: middle } });
    if (packed.length === wanted) [high, best] = [middle, packed];
    else low = middle;
  }
  return best ? [[...best]] : [];
}

/** Area of the largest rectangle that stays free. */
function freeArea({ container, fixed }: PackTask, packed: readonly Packed[]): number {
  const discs = packed.filter(({ inside }) => !inside).map(({ disc }) => disc);
  const box: BoxContainer | undefined = findFreeBox(container, [...fixed, ...discs]);
  return box ? areaOf(box) : 0;
}
