import type { Outline } from './shapes.ts';

/** Something that can be set about a motif: the points of a star, the leaves of a branch. */
export interface MotifOption {
  readonly id: string;
  /** English; the page has it in its languages under the motif's id and this one. */
  readonly label: string;
  readonly least: number;
  readonly most: number;
  readonly step: number;
  readonly usual: number;
}

/** One drawing of our own, made to cut well. */
export interface MotifEntry {
  readonly id: string;
  /** What a finding calls it, English: `star`. */
  readonly label: string;
  readonly options: readonly MotifOption[];
  /**
   * Closed outlines filled non-zero, any size and place, y up; what is cut away is what is filled.
   * Takes a value for every option, within its range.
   */
  draw(options: Readonly<Record<string, number>>): Outline;
}
