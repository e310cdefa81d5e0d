import { createStore, type StoreApi } from 'zustand/vanilla';
import type { Planned } from '../../worker/plate-api.ts';

export const PROOF_PARTS = ['options', 'approve', 'revisions', 'papers'] as const;
export type ProofPart = (typeof PROOF_PARTS)[number];

export interface ProofState {
  readonly part: ProofPart;
  /** What pictures show: the mark on a barrel, or the plate itself. */
  readonly view: 'barrel' | 'plate';
  /** Plates with their cut plans, by what they are made of (plateKey). */
  readonly planned: ReadonlyMap<string, Planned>;
  set(part: Partial<Omit<ProofState, 'set'>>): void;
}

export type ProofStore = StoreApi<ProofState>;

/** What is looked at on the page Proof; nothing of it is part of the design. */
export function createProofStore(): ProofStore {
  return createStore<ProofState>()((set) => ({
    part: 'options',
    view: 'barrel',
    planned: new Map(),
    set: (part) => set(part),
  }));
}
