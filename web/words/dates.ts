import type { Language } from './languages.ts';
import { fromRoman, toRoman } from './roman.ts';

/** A day of the calendar; month from 1. */
export interface Day {
  readonly year: number;
  readonly month: number;
  readonly day: number;
}

/**
 * Ways of writing a date: `12 June 2027` and `June 12, 2027` as Unicode CLDR has them for the language, `12.6.27`,
 * `12.06.2027`, `2027-06-12` (ISO 8601) and `XII · VI · MMXXVII`.
 */
export const DATE_WAYS = ['long', 'month-first', 'short', 'dotted', 'iso', 'roman'] as const;
export type DateWay = (typeof DATE_WAYS)[number];

/** The ways in use where a language is spoken: the month comes first in English only. */
export function waysFor(language: Language): readonly DateWay[] {
  return language === 'en' ? DATE_WAYS : DATE_WAYS.filter((way) => way !== 'month-first');
}

/** A date as it shall stand on the plate. Years from 1 to 3999, as far as roman numerals go. */
export function writeDate({ year, month, day }: Day, way: DateWay, language: Language): string {
  switch (way) {
    case 'long':
      return inWords({ year, month, day }, language === 'en' ? 'en-GB' : language);
    case 'month-first':
      return inWords({ year, month, day }, 'en-US');
    case 'short':
      return `${day}.${month}.${padded(year % 100)}`;
    case 'dotted':
      return `${padded(day)}.${padded(month)}.${year}`;
    case 'iso':
      return `${String(year).padStart(4, '0')}-${padded(month)}-${padded(day)}`;
    case 'roman':
      return `${toRoman(day)} · ${toRoman(month)} · ${toRoman(year)}`;
  }
}

/** A date found in a text, from and to as places in it. */
export interface FoundDate {
  readonly from: number;
  readonly to: number;
  readonly day: Day;
}

/**
 * The first date in a text, written in any of our ways, in any of our languages, in capitals or not. Years of two
 * figures are taken as the nearest that lies at most twenty years ahead of thisYear.
 */
export function findDate(text: string, thisYear: number): FoundDate | undefined {
  let first: FoundDate | undefined;
  for (const { form, read } of FORMS) {
    const found = form.exec(text);
    if (found === null || (first !== undefined && found.index >= first.from)) continue;
    const day = read(found, thisYear);
    if (isDay(day)) first = { from: found.index, to: found.index + found[0].length, day };
  }
  return first;
}

/**
 * The text with a date written into it: in place of the date found there, else at the caret, a space apart from its
 * neighbours. Where all letters are capitals the date is in capitals too.
 */
export function placeDate(text: string, caret: number, written: string, thisYear: number): string {
  const fitting = /\p{Lu}/u.test(text) && !/\p{Ll}/u.test(text) ? written.toUpperCase() : written;
  const found = findDate(text, thisYear);
  if (found !== undefined) return text.slice(0, found.from) + fitting + text.slice(found.to);
  const [before, after] = [text.slice(0, caret), text.slice(caret)];
  return `${before}${/\S$/.test(before) ? ' ' : ''}${fitting}${/^\S/.test(after) ? ' ' : ''}${after}`;
}

/** `2027-06-12`, as a date field of the browser gives it. */
export function readIso(text: string): Day | undefined {
  const found = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
  if (found === null) return undefined;
  const day = { year: Number(found[1]), month: Number(found[2]), day: Number(found[3]) };
  return isDay(day) ? day : undefined;
}

function inWords({ year, month, day }: Day, locale: string): string {
  const date = new Date(0);
  date.setUTCFullYear(year, month - 1, day);
  const written = new Intl.DateTimeFormat(locale, {
    day: 'numeric',
    month: 'long',
    year: 'numeric',
    timeZone: 'UTC',
  }).format(date);
  // the first of a month is an ordinal in French, which CLDR leaves out
  return locale === 'fr' ? written.replace(/^1 /, '1er ') : written;
}

function isDay({ year, month, day }: Day): boolean {
  if (year < 1 || year > 3999 || month < 1 || month > 12 || day < 1) return false;
  const last = new Date(0);
  last.setUTCFullYear(year, month, 0);
  return day <= last.getUTCDate();
}

function padded(value: number): string {
  return String(value).padStart(2, '0');
}

/** Names of months in all our languages, whole and shortened, in lower case and without full stops. */
const MONTHS = new Map(
  ['en-GB', 'en-US', 'de', 'fr', 'es'].flatMap((locale) =>
    (['long', 'short'] as const).flatMap((month) => {
      const format = new Intl.DateTimeFormat(locale, { month, timeZone: 'UTC' });
      return Array.from({ length: 12 }, (_, i) => [plainName(format.format(Date.UTC(2000, i, 1))), i + 1] as const);
    }),
  ),
);
const LONGEST_FIRST = [...MONTHS.keys()].sort((a, b) => b.length - a.length);
const MONTH = `(${LONGEST_FIRST.join('|')})\\.?`;
const LETTER_BEFORE = '(?<![\\p{L}\\p{N}])';
const LETTER_AFTER = '(?![\\p{L}\\p{N}])';

interface Form {
  readonly form: RegExp;
  readonly read: (found: RegExpExecArray, thisYear: number) => Day;
}

const FORMS: readonly Form[] = [
  {
    form: form(`(\\d{1,2})(?:\\.|er|º)?\\s+(?:de\\s+)?${MONTH}\\s+(?:de(?:l)?\\s+)?(\\d{4})`),
    read: (m) => ({ day: Number(m[1]), month: monthOf(m[2]), year: Number(m[3]) }),
  },
  {
    form: form(`${MONTH}\\s+(\\d{1,2}),?\\s+(\\d{4})`),
    read: (m) => ({ day: Number(m[2]), month: monthOf(m[1]), year: Number(m[3]) }),
  },
  {
    form: form('(\\d{1,2})([./])\\s?(\\d{1,2})\\2\\s?(\\d{4}|\\d{2})'),
    read: (m, thisYear) => ({ day: Number(m[1]), month: Number(m[3]), year: yearOf(m[4] ?? '', thisYear) }),
  },
  {
    form: form('(\\d{4})-(\\d{2})-(\\d{2})'),
    read: (m) => ({ day: Number(m[3]), month: Number(m[2]), year: Number(m[1]) }),
  },
  {
    form: form('([IVX]+)\\s?[·.•-]\\s?([IVX]+)\\s?[·.•-]\\s?([MDCLXVI]+)'),
    read: (m) => ({
      day: fromRoman(m[1] ?? '') ?? 0,
      month: fromRoman(m[2] ?? '') ?? 0,
      year: fromRoman(m[3] ?? '') ?? 0,
    }),
  },
];

function form(inside: string): RegExp {
  return new RegExp(LETTER_BEFORE + inside + LETTER_AFTER, 'iu');
}

function monthOf(name: string | undefined): number {
  return MONTHS.get(plainName(name ?? '')) ?? 0;
}

function plainName(month: string): string {
  return month.toLowerCase().replace('.', '');
}

function yearOf(figures: string, thisYear: number): number {
  if (figures.length === 4) return Number(figures);
  const latest = thisYear + 20;
  const year = latest - (latest % 100) + Number(figures);
  return year > latest ? year - 100 : year;
}
