import { visible } from '../../../geometry/design/visible.ts';
import { readIso } from '../../../geometry/sentences/calendar.ts';
import { writeDate } from '../dates.ts';
import { spoken } from '../t.ts';

/*
 * Moments that a file carries (ISO 8601), as the language spoken writes them, where the person is. A bare date is that
 * day everywhere. Text that is no moment is shown as it is, fit to be quoted: somebody else wrote the file.
 */

/** The day alone: `12 June 2027`. */
export function momentDay(at: string): string {
  const date = readMoment(at);
  if (date === undefined) return visible(at);
  const day = readIso(at) ?? { year: date.getFullYear(), month: date.getMonth() + 1, day: date.getDate() };
  return writeDate(day, 'long', spoken());
}

/** Day and time: `12 Jun 2027, 14:05`; a bare date without a time. */
export function momentWords(at: string): string {
  const date = readMoment(at);
  if (date === undefined) return visible(at);
  return new Intl.DateTimeFormat(spoken() === 'en' ? 'en-GB' : spoken(), {
    dateStyle: 'medium',
    ...(readIso(at) ? { timeZone: 'UTC' } : { timeStyle: 'short' }),
  }).format(date);
}

function readMoment(at: string): Date | undefined {
  // what is no ISO 8601 a browser would guess at, each in its own way
  if (readIso(at.slice(0, 10)) === undefined || !/^.{10}(?:T[\d:.]+(?:Z|[+-]\d\d:?\d\d)?)?$/.test(at)) return undefined;
  const date = new Date(at);
  return Number.isNaN(date.getTime()) ? undefined : date;
}
