import type { Finding } from '../../findings.ts';
import { fromRoman } from '../../sentences/roman.ts';
import { writtenForm } from '../../sentences/written-form.ts';
import { type Lettering, remark, spliced } from './lettering.ts';

/** Said twice rightly: calls, names of places, and words that make sense one after the other. */
const RIGHTLY = new Set(
  (
    'baden bora bye chin cha ding dong duran go ha hip ho hoch hurra hurrah knock long muy no nous olé pago qui quoi sehr sing so ' +
    'that had tam tchin tic tom très very vous wagga walla'
  ).split(' '),
);

const TWICE = writtenForm(
  "(?<![\\p{L}\\p{M}\\p{N}'’-])(\\p{L}[\\p{L}\\p{M}'’]+)(\\s+)\\1(?![\\p{L}\\p{M}\\p{N}'’-])",
  'gi',
);

/**
 * A word twice running in one text, over its line ends too: `the the`. Three times and more is meant; so are roman
 * numerals and single letters.
 */
export function checkDoubledWords(lettering: Lettering): Finding[] {
  return lettering.texts.flatMap((on) =>
    [...on.text.matchAll(TWICE(on.text))].flatMap((found) => {
      const [whole, word = '', blank = ''] = found;
      if (RIGHTLY.has(word.toLowerCase()) || fromRoman(word) !== undefined) return [];
      const [from, to] = [found.index, found.index + whole.length];
      if (lastWord(on.text.slice(0, from)) === word.toLowerCase()) return [];
      if (firstWord(on.text.slice(to)) === word.toLowerCase()) return [];
      return [
        remark(lettering, {
          code: 'doubled-word',
          severity: 'look',
          on: [on],
          says: 'lettering.doubledWord',
          values: { word: whole.replace(blank, ' ') },
          rewrite: { label: 'mends.onceOnly', text: spliced(on.text, from + word.length, to, '') },
        }),
      ];
    }),
  );
}

function lastWord(text: string): string | undefined {
  return /([\p{L}\p{M}'’]+)\s+$/u.exec(text)?.[1]?.toLowerCase();
}

function firstWord(text: string): string | undefined {
  return /^\s+([\p{L}\p{M}'’]+)/u.exec(text)?.[1]?.toLowerCase();
}
