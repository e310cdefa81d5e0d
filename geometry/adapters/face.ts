import type { MotifEntry } from '../motif.ts';
import type { Outline } from '../shapes.ts';

/** One character drawn by a face; lengths are shares of the em, y up, the baseline at 0. */
export interface FaceGlyph {
  readonly char: string;
  readonly advance: number;
  /** Every subpath is closed; empty for a space. */
  readonly outline: Outline;
}

/** A face that letters can be taken from. All lengths are shares of the em. */
export interface Face {
  readonly id: string;
  readonly name: string;
  /** Height of its flat-topped capitals over the baseline; never 0. */
  readonly capHeight: number;
  readonly ascent: number;
  /** Negative: below the baseline. */
  readonly descent: number;
  /** True for scripts whose letters are meant to run into each other. */
  readonly joins: boolean;
  /** undefined when the face has no such character. Takes one code point. */
  glyph(char: string): FaceGlyph | undefined;
  /** Added to the distance between two characters that follow each other; usually 0 or negative. */
  kern(left: string, right: string): number;
}

export interface FaceSource {
  get(faceId: string): Face | undefined;
  /** One of our drawings; they come with the faces, so that a design without one need not wait for them. */
  motif(id: string): MotifEntry | undefined;
}

/**
 * Pair kerning of one face. pairs: left character -> lines `amount right-characters`: the amount in units, one space,
 * then all right characters that take it. Pairs that are not named have none.
 */
export interface KerningTable {
  readonly unitsPerEm: number;
  readonly pairs: Readonly<Record<string, string>>;
}
