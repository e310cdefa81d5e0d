/** Names and limits of the design document that others need without the means to read one. */

export const DESIGN_FORMAT = 'bridgehead-design';

export const DESIGN_VERSION = 4;

/** Besides the design itself; four side by side is what a screen shared on a call can show. */
export const MOST_OPTIONS = 3;

/** A to Z. */
export const MOST_REVISIONS = 26;

/** Findings that were let be; the oldest make room. */
export const MOST_ACCEPTED = 200;

/** Plates of one kind in an order. */
export const MOST_QUANTITY = 100_000;

/** Longest text of one element: a ring of 500 letters is no longer a stencil. */
export const LONGEST_TEXT = 200;

/** Longest drawing that is taken in: 400,000 characters are about 30,000 points. */
export const LONGEST_PATH = 400_000;

/** Letters, dashes and copies of drawings of a design in all: fifty times what a full plate holds. */
export const MOST_SHAPES = 20_000;

/** Lines and curves of its drawings in all, each copy counted. */
export const MOST_LINES = 1_000_000;
