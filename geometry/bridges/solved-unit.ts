import type { Point, Region, Ring } from '../shapes.ts';
import type { Hang } from './types.ts';

/** One bar as built, in the unit's frame. */
export interface BuiltBar {
  readonly from: Point;
  readonly to: Point;
  readonly outline: Ring;
  readonly widthMm: number;
  /** It only widens a neck that the drawing has there. */
  readonly widens: boolean;
  /** Edit that put it there, when a person did. */
  readonly editId?: string;
  /** Which of the unit's shapes it stands on; absent where it can only be the first. */
  readonly shape?: number;
}

export interface SolvedIsland {
  readonly at: Point;
  readonly areaMm2: number;
  readonly small: boolean;
  /** Indices of the bars that hold it. */
  readonly bars: readonly number[];
  /** How it hangs on them; absent where the stock's stiffness is not known. */
  readonly hang?: Hang;
}

/** A unit's openings with bridges left across them, in the unit's frame, mm. */
export interface SolvedUnit {
  readonly openings: readonly Region[];
  readonly bars: readonly BuiltBar[];
  readonly islands: readonly SolvedIsland[];
  /** Specks of metal too small to hold: they are cut away with the slug. */
  readonly specks: readonly Point[];
  /** Metal that no bar could be found for: the plate can't be cut. */
  readonly loose: readonly Point[];
  /** Metal that hangs on one bar alone. */
  readonly once: readonly Point[];
  /** Share of the drawn openings that bars cover, 0 to 1. */
  readonly covered: number;
  /** Separate parts of the drawing (a dot, an accent) that bars cover wholly; a point in each. */
  readonly lostParts: readonly Point[];
  /** Edits whose bridge finds no opening to cross, and edits that bar a place the plate cannot do without. */
  readonly lost: readonly string[];
  readonly refused: readonly string[];
  /** It took more work than there may be: nothing of it is cut, and the plate can't be. */
  readonly tooIntricate?: boolean;
}
