import { settingsFor } from '../../../geometry/cutplan/cost/settings-for.ts';
import type { PlanJob } from '../../worker/cut-api.ts';
import type { CutDesk } from './cut-desk.ts';
import { gapsOf, stockOf } from './plates-wanted.ts';

/** Plans the sheet looked at, where the order can be planned. */
export async function plan(desk: CutDesk): Promise<void> {
  const { get, set } = desk;
  const { book } = desk.page;
  const state = get();
  const stock = stockOf(state);
  if (!stock || state.history.present.length === 0 || state.faults.length > 0) return;
  const settings = settingsFor(book, stock);
  if ('problem' in settings) {
    set({ refused: settings });
    return;
  }
  const job: PlanJob = { sheets: state.history.present, stock, gaps: gapsOf(state, book), wishes: state.wishes };
  await planSheetOf(desk, job, state.sheetAt);
}

/** One sheet of a job; what was planned of the same job before stays. */
export async function planSheetOf(desk: CutDesk, job: PlanJob, sheetAt: number): Promise<void> {
  const { get, set } = desk;
  const isNewest = desk.begin('lay');
  set({ busy: 'planning', trouble: undefined, refused: undefined });
  const planned = await desk.worker.plan(job, sheetAt).catch(() => undefined);
  if (!isNewest()) return;
  const [bite] = planned?.bites ?? [];
  if (bite) {
    set({ busy: undefined, planned: undefined, refused: { problem: bite.sentence, words: bite.words } });
    return;
  }
  const before = get().planned;
  set({
    busy: undefined,
    ...(planned
      ? { planned: { job, sheets: { ...(before?.job === job ? before.sheets : {}), [sheetAt]: planned } } }
      : { trouble: 'trouble.worker' as const }),
  });
}
