import type { words as cut } from './en/english-cut.ts';
import type { words as first } from './en/english-first.ts';
import type { words as proof } from './en/english-proof.ts';
import type { words as work } from './en/english-work.ts';

/** Every group in English: what all other languages are held against. */
type English = typeof first & typeof work & typeof cut & typeof proof;

/** A word's name without the ending that says how many: `notes_one` and `notes_other` are both `notes`. */
type Named<Name extends string> = Name extends `${infer Base}_zero`
  ? Base
  : Name extends `${infer Base}_one`
    ? Base
    : Name extends `${infer Base}_other`
      ? Base
      : Name;

type PathIn<Words, Before extends string = ''> = {
  [Name in keyof Words & string]: Words[Name] extends string
    ? `${Before}${Named<Name>}`
    : PathIn<Words[Name], `${Before}${Name}.`>;
}[keyof Words & string];

/** The path of a word: `page.top.undo`. */
export type Key = PathIn<English>;
