import cut from './cut.json';

/** The same in French as in english-cut.ts. */
export const words = {
  cut,
};
