import type { Finding, Place } from '../findings.ts';
import type { CheckInput } from './input.ts';
import { checkDates } from './lettering/dates.ts';
import { checkDoubledWords } from './lettering/doubled-words.ts';
import { checkFiguresForLetters } from './lettering/figures-for-letters.ts';
import { checkInvisibleSigns } from './lettering/invisible-signs.ts';
import type { Lettering } from './lettering/lettering.ts';
import { checkNamesAlike } from './lettering/names-alike.ts';
import { checkOneAlphabet } from './lettering/one-alphabet.ts';
import { checkQuotes } from './lettering/quotes.ts';
import { checkRomanNumerals } from './lettering/roman-numerals.ts';
import { checkSpaces } from './lettering/spaces.ts';

const CHECKS: readonly ((lettering: Lettering) => Finding[])[] = [
  checkNamesAlike,
  checkDates,
  checkRomanNumerals,
  checkDoubledWords,
  checkOneAlphabet,
  checkFiguresForLetters,
  checkQuotes,
  checkSpaces,
  checkInvisibleSigns,
];

/**
 * What spoils an order though the plate is sound: spelling, dates, signs. Plates of a design carry the same texts, so
 * this is said with the first of them that is lettered. Nothing is ever changed; a mend is one click of a person's.
 */
export function checkLettering({ design, plate, diameterMm }: CheckInput): Finding[] {
  if (plate.id !== design.plates.find((p) => p.masks === undefined)?.id) return [];
  const radiusMm = diameterMm / 2;
  const texts = design.elements.flatMap((e) => (e.kind === 'ringText' || e.kind === 'lineText' ? [e] : []));
  const placeOf: Lettering['placeOf'] = (text): Place =>
    text.kind === 'ringText'
      ? {
          kind: 'band',
          innerMm: Math.min(text.inner, text.outer) * radiusMm,
          outerMm: Math.max(text.inner, text.outer) * radiusMm,
        }
      : {
          kind: 'point',
          at: { x: text.x * radiusMm, y: text.y * radiusMm },
          radiusMm: text.capHeight * radiusMm,
        };
  return CHECKS.flatMap((check) => check({ texts, placeOf }));
}
