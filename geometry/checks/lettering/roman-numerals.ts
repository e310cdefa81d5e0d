import type { Finding } from '../../findings.ts';
import { fromRoman, toRoman } from '../../sentences/roman.ts';
import { writtenForm } from '../../sentences/written-form.ts';
import { type Lettering, remark, spliced } from './lettering.ts';

const NUMERAL = writtenForm("(?<![\\p{L}\\p{N}'’-])[IVXLCDM]{2,}(?![\\p{L}\\p{N}'’-])", 'g');

/**
 * Roman numerals that are wrongly formed: `VX`, `IIX`, `MMXXVX`. What a word or initials could be (`CIVIC`, `MIX`, `VIVI`)
 * is let be: only signs of I, V and X, or what begins like a year, are taken for numerals. Four like signs (`IIII`, as on
 * the faces of clocks) are an older way of writing, which is a note.
 */
export function checkRomanNumerals(lettering: Lettering): Finding[] {
  return lettering.texts.flatMap((on) =>
    [...on.text.matchAll(NUMERAL(on.text))].flatMap((found) => {
      const [numeral] = found;
      if (!looksLikeOne(numeral) || fromRoman(numeral) !== undefined) return [];
      const value = addedUp(numeral);
      const usual = value === undefined ? undefined : toRoman(value);
      return [
        remark(lettering, {
          code: usual === undefined ? 'roman-malformed' : 'roman-older-form',
          severity: usual === undefined ? 'look' : 'note',
          on: [on],
          says: usual === undefined ? 'lettering.romanMalformed' : 'lettering.romanOlderForm',
          values: { numeral, ...(usual !== undefined && { usual, value: value! }) },
          ...(usual !== undefined && {
            rewrite: {
              label: 'mends.romanUsual' as const,
              text: spliced(on.text, found.index, found.index + numeral.length, usual),
            },
          }),
        }),
      ];
    }),
  );
}

function looksLikeOne(word: string): boolean {
  if (word === 'VIVI') return false;
  return /^[IVX]+$/.test(word) || /^M[MCD][IVXLCDM]{3,}$/.test(word);
}

/** Each sign at most four times, none before a greater one but as usual: what it comes to, else undefined. */
function addedUp(numeral: string): number | undefined {
  const usual = /^M{0,4}(CM|CD|D?C{0,4})(XC|XL|L?X{0,4})(IX|IV|V?I{0,4})$/;
  if (!usual.test(numeral)) return undefined;
  const WORTH: Record<string, number> = { I: 1, V: 5, X: 10, L: 50, C: 100, D: 500, M: 1000 };
  const worths = Array.from(numeral, (sign) => WORTH[sign] ?? 0);
  return worths.reduce((sum, worth, i) => sum + (worth < (worths[i + 1] ?? 0) ? -worth : worth), 0);
}
