/**
 * How work is kept: one entry a design in IndexedDB, card and text in one transaction that compares revisions.
 *
 * - origins.ts knows which entry each step of undo belongs to. So a new design is begun with `own.begin`, never by an
 *   action alone.
 * - web/state/tab-hold.ts says which tab works on a design (Web Locks, else a channel).
 * - web/handover/link/ carries a design as the fragment of an address. dictionary-1.ts must never change; another packing
 *   is another number.
 * - web/serve/offline/worker.ts is built after the page with the list of all that was built (serve/offline-build.ts);
 *   serve/policy.mjs says what the page may load and ask.
 */

import type { Design } from '../../../geometry/design/schema.ts';
import { designText } from '../../../geometry/design/write-design.ts';
import type { PlateResult } from '../../../geometry/plate/plate.ts';
import { LONGEST_TITLE } from '../actions/agreed/set-title.ts';
import { sayRefusal } from '../../words/say/say-refusal.ts';
import { t } from '../../words/t.ts';
import type { DesignStore } from '../design-store.ts';
import type { Change } from '../change.ts';
import { createSaver, isFull } from '../saving.ts';
import type { SavingStore } from '../saving-store.ts';
import { createTabHold, type HoldParts, type TabHold } from '../tab-hold.ts';
import { newId } from './new-id.ts';
import { createOrigins, type Origin } from './origins.ts';
import type { Shelf, Written } from './shelf.ts';
import { smallPicture } from './small-picture.ts';

export interface OwnDesignsParts {
  readonly shelf: Shelf;
  readonly design: DesignStore;
  readonly saving: SavingStore;
  readonly hold: HoldParts;
  /** What to show when there is nothing to take up. */
  first(): Design;
  readonly nowMs: () => number;
  /** The design this very tab had open before it was loaded anew. */
  remembered(): string | undefined;
  remember(id: string): void;
  /** One calm sentence for the person. */
  say(sentence: string): void;
}

export interface OwnDesigns {
  /** Takes up where the last visit ended. Never throws: a store that says no is told at the first save. */
  start(): Promise<void>;
  /**
   * Another design in place of this one, which stays in the list; undo leads back to it. A ready-made beginning is
   * kept only once something is changed, all else at once.
   */
  begin(action: (before: Design) => Change, keep?: 'at-once' | 'when-changed'): void;
  /** Opens one of the list. What is wrong comes back as a sentence. */
  open(id: string): Promise<{ readonly problem: string } | undefined>;
  /** Nothing is open any more (it was put into the bin): the next newest, else a beginning. */
  openNewest(): Promise<void>;
  /** Another tab has the design: work on it here all the same, with what was saved there last. */
  takeOver(): Promise<void>;
  /** Another tab has the design: go on here with a copy. */
  copyHere(): void;
  /** Another tab has the design: only look. A change makes it a copy. */
  look(): void;
  /** The plates of the design as it now is are ready: its card gets their picture. */
  picture(plate: PlateResult): void;
  flush(): Promise<void>;
}

/** Saves the design that is worked on at each change, as one of many; knows which one it is, undo included. */
export function createOwnDesigns(parts: OwnDesignsParts): OwnDesigns {
  const { shelf, design, saving } = parts;
  const origins = createOrigins();
  const pending = new Map<Origin, Design>();
  let current: Origin = { id: newId(), revision: undefined };
  let keepAtOnce = false;
  let opening = false;
  origins.mark(design.getState().history.present, current);

  const saver = createSaver(save, (state) => saving.getState().set({ state }));
  const hold: TabHold = createTabHold(
    parts.hold,
    {
      beforeLosing: () => saver.flush(),
      lost: (id) => {
        if (id === current.id) saving.getState().set({ tab: 'elsewhere' });
      },
    },
    newId(),
  );

  design.subscribe((now, before) => {
    if (opening || now.history.present === before.history.present) return;
    const origin = origins.of(now.history) ?? current;
    if (origin !== current) {
      current = origin;
      saving.getState().set({ tab: 'mine' });
      void holdCurrent();
      if (origin.revision === undefined && !keepAtOnce) return;
    }
    if (saving.getState().tab !== 'mine') goOnWithCopy(t('keep.lookedCopy'));
    else pending.set(current, now.history.present);
    saver.schedule();
  });

  async function save(): Promise<void> {
    for (const origin of pending.keys()) {
      if ((await write(origin)).kind === 'changed') {
        const title = pending.get(origin)?.title ?? '';
        if (origin === current) goOnWithCopy(t('keep.changedElsewhere', { title }));
        else makeCopy(origin);
        await write(origin);
      }
      if (origin === current) showOpen();
    }
  }

  /** Stores the newest there is of an entry; no later change may get lost while it is written. */
  async function write(origin: Origin): Promise<Written> {
    const wanted = pending.get(origin) ?? design.getState().history.present;
    const { id, revision: after } = origin;
    const written = await shelf.write({
      id,
      title: wanted.title,
      text: designText(wanted),
      changedMs: parts.nowMs(),
      after,
    });
    if (written.kind === 'written') {
      origin.revision = written.revision;
      if (pending.get(origin) === wanted) pending.delete(origin);
    }
    return written;
  }

  /** The next save of this design makes a new entry; the one it came from is left alone. */
  function makeCopy(origin: Origin): void {
    origin.id = newId();
    origin.revision = undefined;
  }

  function goOnWithCopy(sentence: string): void {
    makeCopy(current);
    void hold.take(current.id);
    saving.getState().set({ tab: 'mine' });
    parts.say(sentence);
    const before = design.getState().history.present;
    const copy = { ...before, title: t('keep.copyTitle', { title: before.title }).slice(0, LONGEST_TITLE) };
    withoutSaving(() => design.getState().apply({ design: copy, undo: 'none' }));
    pending.set(current, copy);
  }

  /** Asks for the design as one's own; an answer that comes after another one was opened is of no interest. */
  async function holdCurrent(): Promise<void> {
    const asked = current;
    showOpen();
    const mine = await hold.take(asked.id);
    if (asked === current) saving.getState().set({ tab: mine ? 'mine' : 'elsewhere' });
  }

  function showOpen(): void {
    const openId = current.revision === undefined ? undefined : current.id;
    if (openId !== undefined) parts.remember(openId);
    saving.getState().set({ openId });
  }

  function withoutSaving(change: () => void): void {
    opening = true;
    try {
      change();
    } finally {
      opening = false;
    }
  }

  async function open(id: string): Promise<{ readonly problem: string } | undefined> {
    await saver.flush();
    const stored = await shelf.read(id);
    if (stored === undefined) return { problem: t('keep.gone') };
    const { readDesign } = await import('../../../geometry/design/read-design.ts');
    const read = readDesign(stored.text);
    if ('problem' in read) return { problem: await sayRefusal(read) };
    current = { id, revision: stored.revision };
    origins.mark(read.design, current);
    withoutSaving(() => design.getState().restart(read.design));
    await holdCurrent();
    return undefined;
  }

  async function openNewest(): Promise<void> {
    const cards = (await shelf.cards()).filter((card) => card.binnedMs === undefined);
    const asked = parts.remembered();
    const inOrder = [...cards.filter(({ id }) => id === asked), ...cards.filter(({ id }) => id !== asked)];
    for (const [i, { id }] of inOrder.entries()) {
      const trouble = await open(id);
      if (trouble === undefined) return;
      if (i === 0) parts.say(t('keep.damagedFirst', { why: trouble.problem }));
    }
    current = { id: newId(), revision: undefined };
    const first = parts.first();
    origins.mark(first, current);
    withoutSaving(() => design.getState().restart(first));
    await holdCurrent();
  }

  return {
    flush: () => saver.flush(),
    open,
    openNewest,
    async start() {
      try {
        await openNewest();
      } catch (fault) {
        saving.getState().set({ state: isFull(fault) ? 'full' : 'shut' });
      }
    },
    begin(action, keep = 'at-once') {
      const change = action(design.getState().history.present);
      const origin: Origin = { id: newId(), revision: undefined };
      // a design of its own even when the same beginning was begun before
      const begun = { ...change.design };
      origins.mark(begun, origin);
      keepAtOnce = keep === 'at-once';
      design.getState().apply({ ...change, design: begun });
      keepAtOnce = false;
    },
    async takeOver() {
      const { id } = current;
      await hold.takeOver(id);
      const trouble = await open(id);
      if (trouble) parts.say(trouble.problem);
    },
    copyHere() {
      goOnWithCopy(t('keep.copied'));
      saver.schedule();
    },
    look: () => saving.getState().set({ tab: 'looking' }),
    picture(plate) {
      if (current.revision === undefined || saving.getState().tab !== 'mine') return;
      // a picture that cannot be kept is no loss
      shelf.setPicture(current.id, smallPicture(plate)).catch(() => undefined);
    },
  };
}
