import { createCache } from '../../cache.ts';
import type { TextElement } from '../../design/schema.ts';
import type { Finding } from '../../findings.ts';
import { daysIn, isDay, WEEKDAYS, weekdayOf, type Day } from '../../sentences/calendar.ts';
import { findDates, type WrittenDate, yearsMeant } from '../../sentences/find-dates.ts';
import type { SaidKey } from '../../sentences/say.ts';
import type { WordValues } from '../../sentences/wording.ts';
import { writtenForm } from '../../sentences/written-form.ts';
import { type Lettering, remark } from './lettering.ts';

/** Before 1753 a country's calendar may not be ours (Britain changed in 1752; Russia and Greece in the 20th century, whose dates are not read). */
const SURE_WEEKDAYS_FROM = 1753;

/**
 * Dates that no calendar has (`31 June`), dates in figures that can be read in two orders (a note), and weekdays that do
 * not fall on the date beside them. A year of two figures may be of either century: what fits one is well.
 */
export function checkDates(lettering: Lettering): Finding[] {
  return lettering.texts.flatMap((on) => datesIn(on.text).flatMap((date) => judge(lettering, on, date)));
}

/** The dates in a text. It stands unchanged through many keystrokes, and their patterns take milliseconds to build anew. */
export function datesIn(text: string): readonly WrittenDate[] {
  return KNOWN.getOrMake(text, () => findDates(text));
}

const KNOWN = createCache<readonly WrittenDate[]>(500);

/** Every day a date can mean, the likeliest first; none where there is no such day. */
export function daysMeant({ readings, year }: WrittenDate): Day[] {
  // Without a year, 29 February may be right.
  const years = year === undefined ? [2000] : yearsMeant(year);
  return readings.flatMap((reading) => years.map((y) => ({ year: y, ...reading })).filter(isDay));
}

/** What to say of a date that is no day: how long its month is, where that alone is wrong. */
export function noSuchDay({ text, readings, year }: WrittenDate): { says: SaidKey; values: WordValues } {
  const [{ day, month } = { day: 0, month: 0 }] = readings;
  const sure = readings.length === 1 && day > 0 && month >= 1 && month <= 12;
  if (!sure) return { says: 'lettering.noSuchDate', values: { date: text } };
  const [first = 2000] = year === undefined ? [] : yearsMeant(year);
  return { says: 'lettering.monthTooShort', values: { date: text, days: daysIn(month, first) } };
}

function judge(lettering: Lettering, on: TextElement, date: WrittenDate): Finding[] {
  const days = daysMeant(date);
  if (days.length === 0) {
    return [remark(lettering, { code: 'impossible-date', severity: 'look', on: [on], ...noSuchDay(date) })];
  }
  const named = date.year === undefined ? undefined : weekdayBeside(on.text, date);
  const fitting = named === undefined ? days : days.filter((day) => weekdayOf(day) === named.number);
  const [day] = days;
  if (named !== undefined && fitting.length === 0 && day && day.year >= SURE_WEEKDAYS_FROM) {
    const right = WEEKDAYS[named.language]?.[weekdayOf(day)] ?? '';
    const values = { date: date.text, typed: named.typed, right: cased(right, named.typed) };
    return [
      remark(lettering, { code: 'wrong-weekday', severity: 'look', on: [on], says: 'lettering.wrongWeekday', values }),
    ];
  }
  if (new Set(fitting.map((d) => `${d.day} ${d.month}`)).size < 2) return [];
  const values = { date: date.text };
  return [
    remark(lettering, { code: 'ambiguous-date', severity: 'note', on: [on], says: 'lettering.twoOrders', values }),
  ];
}

interface Named {
  readonly typed: string;
  readonly language: number;
  readonly number: number;
}

/**
 * English weekdays are also known by three letters, but for `wed` and `sun`, which are words; others only whole, since
 * `Sam`, `Dom` and `Mar` are names or words as well.
 */
const SHORT = ['', 'mon', 'tue', '', 'thu', 'fri', 'sat'];
const NAMES = [...new Set([...WEEKDAYS.flat(), ...SHORT.filter((name) => name !== '')])].join('|');
const BEFORE = writtenForm(`(?<!\\p{L})(${NAMES})\\.?,?\\s+(?:(?:the|den|dem|der|le|el)\\s+)?$`, 'i');
const AFTER = writtenForm(`^,?\\s+\\(?(${WEEKDAYS.flat().join('|')})(?!\\p{L})`, 'i');

function weekdayBeside(text: string, { from, to }: WrittenDate): Named | undefined {
  const typed = BEFORE(text).exec(text.slice(0, from))?.[1] ?? AFTER(text).exec(text.slice(to))?.[1];
  if (typed === undefined) return undefined;
  const name = typed.toLowerCase();
  if (SHORT.includes(name)) return { typed, language: 0, number: SHORT.indexOf(name) };
  const language = WEEKDAYS.findIndex((names) => names.includes(name));
  return { typed, language, number: WEEKDAYS[language]?.indexOf(name) ?? 0 };
}

/** In capitals, or with one, as another word is. */
function cased(word: string, like: string): string {
  if (like === like.toUpperCase()) return word.toUpperCase();
  return like.charAt(0) === like.charAt(0).toUpperCase() ? word.charAt(0).toUpperCase() + word.slice(1) : word;
}
