import { MM_PER_INCH } from '../../../geometry/units.ts';

import type { Unit } from '../preferences.ts';
import type { Language } from '../languages.ts';
import { spoken } from '../t.ts';

/** What a field made of what was typed: a number, or why not. */
export type Parsed = { readonly value: number } | { readonly problem: NumberProblem };
export type NumberProblem = 'empty' | 'not-a-number' | 'which-comma' | 'which-point';

/** Decimal point; decimal comma with points between thousands; decimal comma with spaces (CLDR, from memory). */
const WRITTEN: Readonly<Record<Language, 'point' | 'points-between' | 'spaces-between'>> = {
  en: 'point',
  de: 'points-between',
  fr: 'spaces-between',
  es: 'points-between',
};

/**
 * Reads a number as people type it: decimal point or comma, spaces or points between thousands, a leading plus.
 * `1,250` can mean two things a thousandfold apart, so it is asked about, never guessed; where numbers are written with
 * a decimal comma it is one and a quarter, and `1.250` is asked about instead.
 */
export function parseNumber(typed: string, language: Language = spoken()): Parsed {
  const text = typed
    .trim()
    .replace(/[\u00a0\u2009\u202f']/g, ' ')
    .replace(/\u2212/g, '-')
    .replace(/^\+\s*/, '');
  if (text === '') return { problem: 'empty' };
  const way = WRITTEN[language];
  if (way === 'point' && /^-?[1-9]\d{0,2},\d{3}$/.test(text)) return { problem: 'which-comma' };
  if (way === 'points-between' && /^-?[1-9]\d{0,2}\.\d{3}$/.test(text)) return { problem: 'which-point' };
  const plain = toPoint(text);
  return plain === undefined ? { problem: 'not-a-number' } : { value: Number(plain) };
}

/**
 * Reads a length and gives millimetres. A unit that was typed (`20 in`, `20"`, `500 mm`, `50 cm`) counts before the
 * field's own; inches may be fractions: `20 1/2`, `20-1/2`, `7/16`.
 */
export function parseLengthMm(typed: string, unit: Unit): Parsed {
  const found = /^(.*?)\s*(mm|cm|in|inch|inches|"|″|”)?\.?$/i.exec(typed.trim());
  const said = found?.[2]?.toLowerCase();
  const amount = found?.[1] ?? '';
  const factor = said === 'mm' ? 1 : said === 'cm' ? 10 : said !== undefined || unit === 'inch' ? MM_PER_INCH : 1;
  const parsed = parseFraction(amount) ?? parseNumber(amount);
  return 'value' in parsed ? { value: parsed.value * factor } : parsed;
}

/** `20 1/2`, `20-1/2`, `1/2`; undefined when it is not written as a fraction. */
function parseFraction(text: string): Parsed | undefined {
  const found = /^(-?)(?:(\d+)[\s-]+)?(\d+)\s*[/⁄]\s*(\d+)$/.exec(text.trim());
  if (found === null) return undefined;
  const below = Number(found[4]);
  if (below === 0) return { problem: 'not-a-number' };
  const value = Number(found[2] ?? 0) + Number(found[3]) / below;
  return { value: found[1] === '-' ? -value : value };
}

/** The number with a decimal point and no thousands, or undefined when it is none. */
function toPoint(text: string): string | undefined {
  const joined = text.replace(/(\d) (?=\d{3}(\D|$))/g, '$1');
  const lastComma = joined.lastIndexOf(',');
  const lastPoint = joined.lastIndexOf('.');
  let plain = joined;
  if (lastComma >= 0 && lastPoint >= 0) {
    // both signs: the later one is the decimal sign, the other stands between thousands
    const thousands = lastComma > lastPoint ? /\./g : /,/g;
    plain = joined.replace(thousands, '').replace(',', '.');
  } else if (lastComma >= 0) {
    plain = joined.replace(',', '.');
  }
  return /^-?(\d+\.?\d*|\.\d+)$/.test(plain) ? plain : undefined;
}
