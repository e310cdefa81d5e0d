/**
 * Published examples of least squares, as printed.
 *
 * UMEYAMA: S. Umeyama, IEEE Trans. PAMI 13 (1991) 376-380, the worked example in the plane; the point sets as public
 * implementations of it repeat them, the results as the paper prints them (from memory), exactly 3/sqrt(13), 2/sqrt(13),
 * sqrt(13)/5 and 8/15. It catches a fit that mirrors: without the guard of the determinant its error would be 0.
 */
const FROM = [
  [0, 0],
  [1, 0],
  [0, 2],
] as const;
const TO = [
  [0, 0],
  [-1, 0],
  [0, 2],
] as const;

export const UMEYAMA = {
  marks: FROM.map(([x, y], i) => ({ at: { x, y }, found: { x: TO[i]![0], y: TO[i]![1] } })),
  cos: 0.832,
  sin: 0.555,
  scale: 0.721,
  shift: { x: -0.8, y: 0.4 },
  meanSquare: 0.533,
};
