import { createStore, type StoreApi } from 'zustand/vanilla';
import type { PlateResult } from '../../geometry/plate/plate.ts';
import type { Key } from '../words/keys.ts';

/** What the worker last made of the design; a plate stays until a newer one is ready. */
export interface PlatesState {
  readonly plates: Readonly<Record<string, PlateResult>>;
  readonly busy: boolean;
  /** The name of a sentence, when the last run failed; the last good plates stay. */
  readonly trouble: Key | undefined;
  set(part: Partial<Omit<PlatesState, 'set'>>): void;
  put(plate: PlateResult): void;
}

export type PlatesStore = StoreApi<PlatesState>;

export function createPlatesStore(): PlatesStore {
  return createStore<PlatesState>()((set) => ({
    plates: {},
    busy: true,
    trouble: undefined,
    set: (part) => set(part),
    put: (plate) => set((s) => ({ plates: { ...s.plates, [plate.plateId]: plate } })),
  }));
}
