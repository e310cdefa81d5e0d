import { createStore, type StoreApi } from 'zustand/vanilla';
import type { PlateResult } from '../../geometry/plate/plate.ts';
import type { Key } from '../words/keys.ts';

/**
 * stuck: it took too long and was stopped. before: the page ended while it was worked out, at the last visit. missing:
 * what works plates out could not be loaded.
 */
export interface Halt {
  readonly why: 'stuck' | 'before' | 'missing';
  readonly elementId?: string | undefined;
}

/** What the worker last made of the design; a plate stays until a newer one is ready. */
export interface PlatesState {
  readonly plates: Readonly<Record<string, PlateResult>>;
  readonly busy: boolean;
  /** The name of a sentence, when the last run failed; the last good plates stay. */
  readonly trouble: Key | undefined;
  /** Why the design is not worked out by itself; the element that was at work, where known. A person may begin it. */
  readonly halt: Halt | undefined;
  set(part: Partial<Omit<PlatesState, 'set'>>): void;
  put(plate: PlateResult): void;
}

export type PlatesStore = StoreApi<PlatesState>;

export function createPlatesStore(): PlatesStore {
  return createStore<PlatesState>()((set) => ({
    plates: {},
    busy: true,
    trouble: undefined,
    halt: undefined,
    set: (part) => set(part),
    put: (plate) => set((s) => ({ halt: undefined, plates: { ...s.plates, [plate.plateId]: plate } })),
  }));
}
