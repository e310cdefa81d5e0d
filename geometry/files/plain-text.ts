import { shorten } from '../sentences/shorten.ts';
import spelled from './spelled.json' with { type: 'json' };

/** Text a person typed, on one line: control characters and line ends become spaces, runs of spaces one. */
export function oneLine(text: string, longest: number): string {
  // Lone surrogates (Cs) are no characters at all and would spoil the encoding of the file.
  const clean = text.replace(/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}\s\ufffd-\uffff]+/gu, ' ').trim();
  return shorten(clean, longest);
}

/** Accents folded to their letters and the few letters that do not decompose spelled out; what is left may not be ASCII. */
export function foldAccents(text: string): string {
  return text
    .replace(/[ßæÆœŒøØłŁđĐðÐþÞı]/g, (c) => SPELLED[c] ?? c)
    .normalize('NFKD')
    .replace(/\p{M}+/gu, '');
}

const SPELLED: Readonly<Record<string, string>> = spelled;
