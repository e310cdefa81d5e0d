/**
 * How work is kept: one entry a design in IndexedDB, card and text in one transaction that compares revisions.
 *
 * - journal.ts notes each letter at once, since a killed tab cannot wait for a database; taken up at the next start.
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
import { isMissingPart } from '../missing-part.ts';
import { createSaver, isFull } from '../saving.ts';
import type { SavingStore } from '../saving-store.ts';
import { createTabHold, type HoldParts, type TabHold } from '../tab-hold.ts';
import type { Journal } from './journal.ts';
import { newId } from './new-id.ts';
import { createOrigins, type Origin } from './origins.ts';
import type { Shelf, Written } from './shelf.ts';
import { smallPicture } from './small-picture.ts';

/** A note that takes longer is not made with each letter. */
const SLOW_NOTE_MS = 8;
const NOTE_AGAIN_MS = 60;

export interface OwnDesignsParts {
  readonly shelf: Shelf;
  readonly design: DesignStore;
  readonly saving: SavingStore;
  readonly hold: HoldParts;
  /** Keeps letters until the store has them. */
  readonly journal: Journal;
  /** What to show when there is nothing to take up. */
  first(): Design;
  readonly nowMs: () => number;
  /** The design this very tab had open before it was loaded anew. */
  remembered(): string | undefined;
  remember(id: string): void;
  /** One calm sentence for the person. */
  say(sentence: string): void;
  /** Something could not be done since a part of the page cannot be loaded. */
  partMissing(): void;
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
  /** The page may be gone in a moment: notes what is not stored yet, without waiting for anything. */
  note(): void;
  /** The store was deleted under the page: what is open is saved into the next one. */
  saveAgain(): void;
  /** The entry that the open design is, or will be, saved to. */
  id(): string;
}

/** Saves the design that is worked on at each change, as one of many; knows which one it is, undo included. */
export function createOwnDesigns(parts: OwnDesignsParts): OwnDesigns {
  const { shelf, design, saving, journal } = parts;
  const origins = createOrigins();
  const pending = new Map<Origin, Design>();
  let current: Origin = { id: newId(), revision: undefined };
  let keepAtOnce = false;
  let opening = false;
  let trouble = false;
  let writing: { readonly origin: Origin; readonly changedMs: number } | undefined;
  let noting: ReturnType<typeof setTimeout> | undefined;
  origins.mark(design.getState().history.present, current);

  const saver = createSaver(save, (state) => {
    // what could not be saved stays told until it is
    if (state === 'saving' && trouble) return;
    if (state === 'saved' && trouble) parts.say(t('keep.savedAgain'));
    trouble = state === 'full' || state === 'shut';
    saving.getState().set({ state });
  });
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
    noteSoon();
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
    const changedMs = parts.nowMs();
    writing = { origin, changedMs };
    const text = designText(wanted);
    const written = await shelf.write({ id, title: wanted.title, text, changedMs, after }).finally(() => {
      writing = undefined;
    });
    if (written.kind === 'written') {
      origin.revision = written.revision;
      if (pending.get(origin) === wanted) {
        pending.delete(origin);
        journal.forget(id);
      } else note(origin);
    }
    return written;
  }

  /** False where it could not be noted. */
  function note(origin: Origin): boolean {
    const wanted = pending.get(origin);
    if (!wanted) return true;
    const { id, revision: after } = origin;
    const saving = writing?.origin === origin ? writing.changedMs : undefined;
    return journal.note({ id, title: wanted.title, text: designText(wanted), changedMs: parts.nowMs(), after, saving });
  }

  function noteAll(): void {
    clearTimeout(noting);
    noting = undefined;
    // without a note only the store is left, and it takes its time
    if ([...pending.keys()].filter((origin) => !note(origin)).length > 0) void saver.flush();
  }

  /** With each letter; where a design is so large that this takes time, as often as the eye sees. */
  function noteSoon(): void {
    if (noting !== undefined) return;
    const begun = performance.now();
    noteAll();
    if (performance.now() - begun > SLOW_NOTE_MS) noting = setTimeout(noteAll, NOTE_AGAIN_MS);
  }

  /** The next save of this design makes a new entry; the one it came from is left alone. */
  function makeCopy(origin: Origin): void {
    journal.forget(origin.id);
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
    note(current);
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
    if (saving.getState().tab === 'mine') goOnFromJournal(readDesign);
    return undefined;
  }

  /** Letters that the store would not take so far. */
  function goOnFromJournal(readDesign: (text: string) => { readonly design: Design } | object): void {
    const typed = journal.entries().find(({ id, after }) => id === current.id && after === current.revision);
    const read = typed && readDesign(typed.text);
    if (!read || !('design' in read)) return;
    origins.mark(read.design, current);
    withoutSaving(() => design.getState().restart(read.design));
    pending.set(current, read.design);
    saver.schedule();
  }

  /** A design that no store has ever taken. */
  async function openFromJournal(): Promise<boolean> {
    const [typed] = journal.entries();
    if (!typed) return false;
    const { readDesign } = await import('../../../geometry/design/read-design.ts');
    const read = readDesign(typed.text);
    if ('problem' in read) return false;
    current = { id: typed.id, revision: typed.after };
    origins.mark(read.design, current);
    withoutSaving(() => design.getState().restart(read.design));
    await holdCurrent();
    pending.set(current, read.design);
    saver.schedule();
    return true;
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
    if (inOrder.length === 0 && (await openFromJournal())) return;
    current = { id: newId(), revision: undefined };
    const first = parts.first();
    origins.mark(first, current);
    withoutSaving(() => design.getState().restart(first));
    await holdCurrent();
  }

  return {
    flush: () => saver.flush(),
    note: noteAll,
    id: () => current.id,
    saveAgain() {
      if (current.revision === undefined) return;
      current.revision = undefined;
      pending.set(current, design.getState().history.present);
      noteAll();
      saver.schedule();
    },
    open,
    openNewest,
    async start() {
      try {
        await openNewest();
      } catch (fault) {
        if (isMissingPart(fault)) return parts.partMissing();
        saving.getState().set({ state: isFull(fault) ? 'full' : 'shut' });
        await openFromJournal().catch(() => undefined);
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
