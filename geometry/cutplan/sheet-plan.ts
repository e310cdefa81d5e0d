/** What the machine does for one whole sheet. Frame of the sheet (geometry/sheet/sheets.ts), millimetres. */
import type { Contour, Point, Vertex } from '../shapes.ts';
import type { Wording } from '../sentences/wording.ts';

/** An open run of lines and arcs; the last vertex's bulge means nothing. */
export type Run = readonly Vertex[];

/** opening and rim: of a plate; witness: a small circle in the skeleton that shows whether the sheet moved. */
export type PassKind = 'opening' | 'rim' | 'witness';

/** One contour as the machine runs it: pierced, led in, cut once round. */
export interface CutPass {
  /** Plate in its place and contour: `wish#3/opening7`. */
  readonly id: string;
  readonly kind: PassKind;
  /** The plate it belongs to (PlacedPlate.id). */
  readonly plate: string;
  /** Plate, element and word: finished before another word is begun. What is no lettering is one by itself, after a colon. */
  readonly word: string;
  /** What shall be left, true size. */
  readonly net: Contour;
  /** What the middle of the beam, jet or bit runs: net, half a kerf into the waste; begins and ends at path[0]. */
  readonly path: Contour;
  readonly pierce: Point;
  /** From the pierce to path[0]. */
  readonly leadIn: Run;
  /** Past the closing point, where the process wants it. */
  readonly leadOut?: Run;
  /** Metal left across the cut so that the slug stays in (small tabs), by where they are along the path, mm. */
  readonly tabsMm?: readonly Tab[];
  /** The passes that have to come before this one. */
  readonly after: readonly string[];
}

/** Metal left across a cut, by where it is along the path; leadIn: of the run that goes on behind it. */
export interface Tab {
  readonly fromMm: number;
  readonly toMm: number;
  readonly leadIn: Run;
}

/** How wide tabs are left, and how many: one for so much of a piece's edge, or so many whatever its size. */
export interface TabRule {
  readonly widthMm: number;
  readonly everyMm: number;
  readonly count?: number | undefined;
}

/** The way between the end of one pass and the pierce of the next. */
export interface Rapid {
  /** From the end of this pass ('' from the resting place) to the pierce of that. */
  readonly from: string;
  readonly to: string;
  readonly way: readonly Point[];
  /** Raised, and so over anything that stands; otherwise at cutting height. */
  readonly raised: boolean;
}

/** One sheet, in the order in which it is cut. */
export interface SheetPlan {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly passes: readonly CutPass[];
  readonly rapids: readonly Rapid[];
  readonly cuttingMm: number;
  readonly rapidMm: number;
  /** What becomes of each piece cut free, by its pass, the likeliest to tip first; plates are pieces, marks left out. */
  readonly slugs: readonly Slug[];
  /** What could not be done as wished. */
  readonly notes: readonly PlanNote[];
}

/** What may become of a piece that is cut free over slats (slugs.ts). */
export interface SlugChances {
  /** The three add up to 1. */
  readonly drops: number;
  readonly lies: number;
  readonly tips: number;
  /** How far it could stand above the sheet at the worst offset, mm; 0 where it never tips. */
  readonly riseMm: number;
}

export interface Slug extends SlugChances {
  readonly pass: string;
  readonly plate: string;
  /** Held by tabs: it neither drops nor tips. */
  readonly isTabbed: boolean;
}

/**
 * lost: an opening narrower than the kerf is not cut at all. parted: it is cut in several parts, the narrow place
 * between them stays metal. narrow: a tail of it is not reached. tight: pierced nearer to its edge than is good.
 */
export interface PlanNote {
  readonly kind: 'lost' | 'parted' | 'narrow' | 'tight';
  readonly plate: string;
  readonly contour: string;
  readonly at: Point;
  readonly sentence: string;
  readonly words: Wording;
}

/** How one process cuts one stock: what paths are made and timed by. */
export interface CutSettings {
  readonly kerfMm: number;
  /** mm a minute. */
  readonly feedMmMin: number;
  readonly pierceS: number;
  /** mm/s2, along each axis. */
  readonly accelerationMmS2: number;
  /** mm a minute. */
  readonly rapidMmMin: number;
  /** How far a corner may be cut short so that the head need not stop in it, mm. */
  readonly cornerMm: number;
  /** To raise and lower the head once, s. */
  readonly raiseS: number;
  readonly leadInMm: number;
  /** Slats the sheet lies on: pitch and width of their edge, mm. They run along y. */
  readonly slats: { readonly pitchMm: number; readonly edgeMm: number };
  /** A cut goes on past its closing point by so much, mm; absent: not at all. */
  readonly overlapMm?: number;
  /** Small tabs; absent: by the kerf alone. */
  readonly tab?: TabRule;
  /** A spot cut stays hot so long, s. */
  readonly coolS: number;
}
