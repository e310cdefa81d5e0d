import { visible } from '../../../geometry/design/visible.ts';
import { readIso } from '../../../geometry/sentences/calendar.ts';
import { writeDate } from '../dates.ts';
import { spoken } from '../t.ts';

/**
 * The day of a moment (ISO 8601) as the language spoken writes it, where the person is; a bare date stays that day
 * everywhere. What is no moment stands as it is.
 */
export function momentDay(at: string): string {
  const bare = readIso(at);
  const time = bare ? undefined : Date.parse(at);
  if (time !== undefined && Number.isNaN(time)) return visible(at);
  const day = bare ?? dayOf(new Date(time ?? 0));
  return writeDate(day, 'long', spoken());
}

function dayOf(date: Date) {
  return { year: date.getFullYear(), month: date.getMonth() + 1, day: date.getDate() };
}
