import proof from './proof.json';

/** The same in German as in english-proof.ts. */
export const words = {
  proof,
};
