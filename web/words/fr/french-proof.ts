import proof from './proof.json';

/** The same in French as in english-proof.ts. */
export const words = {
  proof,
};
