import type { Outline } from '../shapes.ts';
import type { Stroke } from '../adapters/clipper.ts';

/** a c e over b d f: x' = a x + c y + e, y' = b x + d y + f (SVG 2, 8.4). */
export type Matrix = readonly [a: number, b: number, c: number, d: number, e: number, f: number];

/** What a painted shape does to the plate: dark on light, or light on dark. */
export type Tone = 'dark' | 'light';

export interface Fill {
  readonly tone: Tone;
  readonly rule: 'nonzero' | 'evenodd';
}

/** One shape of a drawing as a file paints it, later ones over earlier ones. */
export interface Painted {
  /** In its own units, y down; subpaths may be open: a fill closes them, a stroke does not. */
  readonly outline: Outline;
  /** From its own units to the drawing's. */
  readonly matrix: Matrix;
  readonly fill?: Fill;
  /** Widths in its own units. */
  readonly stroke?: Stroke & { readonly tone: Tone };
}

/** A drawing ready for a design. */
export interface Drawn {
  /** As artwork elements carry it (geometry/design/schema.ts). */
  readonly path: string;
  /** Width of its box when it is 1 high. */
  readonly width: number;
  /** Separate openings. */
  readonly openings: number;
  /** Openings left out because no cut would show them. */
  readonly specks: number;
  /** Height in the drawing's own units, before it was made 1 high. */
  readonly height: number;
}

export type Trouble =
  /** Nothing is painted, or all of it in what is not cut. */
  | 'nothing'
  /** Thin as a line: it encloses no area. */
  | 'flat'
  /** More points than a plate can be worked out with. */
  | 'tooDetailed';

export type Composed = Drawn | { readonly trouble: Trouble };
