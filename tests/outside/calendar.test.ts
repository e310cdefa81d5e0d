import { describe, expect, it } from 'vitest';
import { daysIn, dayNumber, isDay, weekdayOf } from '../../geometry/sentences/calendar.ts';

describe('the calendar against the Date of JavaScript (ECMA-262, which counts by the Gregorian rule)', () => {
  it('has the same days, weekdays and distances over 1800 to 2200', () => {
    let last: number | undefined;
    for (let at = Date.UTC(1800, 0, 1); at <= Date.UTC(2200, 11, 31); at += 86_400_000) {
      const date = new Date(at);
      const day = { year: date.getUTCFullYear(), month: date.getUTCMonth() + 1, day: date.getUTCDate() };
      if (!isDay(day) || weekdayOf(day) !== date.getUTCDay()) throw new Error(`${date.toISOString()} differs`);
      const number = dayNumber(day);
      if (last !== undefined && number !== last + 1) throw new Error(`${date.toISOString()} is not the next day`);
      last = number;
    }
  });
  it('has months as long', () => {
    for (let year = 1800; year <= 2200; year++) {
      for (let month = 1; month <= 12; month++) {
        const days = new Date(Date.UTC(year, month, 0)).getUTCDate();
        if (daysIn(month, year) !== days) throw new Error(`${year}-${month} differs`);
        expect(isDay({ year, month, day: days + 1 })).toBe(false);
      }
    }
  });
});

// ISO 8601, Gregorian rule: centurial years are leap years only when 400 divides them (from memory).
it.each([
  [1600, 29],
  [1700, 28],
  [1900, 28],
  [2000, 29],
  [2100, 28],
  [2024, 29],
  [2027, 28],
])('February of %i has %i days', (year, days) => {
  expect(daysIn(2, year)).toBe(days);
});

// Zeller's congruence for the Gregorian calendar (Acta Mathematica 9, 1887; from memory): 0 is Saturday.
it('has the weekdays of Zeller’s congruence, the first of every month from 1583 to 3999', () => {
  for (let year = 1583; year <= 3999; year++) {
    for (let month = 1; month <= 12; month++) {
      const [m, y] = month < 3 ? [month + 12, year - 1] : [month, year];
      const [k, j] = [y % 100, Math.floor(y / 100)];
      const h = (1 + Math.floor((13 * (m + 1)) / 5) + k + Math.floor(k / 4) + Math.floor(j / 4) + 5 * j) % 7;
      if (weekdayOf({ year, month, day: 1 }) !== (h + 6) % 7) throw new Error(`${year}-${month} differs`);
    }
  }
});
