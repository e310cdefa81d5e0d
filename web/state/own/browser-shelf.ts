import { openDB, type DBSchema, type IDBPDatabase } from 'idb';
import { cardOf, type Card } from '../card.ts';
import { inTime } from '../in-time.ts';
import type { Shelf } from './shelf.ts';

interface Stores extends DBSchema {
  cards: { key: string; value: unknown };
  texts: { key: string; value: unknown };
}

/** A browser that neither opens its store nor says no (seen in private windows) shall not keep the page from starting. */
const LONGEST_WAIT_MS = 3000;
/** The same for a question to the open store, and for a write, which a busy disk may keep waiting. */
const LONGEST_READ_MS = 5000;
const LONGEST_WRITE_MS = 15_000;

/**
 * Own designs in IndexedDB: cards and texts in two stores, so that a list does not read every design, written together
 * in one transaction. Whatever lies there is taken for damaged until it proves whole.
 * deleted: somebody deletes the store under the page.
 */
export function createBrowserShelf(name = 'bridgehead', deleted: () => void = () => undefined): Shelf {
  let opened: Promise<IDBPDatabase<Stores>> | undefined;

  function open(): Promise<IDBPDatabase<Stores>> {
    opened ??= openInTime(name, (forGood) => {
      opened = undefined;
      if (forGood) deleted();
    });
    opened.catch(() => {
      opened = undefined;
    });
    return opened;
  }

  async function both() {
    const tx = (await open()).transaction(['cards', 'texts'], 'readwrite');
    // a transaction that fails is told by done; without this the same failure would come up unheard as well
    tx.done.catch(() => undefined);
    return { cards: tx.objectStore('cards'), texts: tx.objectStore('texts'), done: tx.done, abort };

    function abort(): void {
      try {
        tx.abort();
      } catch {
        // it has ended by itself
      }
    }
  }

  return answersInTime({
    async cards() {
      const tx = (await open()).transaction(['cards', 'texts']);
      const [keys, values, textKeys] = await Promise.all([
        tx.objectStore('cards').getAllKeys(),
        tx.objectStore('cards').getAll(),
        tx.objectStore('texts').getAllKeys(),
      ]);
      const cards = keys.map((id, i) => {
        const card = cardOf(values[i], id);
        return textKeys.includes(id) ? card : { ...card, damaged: true as const };
      });
      // a text whose card was lost is still somebody's work
      const lost = textKeys.filter((id) => !keys.includes(id)).map((id) => cardOf(undefined, id));
      return [...cards, ...lost].sort((a, b) => b.changedMs - a.changedMs || (a.id < b.id ? -1 : 1));
    },
    async read(id) {
      const tx = (await open()).transaction(['cards', 'texts']);
      const [card, text] = await Promise.all([tx.objectStore('cards').get(id), tx.objectStore('texts').get(id)]);
      if (text === undefined) return undefined;
      const { revision, changedMs } = cardOf(card, id);
      return { text: asText(text), revision, changedMs };
    },
    async write({ id, title, text, changedMs, after }) {
      const { cards, texts, done, abort } = await both();
      const stored = await cards.get(id);
      const before = stored === undefined ? undefined : cardOf(stored, id);
      if (before?.revision !== after) return { kind: 'changed' };
      const card: Card = { ...before, id, title, changedMs, revision: (after ?? 0) + 1 };
      try {
        await Promise.all([cards.put(withoutDamage(card), id), texts.put(text, id), done]);
      } catch (fault) {
        // never a card without its text
        abort();
        throw fault;
      }
      return { kind: 'written', revision: card.revision };
    },
    async setPicture(id, picture) {
      const { cards, done } = await both();
      const stored = await cards.get(id);
      if (stored !== undefined) await cards.put({ ...cardOf(stored, id), picture }, id);
      await done;
    },
    async setBinned(id, binnedMs) {
      const { cards, done } = await both();
      const { binnedMs: _before, ...card } = cardOf(await cards.get(id), id);
      await Promise.all([cards.put(binnedMs === undefined ? card : { ...card, binnedMs }, id), done]);
    },
    async discard(id) {
      const { cards, texts, done } = await both();
      await Promise.all([cards.delete(id), texts.delete(id), done]);
    },
  });
}

function answersInTime(shelf: Shelf): Shelf {
  return {
    cards: () => inTime(shelf.cards(), LONGEST_READ_MS),
    read: (id) => inTime(shelf.read(id), LONGEST_READ_MS),
    write: (writing) => inTime(shelf.write(writing), LONGEST_WRITE_MS),
    setPicture: (id, picture) => inTime(shelf.setPicture(id, picture), LONGEST_WRITE_MS),
    setBinned: (id, binnedMs) => inTime(shelf.setBinned(id, binnedMs), LONGEST_WRITE_MS),
    discard: (id) => inTime(shelf.discard(id), LONGEST_WRITE_MS),
  };
}

function openInTime(name: string, closed: (forGood: boolean) => void): Promise<IDBPDatabase<Stores>> {
  const opening = openDB<Stores>(name, 1, {
    upgrade(db) {
      db.createObjectStore('cards');
      db.createObjectStore('texts');
    },
    // a newer page in another tab wants to change the store: it must not wait for this one
    blocking(_now, wanted, event) {
      (event.target as IDBDatabase).close();
      closed(wanted === null);
    },
    terminated: () => closed(false),
  });
  return inTime(opening, LONGEST_WAIT_MS);
}

/** A new save makes a damaged card whole again. */
function withoutDamage({ damaged: _damaged, ...card }: Card): Omit<Card, 'damaged'> {
  return card;
}

/** What is no text is shown as what it is: somebody may still read something in it. */
function asText(value: unknown): string {
  return typeof value === 'string' ? value : (JSON.stringify(value) ?? '');
}
