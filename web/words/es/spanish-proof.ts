import proof from './proof.json';

/** The same in Spanish as in english-proof.ts. */
export const words = {
  proof,
};
