import { createContext, useContext } from 'react';
import { useStore } from 'zustand';
import { memoize } from '../../../geometry/cache.ts';
import type { PlannedSheet } from '../../worker/cut-api.ts';
import { createCutStore, type CutState, type CutStore } from './cut-store.ts';
import { createCutWork, type CutWork } from './cut-work.ts';
import type { Page } from '../../page/page-context.ts';
import { createPlayStore, type PlayState, type PlayStore } from './play-store.ts';

export interface Cut {
  readonly store: CutStore;
  readonly play: PlayStore;
  readonly work: CutWork;
}

/** The order outlives a look at the design: there is one for each page, told by its store of the design. */
export const cutOf = memoize(
  (page: Page): Cut => {
    const [store, play] = [createCutStore(), createPlayStore()];
    return { store, play, work: createCutWork(page, store, play) };
  },
  (page) => page.design,
);

export const CutContext = createContext<Cut | undefined>(undefined);

export function useCutParts(): Cut {
  const cut = useContext(CutContext);
  if (cut === undefined) throw new Error('used outside of the page Cut');
  return cut;
}

export function useCut<T>(pick: (state: CutState) => T): T {
  return useStore(useCutParts().store, pick);
}

export function usePlay<T>(pick: (state: PlayState) => T): T {
  return useStore(useCutParts().play, pick);
}

/** The plan of the sheet looked at, once it is there. */
export function usePlannedSheet(): PlannedSheet | undefined {
  return useCut((s) => s.planned?.sheets[s.sheetAt]);
}
