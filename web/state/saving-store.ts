import { createStore, type StoreApi } from 'zustand/vanilla';
import type { SavingState } from './saving.ts';

export interface SavingStoreState {
  readonly state: SavingState;
  /** Saved texts of earlier visits that could not be read and were kept. */
  readonly aside: readonly string[];
  set(part: Partial<Omit<SavingStoreState, 'set'>>): void;
}

export type SavingStore = StoreApi<SavingStoreState>;

/** How the last save went, for the one line that says so. */
export function createSavingStore(): SavingStore {
  return createStore<SavingStoreState>()((set) => ({ state: 'saved', aside: [], set: (part) => set(part) }));
}
