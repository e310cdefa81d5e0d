import type { Finding } from '../findings.ts';
import type { Outline, Placement } from '../shapes.ts';

/** One thing to cut, placed on one plate: a glyph, a dash, a ring. */
export interface PlacedShape {
  /** elementId/number, unique on the plate. */
  readonly id: string;
  readonly elementId: string;
  /** What a person would call it: `letter O`, `ring`, `dash`. */
  readonly label: string;
  /** Same key = same outline to the last digit, so that what was worked out for it once serves again. */
  readonly storeKey: string;
  /** In the shape's own frame, mm, y up; a glyph stands on its baseline at the origin. */
  readonly outline: Outline;
  readonly placement: Placement;
  /** Number of the word in its element: a word is cut in one go. */
  readonly word: number;
}

/** Where an element lies, for choosing it on the stage; mm and clock degrees. */
export type Extent =
  | {
      readonly kind: 'sector';
      readonly elementId: string;
      readonly innerMm: number;
      readonly outerMm: number;
      readonly startDeg: number;
      readonly endDeg: number;
    }
  | {
      readonly kind: 'box';
      readonly elementId: string;
      readonly x: number;
      readonly y: number;
      readonly widthMm: number;
      readonly heightMm: number;
      readonly turnDeg: number;
    };

/** All elements of a design placed on one plate. */
export interface Layout {
  readonly shapes: readonly PlacedShape[];
  readonly extents: readonly Extent[];
  /** missing-glyph, empty-text, text-does-not-fit and their like. */
  readonly findings: readonly Finding[];
}
