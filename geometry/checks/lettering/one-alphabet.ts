import type { Finding } from '../../findings.ts';
import { writtenForm } from '../../sentences/written-form.ts';
import { type Lettering, remark, spliced } from './lettering.ts';
import { isMixed } from './scripts.ts';

/**
 * Letters that look like those of another alphabet, as they come in with copied text: a Cyrillic а in a Latin word
 * (mixed scripts by UTS 39), or a whole word of such letters among Latin words. They are cut from the wrong glyphs, or
 * from none.
 */
export function checkOneAlphabet(lettering: Lettering): Finding[] {
  return lettering.texts.flatMap((on) => {
    // Nearly every text is Latin through and through, and is told so at once.
    if (!FOREIGN(on.text).test(on.text)) return [];
    // The micro sign of a measure (µm) is no letter of a word.
    const words = [...on.text.matchAll(/(?:(?!µ)[\p{L}\p{M}\p{N}])+/gu)];
    const amongLatin = words.some(([word]) => LATIN(word).test(word) && !isMixed(word));
    return words.flatMap((found) => {
      const [word] = found;
      const disguised =
        amongLatin && FOREIGN(word).test(word) && !LATIN(word).test(word) && inLatin(word) !== undefined;
      if (!disguised && !isMixed(word)) return [];
      const written = disguised ? inLatin(word) : inOneAlphabet(word);
      return [
        remark(lettering, {
          code: disguised ? 'disguised-word' : 'mixed-alphabets',
          severity: 'look',
          on: [on],
          says: disguised ? 'lettering.disguisedWord' : 'lettering.mixedAlphabets',
          values: { word },
          ...(written !== undefined && {
            rewrite: {
              label: 'mends.oneAlphabet' as const,
              text: spliced(on.text, found.index, found.index + word.length, written),
            },
          }),
        }),
      ];
    });
  });
}

const LATIN = writtenForm('\\p{Script=Latin}');
const FOREIGN = writtenForm('(?!\\p{Script=Latin})\\p{L}');

/** Pairs that look the same in most faces: of the Unicode file confusables.txt, those of Cyrillic and Greek letters. */
const CYRILLIC: readonly (readonly [string, string])[] = pairs(
  'АA ВB ЕE ЅS ІI ЈJ КK МM НH ОO РP СC ТT ҮY ХX аa еe оo рp сc уy хx ѕs іi јj һh ԁd ԛq ԝw ӏl ԚQ ԜW',
);
const GREEK: readonly (readonly [string, string])[] = pairs(
  'ΑA ΒB ΕE ΖZ ΗH ΙI ΚK ΜM ΝN ΟO ΡP ΤT ΥY ΧX αa γy ιi νv οo ρp',
);
const TO_LATIN = new Map([...CYRILLIC, ...GREEK]);
const TO_CYRILLIC = new Map(CYRILLIC.map(([cyrillic, latin]) => [latin, cyrillic]));
const TO_GREEK = new Map(GREEK.map(([greek, latin]) => [latin, greek]));

/** As most of its letters are, if the others have their likeness there. */
function inOneAlphabet(word: string): string | undefined {
  const count = (form: RegExp): number => word.match(form)?.length ?? 0;
  const [latin, cyrillic, greek] = [
    count(/\p{Script=Latin}/gu),
    count(/\p{Script=Cyrillic}/gu),
    count(/\p{Script=Greek}/gu),
  ];
  const toLatin = inLatin(word);
  const toOther = cyrillic > 0 ? inTheOther(word, TO_CYRILLIC) : inTheOther(word, TO_GREEK);
  return latin >= cyrillic + greek ? (toLatin ?? toOther) : (toOther ?? toLatin);
}

/** Every foreign letter in its Latin likeness; undefined when one has none. */
function inLatin(word: string): string | undefined {
  const written = Array.from(word.normalize('NFC'), (sign) => TO_LATIN.get(sign) ?? sign).join('');
  return FOREIGN(written).test(written) ? undefined : written;
}

function inTheOther(word: string, table: ReadonlyMap<string, string>): string | undefined {
  const written = Array.from(word, (sign) => (LATIN(sign).test(sign) ? table.get(sign) : sign));
  const out = written.every((sign) => sign !== undefined) ? written.join('') : undefined;
  return out === undefined || isMixed(out) ? undefined : out;
}

function pairs(list: string): (readonly [string, string])[] {
  return list.split(' ').map((pair) => [pair.charAt(0), pair.charAt(1)]);
}
