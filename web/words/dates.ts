import { isDay, type Day } from '../../geometry/sentences/calendar.ts';
import { findDates } from '../../geometry/sentences/find-dates.ts';
import { toRoman } from '../../geometry/sentences/roman.ts';
import type { Language } from './languages.ts';

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
  for (const { from, to, readings, year } of findDates(text)) {
    if (year === undefined) continue;
    const inYear = year.short ? nearest(year.value, thisYear) : year.value;
    const day = readings.map((reading) => ({ year: inYear, ...reading })).find(isDay);
    if (day !== undefined) return { from, to, day };
  }
  return undefined;
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

function padded(value: number): string {
  return String(value).padStart(2, '0');
}

/** The year of two figures that lies at most twenty years ahead. */
function nearest(figures: number, thisYear: number): number {
  const latest = thisYear + 20;
  const year = latest - (latest % 100) + figures;
  return year > latest ? year - 100 : year;
}
