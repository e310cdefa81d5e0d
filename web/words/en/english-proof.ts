import proof from './proof.json';

/** What page Proof says, in English, part by part. */
export const words = {
  proof,
};
