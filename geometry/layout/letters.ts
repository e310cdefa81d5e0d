import { createCache, memoize } from '../cache.ts';
import type { Face } from '../adapters/face.ts';
import { partAccents } from './part-accents.ts';
import { isWestern, writtenForm } from '../sentences/written-form.ts';
import { flattenOutline } from '../measure/flatten.ts';
import { mapOutline } from '../measure/map-outline.ts';
import type { Outline, Ring } from '../shapes.ts';
import { FLATTEN_ERROR_MM, FILE_DECIMALS } from '../units.ts';

/** A glyph at its size: mm, y up, its baseline's left end at the origin. */
export interface SizedGlyph {
  readonly storeKey: string;
  readonly outline: Outline;
  readonly rings: readonly Ring[];
}

/** One character of a text; a blank has no glyph. */
export interface Letter {
  readonly char: string;
  /** Number of its word, from 0. */
  readonly word: number;
  readonly advanceMm: number;
  readonly glyph?: SizedGlyph;
  /** It stands small between two initials. */
  readonly joins?: true;
}

export interface ReadText {
  readonly letters: readonly Letter[];
  /** Characters the face does not have, each once, as they were typed. */
  readonly missing: readonly string[];
  /** The text without them; plain quotes and dashes stand in for curly ones where the face has those. */
  readonly mended: string;
}

export interface Reading {
  /** A text that closes round a ring needs its blanks at both ends. */
  readonly keepEnds?: boolean;
  /** & and + are so much smaller, at half the height of the capitals, without blanks about them. */
  readonly joiner?: number | undefined;
}

/**
 * Splits a text into what a person sees as characters and takes each from the face at a size.
 * Every kind of white space counts as a space; marks that print nothing are passed over.
 * Blanks at both ends are dropped, and accents keep the least web above their letters (0: they stay as drawn).
 */
export function readText(text: string, face: Face, emMm: number, leastWebMm: number, how: Reading = {}): ReadText {
  const { keepEnds = false, joiner } = how;
  const letters: Letter[] = [];
  const missing = new Set<string>();
  let mended = '';
  let word = 0;
  const shown = Array.from(GRAPHEMES.segment(text), (part) => part.segment);
  const spaceMm = (face.glyph(' ')?.advance ?? 0.28) * emMm;
  for (const seen of shown) {
    if (BLANK.test(seen) && seen !== BYTE_ORDER_MARK) {
      mended += ' ';
      if (letters.at(-1)?.glyph) word++;
      letters.push({ char: ' ', word, advanceMm: spaceMm });
      continue;
    }
    if (INVISIBLE(seen).test(seen)) continue;
    const char = oneCodePoint(seen);
    const drawn = char === undefined ? undefined : face.glyph(char);
    if (char === undefined || !drawn) {
      missing.add(seen);
      mended += standIn(seen, face);
      continue;
    }
    mended += seen;
    // A character that is there but draws nothing (some faces have such) is only its width.
    const small = joiner !== undefined && JOINS.test(char) ? joiner : 1;
    const glyph = drawn.outline.length > 0 ? sizedGlyph(face, char, emMm, drawn.outline, small, leastWebMm) : undefined;
    const joins = small < 1 ? ({ joins: true } as const) : {};
    letters.push({ char, word, advanceMm: drawn.advance * emMm * small, ...(glyph && { glyph }), ...joins });
  }
  return {
    letters: keepEnds && letters.some((letter) => letter.glyph) ? letters : withoutBlankEnds(closedUp(letters)),
    missing: [...missing],
    mended: mended.trim(),
  };
}

/** The em at which a face's capitals are so high, rounded so that a store key in whole decimals tells it exactly. */
export function emForCapHeight(face: Face, capHeightMm: number): number {
  return Number((capHeightMm / face.capHeight).toFixed(FILE_DECIMALS));
}

/** `letter O`, `figure 8`, `sign &`. */
export function labelOf(char: string): string {
  if (LETTER(char).test(char)) return `letter ${char}`;
  return FIGURE(char).test(char) ? `figure ${char}` : `sign ${char}`;
}

const LETTER = writtenForm('\\p{L}');
const FIGURE = writtenForm('\\p{N}');

const JOINS = /^[&+]$/;

/** Letters with something above them, decomposed: an accent, or the dot of i and j. */
const ACCENTED = writtenForm('\\p{M}|^[ij]$');

/** Costly to make, and without a state. */
const GRAPHEMES = new Intl.Segmenter('en', { granularity: 'grapheme' });

const BLANK = /^[\s\u2800\u3164]+$/u;
/** Soft hyphen, joiners, direction marks, byte order mark, control characters: they print nothing. */
const INVISIBLE = writtenForm('^(?:\\p{Cc}|\\p{Cf}|\\p{Variation_Selector})+$');
const BYTE_ORDER_MARK = '\ufeff';

const STAND_INS: Readonly<Record<string, string>> = {
  '\u2018': "'",
  '\u2019': "'",
  '\u201a': "'",
  '\u201c': '"',
  '\u201d': '"',
  '\u201e': '"',
  '\u2032': "'",
  '\u2033': '"',
  '\u2010': '-',
  '\u2011': '-',
  '\u2012': '-',
  '\u2013': '-',
  '\u2014': '-',
  '\u2212': '-',
  '\u2026': '...',
  '\u2116': 'No.',
  '\u2022': '\u00b7',
};

/** A letter with its accents as one code point; an emoji without its variation sign; undefined when it takes more. */
function oneCodePoint(seen: string): string | undefined {
  if (seen.length === 1 && isWestern(seen)) return seen;
  const plain = seen.normalize('NFC').replace(/\p{Variation_Selector}/gu, '');
  return Array.from(plain).length === 1 ? plain : undefined;
}

/** The nearest that the face can draw: another form of the sign, else the letter without its accent. */
function standIn(seen: string, face: Face): string {
  const isLetter = /\p{L}|\p{N}/u.test(seen);
  const bare = UNACCENTED[seen] ?? seen.normalize('NFKD').replace(/\p{M}/gu, '');
  const tries = [STAND_INS[seen] ?? '', ...(isLetter ? [seen.normalize('NFKC'), bare] : [])];
  return tries.find((plain) => plain !== '' && plain !== seen && Array.from(plain).every((c) => face.glyph(c))) ?? '';
}

/** Letters whose stroke Unicode does not take for an accent. */
const UNACCENTED: Readonly<Record<string, string>> = {
  Ł: 'L',
  ł: 'l',
  Đ: 'D',
  đ: 'd',
  Ø: 'O',
  ø: 'o',
  Ħ: 'H',
  ħ: 'h',
  ı: 'i',
  Æ: 'AE',
  æ: 'ae',
  Œ: 'OE',
  œ: 'oe',
  ẞ: 'SS',
  ß: 'ss',
  Þ: 'Th',
  þ: 'th',
};

/** Initials stand as near to what joins them as the text is spaced, whether blanks were typed or not. */
function closedUp(letters: readonly Letter[]): readonly Letter[] {
  if (!letters.some((letter) => letter.joins)) return letters;
  const inked = letters.map((letter, i) => ({ letter, i })).filter(({ letter }) => letter.glyph);
  return letters.filter((letter, i) => {
    if (letter.glyph) return true;
    const before = inked.findLast((at) => at.i < i);
    const after = inked.find((at) => at.i > i);
    return before?.letter.joins === undefined && after?.letter.joins === undefined;
  });
}

function withoutBlankEnds(letters: readonly Letter[]): Letter[] {
  const first = letters.findIndex((letter) => letter.glyph);
  if (first < 0) return [];
  return letters.slice(first, letters.findLastIndex((letter) => letter.glyph) + 1);
}

/** Glyphs already scaled and flattened. */
const glyphsOf = memoize((_face: Face) => createCache<SizedGlyph>(1500));

function sizedGlyph(
  face: Face,
  char: string,
  emMm: number,
  outline: Outline,
  small: number,
  leastWebMm: number,
): SizedGlyph {
  const apart = char.normalize('NFD');
  const accented = leastWebMm > 0 && ACCENTED(apart).test(apart);
  const smaller = `${small === 1 ? '' : `|${small}`}${accented ? `|${leastWebMm}` : ''}`;
  const storeKey = `${face.id}|${char}|${emMm.toFixed(FILE_DECIMALS)}${smaller}`;
  return glyphsOf(face).getOrMake(storeKey, () => {
    const by = emMm * small;
    const up = ((1 - small) * face.capHeight * emMm) / 2;
    const scaled = mapOutline(outline, (x, y) => ({ x: x * by, y: y * by + up }));
    const parted = accented ? partAccents(scaled, face.capHeight * by, leastWebMm) : scaled;
    return { storeKey, outline: parted, rings: flattenOutline(parted, FLATTEN_ERROR_MM) };
  });
}
