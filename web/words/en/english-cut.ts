import cut from './cut.json';

/** What page Cut says, in English, part by part. */
export const words = {
  cut,
};
