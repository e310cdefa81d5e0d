import { daysMeant } from '../../../geometry/checks/lettering/dates.ts';
import { isText } from '../../../geometry/design/kinds.ts';
import type { Design } from '../../../geometry/design/schema.ts';
import type { Day } from '../../../geometry/sentences/calendar.ts';
import { findDates } from '../../../geometry/sentences/find-dates.ts';
import type { Language } from '../../words/languages.ts';

/** A date of a text, and every day it can mean, written out with its weekday. None: there is no such day. */
export interface SpeltDate {
  readonly text: string;
  readonly days: readonly string[];
}

interface SpeltText {
  readonly id: string;
  readonly text: string;
  readonly dates: readonly SpeltDate[];
}

/** Every text of a design in its order, to be read letter by letter; blank ones are left out, since nothing of them is cut. */
export function spellTexts({ elements }: Design, language: Language): readonly SpeltText[] {
  return elements.filter(isText).flatMap(({ id, text }) => {
    if (text.trim() === '') return [];
    const dates = findDates(text).flatMap((date) =>
      // a day without a year falls on another weekday each year: there is nothing to write out
      date.year === undefined ? [] : [{ text: date.text, days: daysMeant(date).map((day) => inFull(day, language)) }],
    );
    return [{ id, text, dates }];
  });
}

function inFull({ year, month, day }: Day, language: Language): string {
  const date = new Date(0);
  date.setUTCFullYear(year, month - 1, day);
  return new Intl.DateTimeFormat(language === 'en' ? 'en-GB' : language, { dateStyle: 'full', timeZone: 'UTC' }).format(
    date,
  );
}
