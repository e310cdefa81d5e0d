import { createContext, useContext } from 'react';
import { useStore } from 'zustand';
import { memoize } from '../../../geometry/cache.ts';
import type { Page } from '../../page/page-context.ts';
import { createProofStore, type ProofState, type ProofStore } from './proof-store.ts';
import { createProofWork, type ProofWork } from './proof-work.ts';

export interface Proof {
  readonly store: ProofStore;
  readonly work: ProofWork;
}

/** What was worked out outlives a look at another page: there is one for each page, told by its store of the design. */
export const proofOf = memoize(
  (page: Page): Proof => {
    const store = createProofStore();
    return { store, work: createProofWork(page.client, store) };
  },
  (page) => page.design,
);

export const ProofContext = createContext<Proof | undefined>(undefined);

export function useProofParts(): Proof {
  const proof = useContext(ProofContext);
  if (proof === undefined) throw new Error('used outside of the page Proof');
  return proof;
}

export function useProof<T>(pick: (state: ProofState) => T): T {
  return useStore(useProofParts().store, pick);
}
