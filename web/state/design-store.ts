import { createStore, type StoreApi } from 'zustand/vanilla';
import type { Design } from '../../geometry/design/schema.ts';
import type { Change } from './change.ts';
import { closeMerge, record, startHistory, stepBack, stepForward, type History } from './history.ts';

export interface DesignState {
  readonly history: History<Design>;
  apply(change: Change): void;
  closeMerge(): void;
  undo(): void;
  redo(): void;
  /** Another design, and nothing to undo: one of the list was opened. */
  restart(design: Design): void;
}

export type DesignStore = StoreApi<DesignState>;

/** The one design being worked on, with all its steps. Knows no React. */
export function createDesignStore(design: Design): DesignStore {
  return createStore<DesignState>()((set) => ({
    history: startHistory(design),
    apply: ({ design, undo, about }) => set((s) => ({ history: record(s.history, design, undo, about) })),
    closeMerge: () => set((s) => ({ history: closeMerge(s.history) })),
    undo: () => set((s) => ({ history: stepBack(s.history) })),
    redo: () => set((s) => ({ history: stepForward(s.history) })),
    restart: (design) => set({ history: startHistory(design) }),
  }));
}
