import { checkSheet } from '../../../geometry/sheet/check-nest.ts';
import { restOf } from '../../../geometry/sheet/sheet-use.ts';
import { startHistory } from '../../state/history.ts';
import type { CutDesk } from './cut-desk.ts';
import type { CutState } from './cut-store.ts';
import { gapsOf, kindsOf, wishesOf } from './plates-wanted.ts';

/** Places all plates of the order, locked ones where they lie; false: it failed, or something newer was asked. */
export async function place(desk: CutDesk, keepLocked = true): Promise<boolean> {
  const { get, set } = desk;
  const { book } = desk.page;
  const isNewest = desk.begin('lay');
  set({ busy: 'placing', planned: undefined, trouble: undefined, refused: undefined });
  desk.stopPlay();
  const state = get();
  const kept = keepLocked ? state.history.present.filter(({ plates }) => plates.some((p) => p.locked)) : [];
  const laid = await desk.worker
    .nest(wishesOf(state), kindsOf(state, book), gapsOf(state, book), kept)
    .catch(() => undefined);
  if (!isNewest()) return false;
  if (!laid) {
    set({ busy: undefined, trouble: 'trouble.worker' });
    return false;
  }
  const { sheets, missing, rest } = laid;
  const { sheetAt, selected } = get();
  set({
    history: startHistory(sheets),
    missing,
    rest,
    busy: undefined,
    sheetAt: Math.min(sheetAt, Math.max(0, sheets.length - 1)),
    selected: sheets.some(({ plates }) => plates.some((p) => p.id === selected)) ? selected : undefined,
    faults: [],
  });
  return true;
}

/** Takes a change by hand in, or a step of its history; one that changes nothing leaves the plan as it is. */
export function lay(desk: CutDesk, history: CutState['history'], sheetAt = desk.get().sheetAt): void {
  const { book } = desk.page;
  const state = desk.get();
  if (history === state.history) return;
  desk.begin('lay');
  const sheets = history.present;
  const [wishes, gaps] = [wishesOf(state), gapsOf(state, book)];
  desk.stopPlay();
  desk.set({
    history,
    sheetAt: Math.min(sheetAt, Math.max(0, sheets.length - 1)),
    planned: undefined,
    rest: sheets.length > 0 ? restOf(sheets.at(-1)!, sheets.length - 1, gaps) : undefined,
    busy: undefined,
    faults: sheets.flatMap((sheet, i) => checkSheet(sheet, wishes, gaps).map((fault) => ({ ...fault, sheet: i }))),
  });
}
