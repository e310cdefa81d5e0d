/**
 * Published examples of least squares, as printed.
 *
 * UMEYAMA: S. Umeyama, IEEE Trans. PAMI 13 (1991) 376-380, the worked example in the plane; the point sets as public
 * implementations of it repeat them, the results as the paper prints them (from memory), exactly 3/sqrt(13), 2/sqrt(13),
 * sqrt(13)/5 and 8/15. It catches a fit that mirrors: without the guard of the determinant its error would be 0.
 * CIRCLE: W. Gander, G. H. Golub, R. Strebel, BIT 34 (1994) 558-578, the six points of section 1 with their algebraic
 * and geometric circles (printed values from memory, worked out anew).
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

export const CIRCLE = {
  points: [
    [1, 7],
    [2, 6],
    [5, 8],
    [7, 7],
    [9, 5],
    [3, 7],
  ].map(([x, y]) => ({ x: x!, y: y! })),
  algebraic: { x: 5.3794, y: 7.2532, r: 3.037 },
  geometric: { x: 4.7398, y: 2.9835, r: 4.7142 },
  squares: 1.2276,
};
