import { createStore, type StoreApi } from 'zustand/vanilla';
import type { SavingState } from './saving.ts';

export interface SavingStoreState {
  readonly state: SavingState;
  set(state: SavingState): void;
}

export type SavingStore = StoreApi<SavingStoreState>;

/** How the last save went, for the one line that says so. */
export function createSavingStore(): SavingStore {
  return createStore<SavingStoreState>()((set) => ({ state: 'saved', set: (state) => set({ state }) }));
}
