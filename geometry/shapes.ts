/**
 * The words and the plain records every stage speaks in.
 *
 * Frame of a plate: origin at its centre, x to the right, y up, seen from the painted side, millimetres.
 * Angles of a design are degrees as on a clock: 0 at the top, clockwise.
 *
 * blank    the round of sheet a plate is cut from; its edge is the *rim*
 * opening  what is cut away; a closed ring, outer boundaries counter-clockwise
 * counter  the inner white of a letter
 * island   metal that no wide enough metal joins to the rim
 * bridge   metal left across an opening to hold an island
 * web      the metal between two openings, or an opening and the rim
 * slug     the piece that drops out of an opening
 *
 * Bridging (geometry/bridges) speaks of these besides:
 *
 * unit     openings that are bridged together: a letter, or letters that run into each other
 * piece    metal of a unit that is still in one when shrunk by just under half a bridge
 * neck     metal between wider metal that is thinner than a bridge; a bar along it *widens* it
 * bar      a bridge as it is sought, chosen and built in its unit; placed on the plate it is a bridge
 * plank    a straight part of a bar between two pieces: it can fail by itself
 * cost     what a bar does to the look of its letter, as mm of stroke crossed
 * deficit  how far bars are from holding every piece twice
 * span     the length of an island's edge from one bar to the next
 * body     an island of the drawing as a rigid body that hangs on its bars
 * speck    an island too small to hold: it drops out with the slug
 * sliver   a strip of opening beside a bar, narrower than the process cuts
 * keep     a person's edit that puts a bridge somewhere; a *drop* bars a place
 *
 * A ring never repeats its first point. Outer rings run counter-clockwise, holes clockwise.
 */

export interface Point {
  readonly x: number;
  readonly y: number;
}

export type Ring = readonly Point[];

/** One connected area: an outer ring less its holes. */
export interface Region {
  readonly outer: Ring;
  readonly holes: readonly Ring[];
}

/** Curves as a font or a drawing gives them; every subpath is closed; filled non-zero. */
export type PathCommand =
  | { readonly type: 'M'; readonly x: number; readonly y: number }
  | { readonly type: 'L'; readonly x: number; readonly y: number }
  | { readonly type: 'Q'; readonly x1: number; readonly y1: number; readonly x: number; readonly y: number }
  | {
      readonly type: 'C';
      readonly x1: number;
      readonly y1: number;
      readonly x2: number;
      readonly y2: number;
      readonly x: number;
      readonly y: number;
    }
  | { readonly type: 'Z' };

export type Outline = readonly PathCommand[];

/** A rigid move: first turned clockwise by turnDeg about its own origin, then moved to x, y. */
export interface Placement {
  readonly x: number;
  readonly y: number;
  readonly turnDeg: number;
}

/**
 * A vertex of a cut contour. bulge belongs to the side from this vertex to the next:
 * tan(a quarter of the arc's angle), positive counter-clockwise, 0 straight (DXF reference, group 42).
 */
export interface Vertex {
  readonly x: number;
  readonly y: number;
  readonly bulge: number;
}

/** A closed run of lines and arcs. */
export type Contour = readonly Vertex[];

export interface Box {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}
