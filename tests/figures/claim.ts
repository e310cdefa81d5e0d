/** What one claim came to when it was measured just now. */
export interface Measured {
  readonly value: number | string;
  /** Unit or things counted, `mm`, `plates`, `times`; empty for none. */
  readonly unit: string;
  readonly ok: boolean;
}

/**
 * One thing the project says of itself. A group is a file of this folder that exports `claims`; its name is the
 * group's. Nothing is stored: measure() works the figure out each time it is printed.
 */
export interface Claim {
  /** Kebab-case; the printed line begins with `group/name`. */
  readonly name: string;
  /** What was promised, in words: `at most 0.02`, `0`. */
  readonly wanted: string;
  /** True for claims about speed: they make up `npm run bench`. */
  readonly timed?: boolean;
  measure(): Promise<Measured>;
}

/** Works a thing out once, at the first call; several claims then share it. */
export function once<T>(work: () => Promise<T>): () => Promise<T> {
  let result: Promise<T> | undefined;
  return () => (result ??= work());
}

/** A number with so many digits that it can be judged, and no more. */
export function rounded(value: number, digits = 3): number {
  return Number(value.toPrecision(digits));
}
