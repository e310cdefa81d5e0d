import type { Finding } from '../../findings.ts';
import { shortText } from '../../sentences/shorten.ts';
import { writtenForm } from '../../sentences/written-form.ts';
import { type Lettering, remark } from './lettering.ts';

/** After a figure a straight stroke means feet, inches or minutes. */
const STRAIGHT = /(?<!\d)['"]/u;
const CURLY = /[‘’‚‛“”„‟]/u;
/** An accent standing alone, typed in place of an apostrophe. */
const ACCENT = writtenForm('(?<=\\p{L})[´`](?=\\p{L})', 'g');
/** Where nothing but an apostrophe can be meant: after a letter, and before a year cut short. */
const APOSTROPHE = writtenForm("(?<=\\p{L})'|(?<![\\p{L}\\d])'(?=\\d\\d(?!\\d))", 'g');

/**
 * Straight quotes or apostrophes in one place and curly ones in another, of the same design; one that is straight
 * throughout is well. The mend sets apostrophes; which way a quote opens is left to the person.
 */
export function checkQuotes(lettering: Lettering): Finding[] {
  const { texts } = lettering;
  const curly = texts.some((e) => CURLY.test(e.text));
  return texts.flatMap((on) => {
    const accent = on.text.search(ACCENT(on.text)) >= 0;
    if (!accent && !(curly && STRAIGHT.test(on.text))) return [];
    const plain = on.text.replace(ACCENT(on.text), curly ? '’' : "'");
    const set = curly ? plain.replace(APOSTROPHE(plain), '’') : plain;
    const sure = !curly || !STRAIGHT.test(set);
    return [
      remark(lettering, {
        code: accent ? 'accent-for-apostrophe' : 'straight-and-curly',
        severity: 'look',
        on: [on],
        says: accent ? 'lettering.accentForApostrophe' : 'lettering.straightAndCurly',
        values: { text: shortText(on.text) },
        ...(sure && { rewrite: { label: 'mends.apostrophes' as const, text: set } }),
      }),
    ];
  });
}
