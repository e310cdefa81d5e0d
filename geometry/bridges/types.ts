import type { Point, Region, Ring } from '../shapes.ts';

/** A bar of metal left across an opening. */
export interface Bridge {
  readonly id: string;
  readonly elementIds: readonly string[];
  /** Middle line of the bar; both ends lie in metal that was there before. */
  readonly from: Point;
  readonly to: Point;
  readonly widthMm: number;
  /** The bar itself. */
  readonly outline: Ring;
  /** It only widens a neck that the drawing has there (a stencil face's own bridge at a small size). */
  readonly widens: boolean;
  /** Edit of the design that put it there, when a person did. */
  readonly editId?: string;
  /** Shape it stands on (PlacedShape.id): an edit is kept in that shape's terms. */
  readonly shapeId: string;
}

/** Metal that would fall out, or hang by too thin a neck, without bridges. */
export interface Island {
  readonly id: string;
  readonly elementIds: readonly string[];
  /** A point well inside it. */
  readonly at: Point;
  readonly areaMm2: number;
  /** Bridges that end on it. */
  readonly bridgeIds: readonly string[];
  /** Narrower than a bridge: it lies wholly on the bars that cross it. */
  readonly small: boolean;
  /** How it hangs on its bridges; absent where that is not judged. */
  readonly hang?: Hang;
}

/** How an island hangs on its bridges. */
export interface Hang {
  /** Farthest that a touch (rules.stiffness.touchN) moves it, put on where it moves farthest. */
  readonly touchMm: number;
  /** Where that is, on the island's edge. */
  readonly softAt: Point;
  /** Farthest that any of it hangs down by weight, the sheet lying level and its rim held flat. */
  readonly sagMm: number;
  /** Greatest stress at a bridge's root under that touch. */
  readonly rootMPa: number;
}

/** One hole in the finished plate; the slug that drops out has its form. */
export interface Opening {
  readonly id: string;
  readonly elementIds: readonly string[];
  /** Word it belongs to, `elementId/word`: a word is cut in one go. */
  readonly word: string;
  readonly region: Region;
}
