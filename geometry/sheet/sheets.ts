/**
 * Plates on sheets of stock. Frame of a sheet: origin at its lower left corner, x to the right, y up, millimetres,
 * seen from the side that is painted later.
 */
import type { Wording } from '../sentences/wording.ts';

/** A kind of sheet that can be taken from the rack. */
export interface SheetKind {
  readonly id: string;
  readonly widthMm: number;
  readonly heightMm: number;
  /** How many there are; absent: as many as are wanted. */
  readonly count?: number;
  /** What a remnant has lost already: round plates cut from it before. */
  readonly gone?: readonly Circle[];
  /** A piece left over from earlier work: used before whole sheets. A kind that has lost something is one anyway. */
  readonly remnant?: boolean;
}

export interface Circle {
  readonly x: number;
  readonly y: number;
  readonly radiusMm: number;
}

/** So many equal plates that are wanted. */
export interface PlateWish {
  /** Design and plate: what is cut into it. */
  readonly id: string;
  readonly diameterMm: number;
  readonly quantity: number;
  /** Round waste inside it, about its own centre (the opening of a mask ring): smaller plates may lie there. */
  readonly waste?: readonly Circle[];
}

export interface PlacedPlate {
  /** `wish#3`, counted from 1 over all sheets. */
  readonly id: string;
  readonly wish: string;
  readonly diameterMm: number;
  readonly x: number;
  readonly y: number;
  /** Clockwise, degrees. */
  readonly turnDeg: number;
  /** Set by a person: neither moved nor turned by the tool. */
  readonly locked: boolean;
  /** Lies in the waste of this plate. */
  readonly inside?: string;
}

export interface NestedSheet {
  /** Kind of sheet, and which one of that kind, from 1. */
  readonly kind: string;
  readonly number: number;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly gone: readonly Circle[];
  readonly plates: readonly PlacedPlate[];
  /** Area of the plates over the area of the sheet that was there. */
  readonly usedShare: number;
}

/** What has to stay free. */
export interface NestGaps {
  /** Between two rims: kerf and the skeleton's web. */
  readonly betweenMm: number;
  /** Between a rim and the edge of the sheet. */
  readonly edgeMm: number;
}

/** Plates that found no place. */
export interface MissingPlates {
  readonly wish: string;
  readonly count: number;
  readonly sentence: string;
  readonly words: Wording;
}

export interface Nest {
  /** In the order in which they are taken: remnants, sheets that hold locked plates, fresh ones. */
  readonly sheets: readonly NestedSheet[];
  readonly missing: readonly MissingPlates[];
  /** What can be cut off straight from the last sheet and kept; absent where it is too small for any plate. */
  readonly rest?: SheetRest;
}

/** A rectangle without holes that is left over of a sheet. */
export interface SheetRest {
  readonly sheet: number;
  /** Its lower left corner in the sheet. */
  readonly x: number;
  readonly y: number;
  /** What it is from now on. */
  readonly kind: SheetKind;
}
