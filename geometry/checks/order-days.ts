import type { Design } from '../design/schema.ts';
import { type Finding, sortFindings, type Verdict, verdictOf } from '../findings.ts';
import { type Day, dayNumber } from '../sentences/calendar.ts';
import { findDates, type WrittenDate } from '../sentences/find-dates.ts';
import { said, type SaidKey } from '../sentences/say.ts';
import type { WordValues } from '../sentences/wording.ts';
import { aboutPlate } from './about-plate.ts';
import { datesIn, daysMeant, noSuchDay } from './lettering/dates.ts';

/** So long after the day an order is needed by, at most, the occasion is that it is needed for. */
const OCCASION_DAYS = 62;

interface Judged {
  readonly plateId: string;
  readonly findings: readonly Finding[];
  readonly verdict: Verdict;
}

/**
 * A finished plate with what is to be said of the days of its order added to its findings: with the first plate that is
 * lettered, since there is one order. Neither the plate nor its files depend on it. today: undefined where nobody knows
 * it; then only what needs no clock is said.
 */
export function withOrderDays<P extends Judged>(plate: P, design: Design, today: Day | undefined): P {
  if (plate.plateId !== design.plates.find((p) => p.masks === undefined)?.id) return plate;
  const added = checkOrderDays(design, today);
  if (added.length === 0) return plate;
  const findings = sortFindings([...plate.findings, ...added]);
  return { ...plate, findings, verdict: verdictOf(findings) };
}

/**
 * The day an order is needed by: no day of the calendar, or past (`look`). Held against the one full date of the
 * lettering, these are notes:
 *
 * - the date lies ahead of today and before the day the order is needed by: the plate would come too late;
 * - the date is past, and its next year's day falls on the day the order is needed by or up to two months later: last
 *   year's number may have been typed.
 *
 * Dates in the past are right on most plates (filled, founded, born, married), so nothing else is made of them. With
 * several dates, or one that can be read in two ways, nobody knows which is the occasion, and nothing is said.
 */
export function checkOrderDays(design: Design, today: Day | undefined): Finding[] {
  const written = findDates(design.order.neededBy).find((date) => date.year !== undefined);
  if (written === undefined) return [];
  const days = daysMeant(written);
  if (days.length === 0) {
    const { says, values } = noSuchDay(written);
    return [remark('needed-by-impossible', 'look', says, values)];
  }
  if (today === undefined) return [];
  const now = dayNumber(today);
  // Where it can be read in two ways it is only past when both are.
  const [by, ways] = [written.text, inOurCentury(written)];
  const needed = Math.max(...ways.map(dayNumber));
  if (needed < now) return [remark('needed-by-past', 'look', 'lettering.neededPast', { date: by })];
  const occasion = onlyDate(design);
  if (occasion === undefined || ways.length > 1) return [];
  const { text: date, day } = occasion;
  const at = dayNumber(day);
  if (at >= now && at < needed) return [remark('needed-after-date', 'note', 'lettering.neededAfter', { date, by })];
  const until = dayNumber({ ...day, year: day.year + 1 }) - needed;
  if (at >= now || until < 0 || until > OCCASION_DAYS) return [];
  return [remark('last-years-date', 'note', 'lettering.lastYear', { date, by })];
}

/** The full date of the lettering, where there is one alone and it means one day. */
function onlyDate({ elements }: Design): { readonly text: string; readonly day: Day } | undefined {
  const dates = elements.flatMap((e) => ('text' in e ? datesIn(e.text) : [])).filter((d) => d.year !== undefined);
  const [date, ...others] = dates;
  if (date === undefined || others.length > 0) return undefined;
  const [day, ...ways] = inOurCentury(date);
  return day !== undefined && ways.length === 0 ? { text: date.text, day } : undefined;
}

/** What a date can mean that is near today: a year of two figures is of this century, unless only the last has it. */
function inOurCentury(date: WrittenDate): readonly Day[] {
  const days = daysMeant(date);
  const ours = days.filter((day) => !date.year?.short || day.year >= 2000);
  return ours.length > 0 ? ours : days;
}

function remark(code: string, severity: 'look' | 'note', says: SaidKey, values: WordValues): Finding {
  return { ...aboutPlate(code, severity), ...said(says, values) };
}
