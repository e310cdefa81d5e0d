import { createContext, useContext } from 'react';
import { useStore } from 'zustand';
import type { Page } from '../../page/page-context.ts';
import { createProofStore, type ProofState, type ProofStore } from './proof-store.ts';
import { createProofWork, type ProofWork } from './proof-work.ts';

export interface Proof {
  readonly store: ProofStore;
  readonly work: ProofWork;
}

/** What was worked out outlives a look at another page: there is one for each page. */
const KEPT = new WeakMap<object, Proof>();

export function proofOf(page: Page): Proof {
  const known = KEPT.get(page.design);
  if (known) return known;
  const store = createProofStore();
  const proof = { store, work: createProofWork(page.client, store) };
  KEPT.set(page.design, proof);
  return proof;
}

export const ProofContext = createContext<Proof | undefined>(undefined);

export function useProofParts(): Proof {
  const proof = useContext(ProofContext);
  if (proof === undefined) throw new Error('used outside of the page Proof');
  return proof;
}

export function useProof<T>(pick: (state: ProofState) => T): T {
  return useStore(useProofParts().store, pick);
}
