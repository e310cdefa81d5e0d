import type { Manner } from '../design/schema.ts';
import type { Point } from '../shapes.ts';

/** What bars are judged by; mm. */
export interface BarRule {
  readonly widthMm: number;
  readonly leastOpeningMm: number;
  readonly manner: Manner;
}

/** What a choice of bars must keep besides; mm. */
export interface ChoiceRule extends BarRule {
  readonly longestSpanMm: number;
}

/** A small island on a bar, and the point in it where the bar's two parts meet. */
export interface Carried {
  readonly piece: number;
  readonly at: Point;
}

/** A possible bridge between two pieces. Its ends lie on the edges of the shrunk pieces. */
export interface Bar {
  readonly from: Point;
  readonly to: Point;
  /** Pieces at `from` and `to`. */
  readonly a: number;
  readonly b: number;
  /** The small island this bar passes over and carries. */
  readonly carries?: Carried;
  /** Small islands that it covers besides. */
  readonly also?: readonly Carried[];
  /** What it does to the look of the letter: mm of stroke crossed, raised by what looks wrong. */
  readonly cost: number;
  readonly widthMm: number;
  /** It only widens a neck that was there. */
  readonly widens: boolean;
  /** Where it stands along the edge of piece a, mm from the edge's start. */
  readonly alongMm: number;
  /** Edit of the design that asks for it. */
  readonly editId?: string;
}
