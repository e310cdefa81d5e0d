/** A number that a shop may question, with where it comes from. */
export interface Sourced {
  readonly value: number;
  readonly source: string;
}

/** Trade habit that no published source was found for: a starting value, to be replaced with the shop's own. */
export const COMMON_PRACTICE = 'common practice, no source';
