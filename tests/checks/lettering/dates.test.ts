import { describe, expect, it } from 'vitest';
import { datesIn } from '../../../geometry/checks/lettering/dates.ts';
import { checkOrderDays, withOrderDays } from '../../../geometry/checks/order-days.ts';
import { designOf, codesOf, findingsOf, mended } from './read.ts';

describe('a date that no calendar has', () => {
  it.each([
    '31 June 2027',
    '31st of June',
    'JUNE 31, 2027',
    '31. Juni 2027',
    '31 juin 2027',
    '31 de junio de 2027',
    '30 FÉVRIER',
    '29 February 2027',
    '29.2.27',
    '12.13.2027',
    '31/06/2027',
    '13/13/2027',
    '2027-02-29',
    '2027-13-01',
    'XXXI · VI · MMXXVII',
    'FILLED 31 NOV 2026',
  ])('is seen in %j', (text) => {
    expect(codesOf(text)).toEqual(['look impossible-date']);
  });
  it.each([
    '30 June 2027',
    '29 February 2028',
    '29 February',
    '29.2.28',
    '29.2.00',
    '12.6.27',
    'XII · VI · MMXXVII',
    'MAY 50',
    'June 31 years',
    'LOT 31 • JUNE 2027',
    '60/30/10',
    '24/7/365',
    '01.23.45.67.89',
    '1927 – 2027',
  ])('is not seen in %j', (text) => {
    expect(codesOf(text)).toEqual([]);
  });
  it('is said with the length of its month', () => {
    expect(findingsOf(designOf('31 June 2027'))[0]?.sentence).toContain('that month has 30 days');
    expect(findingsOf(designOf('29.2.27'))[0]?.sentence).toContain('28');
  });
});

describe('a date in two orders', () => {
  it('is a note, unless one order alone makes a day', () => {
    expect(codesOf('06/12/2027')).toEqual(['note ambiguous-date']);
    for (const text of ['06/13/2027', '13/06/2027', '06/06/2027', '6.12.2027', '2027-06-12', 'Saturday 12/06/2027']) {
      expect(codesOf(text)).toEqual([]);
    }
  });
});

describe('a weekday beside a date', () => {
  it('is held against it, in four languages', () => {
    for (const text of [
      'Friday 12 June 2027',
      'FREITAG, DEN 12. JUNI 2027',
      'vendredi 12 juin 2027',
      'Viernes 12.6.2027',
    ]) {
      expect(codesOf(text)).toEqual(['look wrong-weekday']);
    }
    for (const text of [
      'Saturday 12 June 2027',
      'Sat 12 June 2027',
      'SONNABEND, DEN 12. JUNI 2027',
      'samedi 12 juin 2027',
      'sábado 12.6.27',
    ]) {
      expect(codesOf(text)).toEqual([]);
    }
    expect(findingsOf(designOf('FRIDAY 12 JUNE 2027'))[0]?.sentence).toContain('SATURDAY');
  });
  it('is left alone where it may be a name, and before the calendar was ours', () => {
    for (const text of ['SAM 11 June 2027', 'WED 12 June 2027', 'Friday 1 May 1700']) expect(codesOf(text)).toEqual([]);
  });
});

describe('roman numerals', () => {
  it.each(['VX', 'IIX', 'MMXXVX', 'CASK VV'])('%s is wrongly formed', (text) => {
    expect(codesOf(text)).toEqual(['look roman-malformed']);
  });
  it('IIII is only a note', () => {
    expect(codesOf('CASK IIII')).toEqual(['note roman-older-form']);
    expect(mended('CASK IIII')).toBe('CASK IV');
  });
  it.each(['XIV', 'MMXXVII', 'CIVIC', 'MIX', 'VIVI', 'CD', 'VENI VIDI VICI', 'MILL', 'XXL', 'DVD', 'MCM'])(
    '%s is let be',
    (text) => {
      expect(codesOf(text)).toEqual([]);
    },
  );
});

describe('the day an order is needed by', () => {
  const TODAY = { year: 2026, month: 11, day: 25 };
  const codes = (neededBy: string, text = '', today: typeof TODAY | undefined = TODAY): string[] => {
    const design = designOf(text);
    const order = { ...design.order, neededBy };
    return checkOrderDays({ ...design, order }, today).map((f) => `${f.severity} ${f.code}`);
  };
  it('may not be past', () => {
    expect(codes('2026-11-24')).toEqual(['look needed-by-past']);
    expect(codes('24 November 2026')).toEqual(['look needed-by-past']);
    expect(codes('24.11.26')).toEqual(['look needed-by-past']);
    for (const day of ['2026-11-25', '2027-05-14', 'as soon as can be', '', '05/12/2026', '24 November']) {
      expect(codes(day)).toEqual([]);
    }
  });
  it('must be a day, whatever day it is now', () => {
    expect(codes('31 June 2027', '', undefined)).toEqual(['look needed-by-impossible']);
    const order = { ...designOf('').order, neededBy: '2026-11-24' };
    expect(checkOrderDays({ ...designOf(''), order }, undefined)).toEqual([]);
  });
  it('is held against the date on the plate', () => {
    expect(codes('20 June 2027', '12 JUNE 2027')).toEqual(['note needed-after-date']);
    expect(codes('1 June 2027', '12 JUNE 2026')).toEqual(['note last-years-date']);
    for (const text of ['12 JUNE 2027', '14 OCT 2026', '12 June 1977', 'SINCE 1927', '12.6.1977 – 12.6.2027']) {
      expect(codes('1 June 2027', text)).toEqual([]);
    }
  });
  it('is said with the first plate only, and counts there', () => {
    const base = designOf('MARROW');
    const design = { ...base, order: { ...base.order, neededBy: '2026-11-24' } };
    const plate = { plateId: design.plates[0]!.id, findings: [], verdict: 'ready' as const };
    expect(withOrderDays(plate, design, TODAY).verdict).toBe('look');
    expect(withOrderDays({ ...plate, plateId: 'other' }, design, TODAY).verdict).toBe('ready');
  });
});

it('a text that stands as it stood is not read for dates again, in any number of keystrokes', () => {
  const text = 'FILLED 12 JUNE 2027';
  const once = datesIn(text);
  expect(once).toHaveLength(1);
  for (let i = 0; i < 200; i++) datesIn(`CASK ${i} · ${i % 28} MAY 2027`);
  expect(datesIn(['FILLED', '12', 'JUNE', '2027'].join(' '))).toBe(once);
});
