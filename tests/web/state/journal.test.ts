import { describe, expect, it } from 'vitest';
import { designText } from '../../../geometry/design/write-design.ts';
import { createBrowserShelf } from '../../../web/state/own/browser-shelf.ts';
import { createJournal } from '../../../web/state/own/journal.ts';
import type { Shelf } from '../../../web/state/own/shelf.ts';
import { fakeLocks } from './fake-locks.ts';
import { named, openTab, pause } from './two-tabs.ts';

/** A tab that was killed never answers again: its store does nothing more, its locks are gone. */
const alone = () => ({ locks: fakeLocks(), channel: undefined });

function fakeStorage(room = Infinity): Storage {
  const kept = new Map<string, string>();
  return {
    get length() {
      return kept.size;
    },
    key: (i: number) => [...kept.keys()][i] ?? null,
    getItem: (key: string) => kept.get(key) ?? null,
    setItem(key: string, value: string) {
      if (value.length > room) throw new DOMException('no room', 'QuotaExceededError');
      kept.set(key, value);
    },
    removeItem: (key: string) => void kept.delete(key),
    clear: () => kept.clear(),
  };
}

const NEVER = new Promise<never>(() => undefined);

describe('letters typed just before a tab is gone', () => {
  it('are noted at once, and taken up by the next visit', async () => {
    const typed = fakeStorage();
    const shelf = createBrowserShelf('j1');
    const killed = openTab('', alone(), { ...shelf, write: () => NEVER }, typed);
    await killed.own.start();
    killed.call('Cooper & Dau');
    killed.call('Cooper & Daughters');
    // no wait at all: the tab is gone
    const next = openTab('j1', alone(), shelf, typed);
    await next.takeUp();
    await next.own.start();
    expect(next.title()).toBe('Cooper & Daughters');
    expect(typed.length).toBe(0);
  });

  it('go on from the text that got through, when the tab was killed while it was saved', async () => {
    const typed = fakeStorage();
    const shelf = createBrowserShelf('j2');
    const half: Shelf = {
      ...shelf,
      write: async (w) => {
        await shelf.write(w);
        return NEVER;
      },
    };
    const killed = openTab('', alone(), half, typed);
    await killed.own.start();
    killed.call('Perry');
    void killed.own.flush();
    await pause(30);
    killed.call('Perry 2031');
    const next = openTab('j2', alone(), shelf, typed);
    await next.takeUp();
    await next.own.start();
    expect(next.title()).toBe('Perry 2031');
    expect((await shelf.cards()).length).toBe(1);
  });

  it('become a copy when another tab saved something else meanwhile', async () => {
    const typed = fakeStorage();
    const shelf = createBrowserShelf('j3');
    const text = (title: string): string => designText(named(title));
    await shelf.write({ id: 'x', title: 'One', text: text('One'), changedMs: 1, after: undefined });
    createJournal(() => typed).note({ id: 'x', title: 'Mine', text: text('Mine'), changedMs: 2, after: 1 });
    await shelf.write({ id: 'x', title: 'Theirs', text: text('Theirs'), changedMs: 3, after: 1 });
    const next = openTab('j3', alone(), shelf, typed);
    await next.takeUp();
    expect((await shelf.cards()).map(({ title }) => title).sort()).toEqual(['Mine', 'Theirs']);
  });

  it('are left alone while another tab works on them', async () => {
    const typed = fakeStorage();
    const locks = fakeLocks();
    const shelf = createBrowserShelf('j4');
    const working = openTab('', { locks, channel: undefined }, { ...shelf, write: () => NEVER }, typed);
    await working.own.start();
    working.call('Still typing');
    await pause(10);
    const other = openTab('j4', { locks, channel: undefined }, shelf, typed);
    await other.takeUp();
    expect(typed.length).toBe(1);
    expect(await shelf.cards()).toEqual([]);
  });

  it('are shown from the journal where the store takes nothing or is shut', async () => {
    const no = (): Promise<never> => Promise.reject(new DOMException('no room', 'QuotaExceededError'));
    const stored = createBrowserShelf('j5');
    for (const shelf of [
      { ...stored, write: no },
      { cards: no, read: no, write: no, setPicture: no, setBinned: no, discard: no },
    ]) {
      const typed = fakeStorage();
      const before = openTab('', alone(), shelf, typed);
      await before.own.start();
      before.call('Kept in the journal');
      const next = openTab('', alone(), shelf, typed);
      await next.takeUp();
      await next.own.start();
      expect(next.title()).toBe('Kept in the journal');
      await next.own.flush();
      expect(next.saving().state).toBe('full');
    }
  });

  it('are no reason to stop where there is no room for them, or what lies there is not ours', () => {
    const small = fakeStorage(10);
    expect(createJournal(() => small).note(note('Long'))).toBe(false);
    expect(
      createJournal(() => {
        throw new Error('shut');
      }).entries(),
    ).toEqual([]);
    const odd = fakeStorage();
    for (const [i, value] of ['', '{', '[]', '{"id":1}', 'null'].entries()) odd.setItem(`bridgehead-typed ${i}`, value);
    expect(createJournal(() => odd).entries()).toEqual([]);
  });
});

function note(title: string) {
  return { id: 'n', title, text: designText(named(title)), changedMs: 5, after: undefined };
}

it('a store that is deleted under the page is filled again with what is open', async () => {
  const shelf = createBrowserShelf('j9');
  const tab = openTab('j9', alone(), shelf, fakeStorage());
  await tab.own.start();
  tab.call('Still open');
  await tab.own.flush();
  for (const { id } of await shelf.cards()) await shelf.discard(id);
  tab.own.saveAgain();
  await tab.own.flush();
  expect((await shelf.cards()).map(({ title }) => title)).toEqual(['Still open']);
  expect(tab.said).toEqual([]);
});
