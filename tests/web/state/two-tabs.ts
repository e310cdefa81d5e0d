import 'fake-indexeddb/auto';
import { emptyDesign } from '../../../geometry/design/defaults.ts';
import type { Design } from '../../../geometry/design/schema.ts';
import { createDesignStore } from '../../../web/state/design-store.ts';
import { createBrowserShelf } from '../../../web/state/own/browser-shelf.ts';
import { createCardList } from '../../../web/state/own/card-list.ts';
import { createJournal, takeUpJournal } from '../../../web/state/own/journal.ts';
import { createOwnDesigns } from '../../../web/state/own/own-designs.ts';
import type { Shelf } from '../../../web/state/own/shelf.ts';
import { createSavingStore } from '../../../web/state/saving-store.ts';
import type { HoldParts } from '../../../web/state/tab-hold.ts';

export function named(title: string): Design {
  return { ...emptyDesign(), title };
}

let clock = 1_800_000_000_000;

/** One tab of a browser: its page's state over the store that all tabs of `name` share. */
export function openTab(
  name: string,
  hold: HoldParts,
  shelf: Shelf = createBrowserShelf(name),
  typed: Storage | undefined = undefined,
) {
  const journal = createJournal(() => typed);
  const first = named('First');
  const design = createDesignStore(first);
  const saving = createSavingStore();
  const said: string[] = [];
  let open: string | undefined;
  const nowMs = () => ++clock;
  const own = createOwnDesigns({
    shelf,
    design,
    saving,
    hold,
    nowMs,
    first: () => first,
    remembered: () => open,
    remember: (id) => (open = id),
    journal,
    say: (sentence) => said.push(sentence),
    partMissing: () => said.push('a part is missing'),
  });
  const list = createCardList({ shelf, own, design, saving, nowMs });
  return {
    own,
    list,
    shelf,
    design,
    said,
    journal,
    takeUp: () => takeUpJournal(journal, shelf, hold.locks),
    saving: () => saving.getState(),
    title: () => design.getState().history.present.title,
    /** An edit of its own. */
    call(title: string) {
      design.getState().apply({ design: { ...design.getState().history.present, title }, undo: 'step' });
    },
    titles: () => (saving.getState().cards ?? []).map((card) => card.title),
  };
}

export function pause(ms: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, ms));
}
