import { APPROVAL_EN } from './approval-en.ts';
import { readIso } from './calendar.ts';
import type { Wording } from './wording.ts';

const MONTHS = [
  'january',
  'february',
  'march',
  'april',
  'may',
  'june',
  'july',
  'august',
  'september',
  'october',
  'november',
  'december',
] as const;

/**
 * The day of a moment by ISO 8601, as people write it: `4 January 2027`. It is the day that the text itself names, in no
 * other time zone, so that a paper is the same everywhere. Anything else comes back as it is.
 */
export function dayWords(at: string): Wording | string {
  const day = readIso(at.slice(0, 10));
  const month = day && MONTHS[day.month - 1];
  if (!month) return at;
  return APPROVAL_EN.say('days.written', {
    day: String(day.day),
    month: APPROVAL_EN.say(`days.${month}`),
    year: String(day.year),
  });
}
