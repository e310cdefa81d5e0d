/**
 * Greatest radius of n equal circles in a square of side 1, n = 1 to 20, as published by Eckard Specht, The best known
 * packings of equal circles in a square (packomania.com, table csq); proven optimal for these n. The closed forms of
 * n = 1 to 9 and 16 agree.
 */
export const SQUARE_RADII: readonly number[] = [
  0.5, 0.292893218813, 0.25433309503, 0.25, 0.207106781187, 0.187680601147, 0.174457630187, 0.170540688701,
  0.166666666667, 0.148204322565, 0.142399237696, 0.139958844038, 0.133993513499, 0.12933179371, 0.127166547515, 0.125,
  0.117196742783, 0.115521432464, 0.112265437571, 0.111382347512,
];
