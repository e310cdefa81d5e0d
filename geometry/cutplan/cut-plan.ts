import type { Contour } from '../shapes.ts';

/** One closed cut around an opening (or a hole in it); lines and arcs, true size, no kerf taken off. */
export interface OpeningContour {
  readonly kind: 'opening';
  readonly id: string;
  readonly elementIds: readonly string[];
  /** elementId/word: a word is cut in one go. */
  readonly word: string;
  /** No part of lettering (a dash, a bead, a motif): it may be cut between the letters of a word. */
  readonly isLoose?: boolean;
  readonly contour: Contour;
}

/** The last cut: the rim, a true circle about the origin. */
export interface RimCut {
  readonly kind: 'rim';
  readonly id: 'rim';
  readonly elementIds: readonly string[];
  readonly diameterMm: number;
}

export type CutContour = OpeningContour | RimCut;

/** What the machine does for one plate, in this order. */
export interface CutPlan {
  readonly contours: readonly CutContour[];
  /** All contours, the rim's included; the ways between them are not. */
  readonly cuttingLengthMm: number;
  readonly pierces: number;
}
