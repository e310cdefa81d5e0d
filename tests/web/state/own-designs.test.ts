import { describe, expect, it } from 'vitest';
import { designText } from '../../../geometry/design/write-design.ts';
import { createBrowserShelf } from '../../../web/state/own/browser-shelf.ts';
import type { Shelf } from '../../../web/state/own/shelf.ts';
import { takeOverOld } from '../../../web/state/own/take-over-old.ts';
import { fakeLocks } from './fake-locks.ts';
import { named, openTab } from './two-tabs.ts';

const alone = () => ({ locks: fakeLocks(), channel: undefined });

describe('own designs', () => {
  it('saves the first edit as an entry, and the next visit takes it up', async () => {
    const tab = openTab('a1', alone());
    await tab.own.start();
    expect(await tab.shelf.cards()).toEqual([]);
    tab.call('Quiet cellar');
    await tab.own.flush();
    const next = openTab('a1', alone());
    await next.own.start();
    expect(next.title()).toBe('Quiet cellar');
    expect(next.saving().openId).toBe(tab.saving().openId);
  });

  it('keeps the old design when a new one is begun, and undo leads back into it', async () => {
    const tab = openTab('a2', alone());
    await tab.own.start();
    tab.call('Old');
    await tab.own.flush();
    tab.own.begin(() => ({ design: named('New'), undo: 'step' }));
    await tab.own.flush();
    tab.call('New, changed');
    await tab.own.flush();
    await tab.list.refresh();
    expect(tab.titles()).toEqual(['New, changed', 'Old']);

    tab.design.getState().undo();
    tab.design.getState().undo();
    expect(tab.title()).toBe('Old');
    tab.call('Old, changed');
    await tab.own.flush();
    await tab.list.refresh();
    // what was begun keeps its last saved state; the old one has the new edit
    expect([...tab.titles()].sort()).toEqual(['New', 'Old, changed'].sort());
  });

  it('does not fill the list with beginnings that were only looked at', async () => {
    const tab = openTab('a3', alone());
    await tab.own.start();
    for (const title of ['One', 'Two', 'Three']) {
      tab.own.begin(() => ({ design: named(title), undo: 'step' }), 'when-changed');
    }
    await tab.own.flush();
    expect(await tab.shelf.cards()).toEqual([]);
    tab.call('Three, mine');
    await tab.own.flush();
    expect((await tab.shelf.cards()).map((c) => c.title)).toEqual(['Three, mine']);
  });

  it('renames, duplicates, bins, puts back and discards', async () => {
    const tab = openTab('a4', alone());
    await tab.own.start();
    for (const title of ['A', 'B']) {
      tab.own.begin(() => ({ design: named(title), undo: 'step' }));
      await tab.own.flush();
    }
    await tab.list.refresh();
    const [b, a] = tab.saving().cards ?? [];
    await tab.list.rename(a?.id ?? '', 'A2');
    await tab.list.duplicate(b?.id ?? '');
    expect([...tab.titles()].sort()).toEqual(['A2', 'B', 'B (copy)']);
    await tab.list.bin(b?.id ?? '');
    expect(tab.title(), 'the open one was put into the bin: the next newest is shown').not.toBe('B');
    expect(tab.saving().cards?.find((c) => c.id === b?.id)?.binnedMs).toBeGreaterThan(0);
    await tab.list.putBack(b?.id ?? '');
    await tab.list.discard(a?.id ?? '');
    expect([...tab.titles()].sort()).toEqual(['B', 'B (copy)']);
    expect(await tab.own.open(b?.id ?? '')).toBeUndefined();
    expect(tab.title()).toBe('B');
  });

  it('opens all the rest when entries are damaged, and hands out what is left of them', async () => {
    const shelf = createBrowserShelf('a5');
    await shelf.write({ id: 'good', title: 'Good', text: designText(named('Good')), changedMs: 5, after: undefined });
    await shelf.write({ id: 'half', title: 'Half', text: '{"format":"bridgehead-de', changedMs: 9, after: undefined });
    await rawPut('a5', 'cards', 'odd', { title: 7, revision: 'x', picture: { path: '<script>' } });
    await rawPut('a5', 'texts', 'odd', { not: 'a text' });
    await rawPut('a5', 'texts', 'lost', 'a text without a card');
    const tab = openTab('a5', alone(), shelf);
    await tab.own.start();
    expect(tab.title()).toBe('Good');
    expect(tab.said.join()).toMatch(/could not be opened; it stays in the list/);
    await tab.list.refresh();
    const damaged = tab
      .saving()
      .cards?.filter((c) => c.damaged)
      .map((c) => c.id);
    expect([...(damaged ?? [])].sort()).toEqual(['half', 'lost', 'odd']);
    expect(await tab.list.textOf('half')).toBe('{"format":"bridgehead-de');
    expect(await tab.list.textOf('odd')).toBe('{"not":"a text"}');
    expect(await tab.own.open('half')).toEqual({ problem: expect.stringMatching(/stops in the middle/) as string });
    expect(tab.title()).toBe('Good');
    await tab.list.discard('lost');
    expect(tab.saving().cards?.some((c) => c.id === 'lost')).toBe(false);
  });

  it('tells of a full and of a forbidden store, loses nothing, and saves when there is room again', async () => {
    for (const [fault, state] of [
      [new DOMException('no room', 'QuotaExceededError'), 'full'],
      [new Error('storage is switched off'), 'shut'],
    ] as const) {
      const shelf = createBrowserShelf(`a6 ${state}`);
      let broken = true;
      const guarded: Shelf = { ...shelf, write: (w) => (broken ? Promise.reject(fault) : shelf.write(w)) };
      const tab = openTab('', alone(), guarded);
      await tab.own.start();
      tab.call('Kept all the same');
      await tab.own.flush();
      expect(tab.saving().state).toBe(state);
      broken = false;
      await tab.own.flush();
      expect(tab.saving().state).toBe('saved');
      expect((await shelf.cards()).map((c) => c.title)).toEqual(['Kept all the same']);
    }
  });

  it('empties the bin after 30 days and not before', async () => {
    const tab = openTab('a7', alone());
    await tab.own.start();
    tab.call('Open');
    await tab.own.flush();
    const day = 86_400_000;
    for (const [id, days] of [['young', 29] as const, ['old', 31] as const]) {
      await tab.shelf.write({ id, title: id, text: designText(named(id)), changedMs: 1, after: undefined });
      await tab.shelf.setBinned(id, 1_800_000_000_000 - days * day);
    }
    await tab.list.refresh();
    expect(tab.titles()).toEqual(['Open', 'young']);
  });
});

describe('what earlier versions kept', () => {
  it('is taken over once, what they had set aside too', async () => {
    const old = new Map<string, unknown>([
      ['design', designText(named('From before'))],
      ['design-set-aside', ['{"broken']],
    ]);
    const keep = {
      get: (key: string) => Promise.resolve(old.get(key)),
      del: (key: string) => Promise.resolve(void old.delete(key)),
    };
    const shelf = createBrowserShelf('b1');
    const stubborn = { ...keep, del: () => Promise.reject(new Error('no')) };
    await takeOverOld(stubborn, shelf, 5);
    await takeOverOld(keep, shelf, 6);
    expect((await shelf.cards()).map((c) => c.title)).toEqual(['From before', '']);
    expect(old.size).toBe(0);
    const tab = openTab('b1', alone(), shelf);
    await tab.own.start();
    expect(tab.title()).toBe('From before');
  });
});

async function rawPut(db: string, store: string, id: string, value: unknown): Promise<void> {
  await new Promise<void>((resolve, reject) => {
    const opening = indexedDB.open(db);
    opening.onsuccess = () => {
      const tx = opening.result.transaction(store, 'readwrite');
      tx.objectStore(store).put(value, id);
      tx.oncomplete = () => {
        opening.result.close();
        resolve();
      };
      tx.onerror = () => reject(new Error('put'));
    };
  });
}
