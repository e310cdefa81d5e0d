/**
 * What a reader sees as one sign (Unicode Standard Annex 29, extended grapheme clusters): a flag, a letter with its
 * accents, pictures joined by U+200D, a syllable of jamo. Spelled out, since Intl.Segmenter differs between engines.
 */
const SIGN =
  /\r\n|(?:\p{RI}{2}|[\s\S])(?:[\p{M}\p{Emoji_Modifier}\u200c\u1160-\u11ff\ud7b0-\ud7ff\u{e0020}-\u{e007f}]|\u200d\p{Extended_Pictographic}?)*/gu;

/** The longest beginning of a text with at most so many UTF-16 units, as a design's limits count them; no sign is cut. */
export function beginningOf(text: string, most: number): string {
  if (text.length <= most) return text;
  let end = 0;
  for (const [sign] of text.matchAll(SIGN)) {
    if (end + sign.length > most) break;
    end += sign.length;
  }
  return text.slice(0, end);
}

/** The text, or its beginning and an ellipsis, of at most so many UTF-16 units. */
export function shorten(text: string, most: number, ellipsis = '…'): string {
  return text.length <= most ? text : `${beginningOf(text, most - ellipsis.length).trimEnd()}${ellipsis}`;
}

/** A text as a sentence can quote it: one line, at most 24 UTF-16 units. */
export function shortText(text: string): string {
  return shorten(text.replace(/\s+/gu, ' ').trim(), 24);
}
