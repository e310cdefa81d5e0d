import 'fake-indexeddb/auto';
import { describe, expect, it } from 'vitest';
import { designText } from '../../../geometry/design/write-design.ts';
import type { Card } from '../../../web/state/card.ts';
import { packAll, takeInAll } from '../../../web/state/own/all-designs.ts';
import { createBrowserShelf } from '../../../web/state/own/browser-shelf.ts';
import { noteSavedAll, remindsNow } from '../../../web/state/own/keep-safe.ts';
import { named } from './two-tabs.ts';

const text = (title: string): string => designText(named(title));

describe('all designs as one file', () => {
  it('come back in another browser as they were, once, and change nothing that is there', async () => {
    const here = createBrowserShelf('all-1');
    for (const [i, title] of ['Pear', 'Quince “2031”', 'Medlar'].entries()) {
      await here.write({ id: `d${i}`, title, text: text(title), changedMs: 10 + i, after: undefined });
    }
    await here.setBinned('d0', 99);
    const packed = await packAll(here);
    expect(packed.count).toBe(2);
    const there = createBrowserShelf('all-2');
    await there.write({ id: 'd1', title: 'Mine', text: text('Mine'), changedMs: 5, after: undefined });
    expect(await takeInAll(packed.text, there)).toEqual({ taken: 2, known: 0, refused: 0 });
    expect(await takeInAll(packed.text, there)).toEqual({ taken: 0, known: 2, refused: 0 });
    const cards = await there.cards();
    expect(cards.map(({ title, changedMs }) => [title, changedMs])).toEqual([
      ['Medlar', 12],
      ['Quince “2031”', 11],
      ['Mine', 5],
    ]);
    expect((await there.read('d1'))?.text).toBe(text('Mine'));
  });

  it('take in what can be read of a damaged file, and nothing of another', async () => {
    const shelf = createBrowserShelf('all-3');
    const designs = [
      { title: 'Good', changedMs: -4, text: text('Good') },
      { title: 'Half', changedMs: 1, text: '{"format":"bridgehead-de' },
      7,
      null,
      { title: 'No text' },
    ];
    const file = JSON.stringify({ format: 'bridgehead-designs', version: 1, designs });
    expect(await takeInAll(file, shelf)).toEqual({ taken: 1, known: 0, refused: 4 });
    for (const other of ['', '{', 'null', '[]', text('A design'), file.replace('"version":1', '"version":2')]) {
      expect(await takeInAll(other, shelf)).toBeUndefined();
    }
    expect((await shelf.cards()).length).toBe(1);
  });
});

describe('the reminder', () => {
  const day = 86_400_000;
  const now = 1_900_000_000_000;
  const card = (daysAgo: number): Card => ({ id: 'x', title: '', changedMs: now - daysAgo * day, revision: 1 });

  it('comes after four weeks with two designs, weekly at most, and not after they were saved', () => {
    const kept = new Map<string, string>();
    const storage = {
      getItem: (key: string) => kept.get(key) ?? null,
      setItem: (key: string, value: string) => void kept.set(key, value),
    } as unknown as Storage;
    expect(remindsNow(storage, [card(90)], now)).toBe(false);
    expect(remindsNow(storage, [card(20), card(1)], now)).toBe(false);
    expect(remindsNow(storage, [card(29), card(1)], now)).toBe(true);
    expect(remindsNow(storage, [card(29), card(1)], now + day)).toBe(false);
    expect(remindsNow(storage, [card(29), card(1)], now + 8 * day)).toBe(true);
    noteSavedAll(storage, now);
    expect(remindsNow(storage, [card(29), card(1)], now + 20 * day)).toBe(false);
    expect(remindsNow(storage, [card(29), card(1)], now + 29 * day)).toBe(true);
  });
});
