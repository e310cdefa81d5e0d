/**
 * Every tolerance of the project, with its unit and its reason, next to the grid it belongs to.
 * Lengths are millimetres, angles degrees; inches exist only at the edges (input fields, printed notes).
 * No other file may invent an epsilon.
 */

/** One integer step of the clipping grid. 0.1 micrometre: far below any cut, and 4.7 m still fits the library's fast range. */
export const GRID_MM = 0.0001;

/** Greatest distance between a true curve and the points that stand for it. A quarter of what the cut file may err in all. */
export const FLATTEN_ERROR_MM = 0.005;

/** Greatest distance between those points and the arcs written to the cut file: with flattening it stays under 0.02 mm. */
export const ARC_FIT_ERROR_MM = 0.01;

/** Greatest distance between a true round corner and the points an offset gives it. */
export const ROUND_JOIN_ERROR_MM = 0.002;

/**
 * Share of half the least bridge width by which metal is shrunk to find necks that are too thin.
 * Just under one, so that a bridge of exactly the least width passes in spite of grid and flattening.
 */
export const SHRINK_SHARE = 0.98;

/** A shrunk piece of metal smaller than this is a rounding speck of the offset, not a piece (0.02 mm square). */
export const SPECK_MM2 = 0.0004;

/** Openings nearer to each other than twice this touch, as far as any cut is concerned. */
export const PINCH_MM = 0.001;

/** Decimal places written to files: 0.1 micrometre, the clipping grid. */
export const FILE_DECIMALS = 4;

/** Exact by definition (international inch, 1959). */
export const MM_PER_INCH = 25.4;
/** The US gallon, 231 cubic inches. */
export const LITRES_PER_GALLON = (231 * MM_PER_INCH ** 3) / 1e6;

/** Plates outside these diameters are refused: smaller than a coin, or larger than any sheet a shop can lay down. */
export const LEAST_PLATE_MM = 40;
export const GREATEST_PLATE_MM = 1500;

/**
 * Letters and border pieces are set this much farther apart than the least web asks,
 * so that flattening (on both sides) and the grid never bring the metal between them under it.
 */
export const WEB_SPARE_MM = 0.02;

/** An iteration whose step is shorter than this share of what is sought has settled: some hundred roundings of a double. */
export const SETTLED_SHARE = 1e-13;

/** Two parts of a path that meet at a smaller angle run on as one: what is left of an angle after its arithmetic. */
export const SAME_WAY_RAD = 1e-6;

/**
 * What is thinner than this between two outlines is no difference that an eye or a cutter sees: a tenth of the
 * narrowest kerf that shops cut with (fibre laser, 0.1 mm: common practice).
 */
export const DIFFERENCE_SEEN_MM = 0.01;
