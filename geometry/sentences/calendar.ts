/** The Gregorian calendar (ISO 8601, 4.2.1) and what its months and weekdays are called in the languages we write. */

/** A day of the calendar; month from 1. */
export interface Day {
  readonly year: number;
  readonly month: number;
  readonly day: number;
}

/** Days in a month from 1 to 12; leap years are those of the Gregorian rule. */
export function daysIn(month: number, year: number): number {
  if (month === 2) return (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0 ? 29 : 28;
  return [4, 6, 9, 11].includes(month) ? 30 : 31;
}

/** Whether there is such a day; years from 1 to 3999, as far as roman numerals go. */
export function isDay({ year, month, day }: Day): boolean {
  return year >= 1 && year <= 3999 && month >= 1 && month <= 12 && day >= 1 && day <= daysIn(month, year);
}

/** Number of the day, 1 March of the year 0 being 1, reckoned back by the Gregorian rule: only for differences and weekdays. */
export function dayNumber({ year, month, day }: Day): number {
  // Years begun in March have their odd day at the end, and their months run 31 30 31 30 31 31 30 31 30 31 31.
  const y = month > 2 ? year : year - 1;
  const m = month > 2 ? month - 3 : month + 9;
  return 365 * y + Math.floor(y / 4) - Math.floor(y / 100) + Math.floor(y / 400) + Math.floor((153 * m + 2) / 5) + day;
}

/** 0 for Sunday to 6 for Saturday. */
export function weekdayOf(day: Day): number {
  return (dayNumber(day) + 2) % 7;
}

/** `2027-06-12`, as a date field of the browser gives it. */
export function readIso(text: string): Day | undefined {
  const found = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
  if (found === null) return undefined;
  const day = { year: Number(found[1]), month: Number(found[2]), day: Number(found[3]) };
  return isDay(day) ? day : undefined;
}

/** From 1; undefined for what is no name of a month, whole or shortened, in any of our languages. */
export function monthNamed(name: string): number | undefined {
  return MONTHS.get(plain(name));
}

/** Every name of a month in lower case, the longest first, so that a pattern of them takes whole names. */
export function monthNames(): string[] {
  return [...MONTHS.keys()].sort((a, b) => b.length - a.length);
}

/** Names of the days from Sunday on, by language; Saturday has two in German. */
export const WEEKDAYS: readonly (readonly string[])[] = [
  'sunday monday tuesday wednesday thursday friday saturday',
  'sonntag montag dienstag mittwoch donnerstag freitag samstag',
  'sonntag montag dienstag mittwoch donnerstag freitag sonnabend',
  'dimanche lundi mardi mercredi jeudi vendredi samedi',
  'domingo lunes martes miércoles jueves viernes sábado',
].map((names) => names.split(' '));

/** The names, and after them how they are shortened; written without accents too, as many people type them. */
const MONTHS = new Map(
  [
    'january february march april may june july august september october november december',
    'jan feb mar apr may jun jul aug sep oct nov dec',
    'januar februar märz april mai juni juli august september oktober november dezember',
    'jänner feber maerz apr mai jun jul aug sept okt nov dez',
    'jan feb mär apr mai jun jul aug sept okt nov dez',
    'janvier février mars avril mai juin juillet août septembre octobre novembre décembre',
    'janv fevrier mars avr mai juin juil aout sept oct nov decembre',
    'janv févr mars avr mai juin juil août sept oct nov déc',
    'enero febrero marzo abril mayo junio julio agosto septiembre octubre noviembre diciembre',
    'ene feb mar abr may jun jul ago setiembre oct nov dic',
  ].flatMap((names) => names.split(' ').map((name, i) => [name, i + 1] as const)),
);

function plain(name: string): string {
  return name.toLowerCase().replace('.', '');
}
