import type { Design } from '../../../geometry/design/schema.ts';
import { designText } from '../../../geometry/design/write-design.ts';
import { LONGEST_TITLE, setTitle } from '../actions/agreed/set-title.ts';
import { sayRefusal } from '../../words/say/say-refusal.ts';
import { t } from '../../words/t.ts';
import type { DesignStore } from '../design-store.ts';
import type { SavingStore } from '../saving-store.ts';
import type { Card } from '../card.ts';
import { packAll, takeInAll, type TakenIn } from './all-designs.ts';
import { newId } from './new-id.ts';
import type { OwnDesigns } from './own-designs.ts';
import type { Shelf } from './shelf.ts';

/** How long a deleted design waits in the bin. */
export const BIN_DAYS = 30;
const DAY_MS = 86_400_000;

export type Done = { readonly problem: string } | undefined;

/** What the list of own designs can do. What goes wrong comes back as a sentence; nothing is lost by it. */
export interface CardList {
  /** Reads the list anew, empties out of the bin what has lain there long, and looks which designs can be read. */
  refresh(): Promise<Done>;
  rename(id: string, title: string): Promise<Done>;
  duplicate(id: string): Promise<Done>;
  bin(id: string): Promise<Done>;
  putBack(id: string): Promise<Done>;
  discard(id: string): Promise<Done>;
  /** The text as it is stored, to be saved as a file. */
  textOf(id: string): Promise<string | undefined>;
  /** All that are not in the bin, as the text of one file. */
  packAll(): Promise<{ readonly text: string; readonly count: number } | { readonly problem: string }>;
  /** Adds the designs of such a file; undefined: it is none. */
  takeIn(text: string): Promise<TakenIn | { readonly problem: string } | undefined>;
}

interface CardListParts {
  readonly shelf: Shelf;
  readonly own: OwnDesigns;
  readonly design: DesignStore;
  readonly saving: SavingStore;
  readonly nowMs: () => number;
}

export function createCardList({ shelf, own, design, saving, nowMs }: CardListParts): CardList {
  /** By id and revision: what was read once need not be read again. */
  const readable = new Map<string, boolean>();

  async function refresh(): Promise<Done> {
    return tried(async () => {
      await own.flush();
      const { readDesign } = await import('../../../geometry/design/read-design.ts');
      const longAgo = nowMs() - BIN_DAYS * DAY_MS;
      for (const card of await shelf.cards()) {
        if (card.binnedMs !== undefined && card.binnedMs < longAgo) await shelf.discard(card.id);
      }
      const cards = await shelf.cards();
      saving.getState().set({ cards: cards.map(judged) });
      // one by one, the list already in sight
      for (const card of cards) {
        const key = keyOf(card);
        if (card.damaged || readable.has(key)) continue;
        const stored = await shelf.read(card.id);
        readable.set(key, stored !== undefined && 'design' in readDesign(stored.text));
        if (!readable.get(key)) saving.getState().set({ cards: cards.map(judged) });
      }
    });
  }

  function judged(card: Card): Card {
    return readable.get(keyOf(card)) === false ? { ...card, damaged: true } : card;
  }

  async function tried(work: () => Promise<Done | void>): Promise<Done> {
    try {
      return (await work()) ?? undefined;
    } catch {
      return { problem: t('keep.storeTrouble') };
    }
  }

  /** The design as it is stored, and the revision it has. */
  async function readStored(
    id: string,
  ): Promise<{ readonly design: Design; readonly revision: number } | { readonly problem: string }> {
    await own.flush();
    const stored = await shelf.read(id);
    if (stored === undefined) return { problem: t('keep.gone') };
    const { readDesign } = await import('../../../geometry/design/read-design.ts');
    const read = readDesign(stored.text);
    return 'design' in read ? { design: read.design, revision: stored.revision } : { problem: await sayRefusal(read) };
  }

  function isOpen(id: string): boolean {
    return saving.getState().openId === id;
  }

  const changing = (work: () => Promise<Done | void>) => tried(async () => (await work()) ?? (await refresh()));

  return {
    refresh,
    rename: (id, title) =>
      changing(async () => {
        if (isOpen(id)) {
          const state = design.getState();
          state.apply(setTitle(state.history.present, title));
          state.closeMerge();
          return;
        }
        const stored = await readStored(id);
        if ('problem' in stored) return stored;
        const { design: now } = setTitle(stored.design, title);
        const written = await shelf.write({
          id,
          title: now.title,
          text: designText(now),
          changedMs: nowMs(),
          after: stored.revision,
        });
        return written.kind === 'changed' ? { problem: t('keep.renamedMeanwhile') } : undefined;
      }),
    duplicate: (id) =>
      changing(async () => {
        const stored = await readStored(id);
        if ('problem' in stored) return stored;
        const title = t('keep.copyTitle', { title: stored.design.title }).slice(0, LONGEST_TITLE);
        // nobody approved or ordered the copy, and no answer is meant for it
        const { approval: _, offer: __, home: ___, ...bare } = stored.design;
        const { design: copy } = setTitle(bare, title);
        const picture = saving.getState().cards?.find((card) => card.id === id)?.picture;
        const to = newId();
        await shelf.write({ id: to, title, text: designText(copy), changedMs: nowMs(), after: undefined });
        if (picture) await shelf.setPicture(to, picture);
        return undefined;
      }),
    bin: (id) =>
      changing(async () => {
        const open = isOpen(id);
        if (open) await own.flush();
        await shelf.setBinned(id, nowMs());
        if (open) await own.openNewest();
      }),
    putBack: (id) => changing(() => shelf.setBinned(id, undefined)),
    discard: (id) => changing(() => shelf.discard(id)),
    async packAll() {
      try {
        await own.flush();
        return await packAll(shelf);
      } catch {
        return { problem: t('keep.storeTrouble') };
      }
    },
    async takeIn(text) {
      try {
        const done = await takeInAll(text, shelf);
        if (done) await refresh();
        return done;
      } catch {
        return { problem: t('keep.storeTrouble') };
      }
    },
    async textOf(id) {
      try {
        return (await shelf.read(id))?.text;
      } catch {
        return undefined;
      }
    },
  };
}

function keyOf(card: Card): string {
  return `${card.id} ${card.revision}`;
}
