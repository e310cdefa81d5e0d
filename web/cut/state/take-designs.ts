import type { Design } from '../../../geometry/design/schema.ts';
import { readOwn } from '../../state/own/read-own.ts';
import type { CutDesk } from './cut-desk.ts';
import type { OrderItem } from './cut-store.ts';
import { place } from './place-plates.ts';

/** Takes designs as the order and places their plates; false: it failed, or something newer was asked. */
export async function take(desk: CutDesk, items: readonly OrderItem[]): Promise<boolean> {
  const { set } = desk;
  const isNewest = desk.begin('take');
  if (desk.page.plates.getState().halt && items.some(({ origin }) => origin.kind === 'open')) {
    set({ items, busy: undefined, trouble: 'trouble.halted', planned: undefined });
    return false;
  }
  set({ items, busy: 'taking', trouble: undefined, planned: undefined, changed: [] });
  const made = await desk.worker.take(
    items.map(({ key, design }) => ({ key, design })),
    desk.page.book,
  );
  if (!isNewest()) return false;
  if ('problem' in made) {
    set({ busy: undefined, trouble: made.problem });
    return false;
  }
  set({ plates: made });
  return place(desk);
}

/** Takes the designs of the order as they are now; those that are gone are left out. */
export async function takeNow(desk: CutDesk): Promise<boolean> {
  const now = await designsNow(desk);
  const items = desk.get().items.flatMap((item) => {
    const design = now.get(item.key);
    return design ? [{ ...item, design }] : [];
  });
  return take(desk, items);
}

/** The designs as they are now, by key; one that is gone is absent. */
export async function designsNow(desk: CutDesk): Promise<ReadonlyMap<string, Design>> {
  const now = new Map<string, Design>();
  for (const { key, origin, design } of desk.get().items) {
    if (origin.kind === 'open') now.set(key, desk.page.design.getState().history.present);
    else if (origin.kind === 'file') now.set(key, design);
    else {
      const read = await readOwn(desk.page.list, origin.id);
      if (read && 'design' in read) now.set(key, read.design);
    }
  }
  return now;
}
