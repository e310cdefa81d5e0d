import cut from './cut.json';

/** The same in German as in english-cut.ts. */
export const words = {
  cut,
};
