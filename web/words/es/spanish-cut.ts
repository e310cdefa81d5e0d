import cut from './cut.json';

/** The same in Spanish as in english-cut.ts. */
export const words = {
  cut,
};
