import { DOCUMENT_EN } from './document-en.ts';
import { refusedAs, sayFrom, type KeyOf } from './say.ts';
import type { Refused, Wording, WordValues } from './wording.ts';

export type DocumentKey = KeyOf<typeof DOCUMENT_EN>;

/** A part of what is said about a design's text. */
export function sayPart(key: DocumentKey, values: WordValues = {}): Wording {
  return sayFrom(DOCUMENT_EN, key, values);
}

/** Why a design's text cannot be read. */
export function refusedText(key: DocumentKey, values: WordValues = {}): Refused {
  return refusedAs(sayPart(key, values));
}

/** What a person would call a part of a design; undefined for one without a plain name. */
export function namedPart(key: string): Wording | undefined {
  return Object.hasOwn(DOCUMENT_EN.parts, key) ? sayPart(`parts.${key as keyof typeof DOCUMENT_EN.parts}`) : undefined;
}
