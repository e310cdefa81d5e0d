import { openDB, type DBSchema, type IDBPDatabase } from 'idb';

/** A row of a series that is done: its files, packed, or why it has none. */
export interface SavedRow {
  readonly name: string;
  readonly files: readonly { readonly name: string; readonly packed: Uint8Array<ArrayBuffer> }[];
  /** Plain data, as the series tells it. */
  readonly reason?: unknown;
}

/**
 * Rows that are done, by their mark, so that a series goes on where it was left. A browser that keeps nothing, or has
 * no room left, only makes them again: no call is ever rejected.
 */
export interface SavedRows {
  marks(): Promise<ReadonlySet<string>>;
  read(mark: string): Promise<SavedRow | undefined>;
  write(mark: string, row: SavedRow): Promise<void>;
  /** Forgets all others. */
  keepOnly(marks: ReadonlySet<string>): Promise<void>;
}

interface Stores extends DBSchema {
  rows: { key: string; value: SavedRow };
  about: { key: string; value: string };
}

/** build: what made the rows; those of another build are forgotten, since it may cut them otherwise. */
export function openSavedRows(build: string, name = 'bridgehead-series'): SavedRows {
  let opened: Promise<IDBPDatabase<Stores>> | undefined;
  let isFull = false;

  async function open(): Promise<IDBPDatabase<Stores>> {
    const db = await openDB<Stores>(name, 1, {
      upgrade(fresh) {
        fresh.createObjectStore('rows');
        fresh.createObjectStore('about');
      },
    });
    if ((await db.get('about', 'build')) !== build) {
      await db.clear('rows');
      await db.put('about', build, 'build');
    }
    return db;
  }

  async function orElse<T>(ask: (db: IDBPDatabase<Stores>) => Promise<T>, otherwise: T): Promise<T> {
    try {
      opened ??= open();
      return await ask(await opened);
    } catch {
      return otherwise;
    }
  }

  return {
    marks: () => orElse<ReadonlySet<string>>(async (db) => new Set(await db.getAllKeys('rows')), new Set()),
    read: (mark) => orElse((db) => db.get('rows', mark), undefined),
    async write(mark, row) {
      if (isFull) return;
      isFull = !(await orElse(async (db) => {
        await db.put('rows', row, mark);
        return true;
      }, false));
    },
    keepOnly: (marks) =>
      orElse(async (db) => {
        const tx = db.transaction('rows', 'readwrite');
        const gone = (await tx.store.getAllKeys()).filter((mark) => !marks.has(mark));
        await Promise.all([...gone.map((mark) => tx.store.delete(mark)), tx.done]);
      }, undefined),
  };
}
