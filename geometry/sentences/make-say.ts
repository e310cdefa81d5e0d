import { fillGaps, type Voice } from './fill.ts';
import type { Refused, Wording, WordValues } from './wording.ts';
import { writtenNumber } from './written-number.ts';

/** Sentences by part and name, their gaps as `{{name}}`. */
type Templates = Readonly<Record<string, Readonly<Record<string, string>>>>;
type PathIn<T extends Templates> = { [Part in keyof T & string]: `${Part}.${keyof T[Part] & string}` }[keyof T &
  string];

/** What a finding or a difference carries: English, and what other languages need. */
export interface Said {
  readonly sentence: string;
  readonly words: Wording;
}

/** A table of English sentences and the three ways to say one. Each table is a file, so that it is loaded where it is needed. */
export interface Sentences<T extends Templates> {
  readonly table: T;
  /** A sentence, or a part of one. */
  readonly say: (key: PathIn<T>, values?: WordValues) => Wording;
  /** A whole sentence: it begins with a capital. */
  readonly said: (key: PathIn<T>, values?: WordValues) => Said;
  /** Why something could not be taken: it begins with a capital. */
  readonly refused: (key: PathIn<T>, values?: WordValues) => Refused;
}

/** The keys of a table: `KeyOf<typeof CUT_EN>`. */
export type KeyOf<S extends { readonly table: Templates }> = PathIn<S['table']>;

const ENGLISH: Voice = {
  words: ({ english }) => english,
  number: (value, decimals) => writtenNumber(value, decimals, 'en'),
  length: (mm, decimals) => `${writtenNumber(mm, decimals, 'en')} mm`,
};

export function makeSay<const T extends Templates>(table: T): Sentences<T> {
  const say = (key: PathIn<T>, values: WordValues = {}): Wording => {
    const [part = '', name = ''] = key.split('.');
    return { key, values, english: fillGaps(table[part]?.[name] ?? key, values, ENGLISH) };
  };
  return {
    table,
    say,
    said: (key, values) => {
      const words = say(key, values);
      return { sentence: capitalised(words.english), words };
    },
    refused: (key, values) => {
      const words = say(key, values);
      return { problem: capitalised(words.english), words };
    },
  };
}

export function capitalised(sentence: string): string {
  return sentence.charAt(0).toUpperCase() + sentence.slice(1);
}
