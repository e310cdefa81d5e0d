import { monthNamed, monthNames } from './calendar.ts';
import { fromRoman } from './roman.ts';
import { type WrittenForm, writtenForm } from './written-form.ts';

/** What a date says of day and month, whether there is such a day or not. */
export interface Reading {
  readonly day: number;
  readonly month: number;
}

/** A date as it stands in a text, from and to as places in it. */
export interface WrittenDate {
  readonly from: number;
  readonly to: number;
  readonly text: string;
  /** The likeliest first. Figures parted by strokes can be read in two orders. */
  readonly readings: readonly Reading[];
  /** As it is written, `27` or `2027`; undefined for a day without a year. */
  readonly year: { readonly value: number; readonly short: boolean } | undefined;
}

/**
 * Every date in a text, in the order of the text, written in any of our ways in any of our languages, in capitals or
 * not: `12 June 2027`, `June 12, 2027`, `31 de junio`, `12.6.27`, `06/12/2027`, `2027-06-12`, `XII · VI · MMXXVII`.
 * Impossible ones are found too. What is hardly meant as a date is not: `60/30/10`, `May 50`, `Lot 31 · June 2027`.
 */
export function findDates(text: string): WrittenDate[] {
  const found: WrittenDate[] = [];
  for (const { may, form, read } of FORMS) {
    if (!may(text)) continue;
    for (const match of text.matchAll(form(text))) {
      const [from, to] = [match.index, match.index + match[0].length];
      if (found.some((other) => from < other.to && other.from < to)) continue;
      const date = read(match);
      if (date !== undefined) found.push({ from, to, text: match[0], ...date });
    }
  }
  return found.sort((a, b) => a.from - b.from);
}

/** The years that a year of two figures may mean on a plate, the latest first; else the one that is written. */
export function yearsMeant({ value, short }: { readonly value: number; readonly short: boolean }): readonly number[] {
  return short ? [2000 + value, 1900 + value] : [value];
}

const MONTHS = monthNames();
const MONTH = `(${MONTHS.join('|')})\\.?`;
const ORDINAL = '(?:\\.|er|st|nd|rd|th|\\.?º)?';
/** Between day, month in words and year: no bullet, which parts what does not belong together. */
const BETWEEN = '[\\s/-]*';
const OF = '(?:del?\\s+|of\\s+)?';
/** `June 31 years old` is no date. */
const NO_AGE = '(?!\\s*(?:years|yrs|jahre|ans|años|th|%|[.,:/-]?\\d))';

interface Form {
  /** Told at a glance: false only of a text that the form is not found in. Forms are long, and most texts hold no date. */
  readonly may: (text: string) => boolean;
  readonly form: WrittenForm;
  readonly read: (match: RegExpMatchArray) => Pick<WrittenDate, 'readings' | 'year'> | undefined;
}

/** What is written most fully comes first: a shorter form does not take a part of it. */
const FORMS: readonly Form[] = [
  {
    may: mayNameMonth,
    form: form(`(\\d{1,2})${ORDINAL}${BETWEEN}${OF}${MONTH}${BETWEEN}${OF}(\\d{4})`),
    read: (m) => date(m[1], monthNamed(m[2]!), m[3]),
  },
  {
    may: mayNameMonth,
    form: form(`${MONTH}\\s+(\\d{1,2})${ORDINAL},?\\s+(\\d{4})`),
    read: (m) => date(m[2], monthNamed(m[1]!), m[3]),
  },
  { may: mayBeInFigures, form: form('(\\d{4})-(\\d{2})-(\\d{2})'), read: (m) => date(m[3], Number(m[2]), m[1]) },
  {
    may: mayBeInFigures,
    form: form('(\\d{1,2})\\.\\s?(\\d{1,2})\\.\\s?(\\d{4}|\\d{2})'),
    read: (m) => inFigures(m, false),
  },
  { may: mayBeInFigures, form: form('(\\d{1,2})/\\s?(\\d{1,2})/\\s?(\\d{4}|\\d{2})'), read: (m) => inFigures(m, true) },
  { may: mayBeInFigures, form: form('(\\d{1,2})-(\\d{1,2})-(\\d{4})'), read: (m) => inFigures(m, true) },
  {
    may: (text) => /[IVX]\s?[·.•-]\s?[IVX]/i.test(text),
    form: form('([IVX]+)\\s?[·.•-]\\s?([IVX]+)\\s?[·.•-]\\s?([MDCLXVI]+)'),
    read: (m) => {
      const [day, month, value] = [fromRoman(m[1]!), fromRoman(m[2]!), fromRoman(m[3]!)];
      if (day === undefined || month === undefined || value === undefined) return undefined;
      return { readings: [{ day, month }], year: { value, short: false } };
    },
  },
  {
    may: mayNameMonth,
    form: form(`(\\d{1,2})${ORDINAL}\\s*${OF}${MONTH}`),
    read: (m) => withoutYear(Number(m[1]), monthNamed(m[2]!)),
  },
  {
    may: mayNameMonth,
    form: form(`${MONTH}\\s+(\\d{1,2})(?:st|nd|rd|th)?${NO_AGE}`),
    read: (m) => withoutYear(Number(m[2]), monthNamed(m[1]!)),
  },
];

function mayBeInFigures(text: string): boolean {
  return /\d[./-]\s?\d/.test(text);
}

function mayNameMonth(text: string): boolean {
  if (!/\d/.test(text)) return false;
  const small = text.toLowerCase();
  return MONTHS.some((name) => small.includes(name));
}

/** It begins and ends where a word does, and is no part of a longer row of figures. */
function form(inside: string): WrittenForm {
  return writtenForm(`(?<![\\p{L}\\p{N}]|\\d[./-])${inside}(?![\\p{L}\\p{N}]|[./-]\\d)`, 'gi');
}

function date(day: string | undefined, month: number | undefined, year: string | undefined) {
  if (month === undefined) return undefined;
  return { readings: [{ day: Number(day), month }], year: yearIn(year) };
}

/** Two figures above 12 are a blend or a score, as 60/30/10, unless a whole year stands with them. */
function inFigures(match: RegExpMatchArray, eitherOrder: boolean) {
  const [first, second, year] = [Number(match[1]), Number(match[2]), yearIn(match[3])];
  const likely = Math.max(first, second) <= 31 && (Math.min(first, second) <= 12 || !year.short);
  if (!likely && (year.short || Math.max(first, second) > 39)) return undefined;
  const dayFirst = { day: first, month: second };
  const other = eitherOrder && first !== second ? [{ day: second, month: first }] : [];
  return { readings: [dayFirst, ...other], year };
}

function withoutYear(day: number, month: number | undefined) {
  if (month === undefined || day < 1 || day > 31) return undefined;
  return { readings: [{ day, month }], year: undefined };
}

function yearIn(figures = ''): { readonly value: number; readonly short: boolean } {
  return { value: Number(figures), short: figures.length < 4 };
}
