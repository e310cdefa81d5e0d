import { createStore, type StoreApi } from 'zustand/vanilla';
import type { Card } from './card.ts';
import type { SavingState } from './saving.ts';

/**
 * mine: this tab works on the design. elsewhere: another tab does, and the person has not said what to do.
 * looking: the person only looks; a change would be kept as a copy.
 */
export type TabState = 'mine' | 'elsewhere' | 'looking';

export interface SavingStoreState {
  readonly state: SavingState;
  readonly tab: TabState;
  /** Own design that is open; undefined for a beginning that nothing was done to yet. */
  readonly openId: string | undefined;
  /** The list of own designs, newest first, binned and damaged ones too; undefined until it was asked for. */
  readonly cards: readonly Card[] | undefined;
  set(part: Partial<Omit<SavingStoreState, 'set'>>): void;
}

export type SavingStore = StoreApi<SavingStoreState>;

/** How the last save went, whose tab it is, and what else there is. */
export function createSavingStore(): SavingStore {
  return createStore<SavingStoreState>()((set) => ({
    state: 'saved',
    tab: 'mine',
    openId: undefined,
    cards: undefined,
    set: (part) => set(part),
  }));
}
