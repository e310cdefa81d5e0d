/** A number in a sentence, to so many decimals at most; each language writes it its own way. */
export interface Amount {
  readonly amount: number;
  readonly decimals: number;
  /** Absent for a bare number. The page may say a length in inches. */
  readonly unit?: 'mm';
}

/** What fills a gap in a sentence: text as typed, numbers, or words that are translated themselves. */
export type WordValue = string | number | Amount | Wording | readonly Wording[];

export type WordValues = Readonly<Record<string, WordValue>>;

/** Something said so that it can be said in any language: which sentence, and what fills it. */
export interface Wording {
  /** Path in the tables of words: `findings.emptyText`, `materials.mild-steel.name`. */
  readonly key: string;
  readonly values: WordValues;
  readonly english: string;
}

/** Why something that was given could not be taken; it says what to do. */
export interface Refused {
  readonly problem: string;
  /** The same for other languages. */
  readonly words: Wording;
}
