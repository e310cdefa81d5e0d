import type { Finding } from '../../findings.ts';
import { writtenForm } from '../../sentences/written-form.ts';
import { type Lettering, remark, spliced } from './lettering.ts';

const WORD = writtenForm('[\\p{L}\\p{N}]+', 'g');
const FIGURE_WITHIN = writtenForm('^(?:\\p{L}+[01]\\p{L}{2,}|0\\p{Lu}{3,})$');
const SMALL_L_IN_CAPITALS = writtenForm('^\\p{Lu}+l(?:\\p{Lu}|l)*\\p{Lu}$');
const CAPITAL_I_WITHIN = writtenForm('\\p{Ll}I\\p{Ll}');

/**
 * Figures among letters and letters among figures that look alike: `H0USE`, `WH1SKY`, `2O27`, `l927`, `MlLL`, `MiIl`.
 * What mixes them rightly is let be: `H2O`, `20l`, `B2B`, `CASK1A`, `McIntosh`, `FreundInnen`.
 */
export function checkFiguresForLetters(lettering: Lettering): Finding[] {
  return lettering.texts.flatMap((on) =>
    [...on.text.matchAll(WORD(on.text))].flatMap((found) => {
      const [word] = found;
      const meant = inNumber(word, on.text.slice(found.index + word.length)) ?? inWord(word);
      if (meant === undefined) return [];
      const { says, written } = meant;
      return [
        remark(lettering, {
          code: says === 'lettering.letterInNumber' ? 'letter-in-number' : 'figure-in-word',
          severity: 'look',
          on: [on],
          says,
          values: { word },
          ...(written !== undefined && {
            rewrite: {
              label: 'mends.lookalike' as const,
              text: spliced(on.text, found.index, found.index + word.length, written),
            },
          }),
        }),
      ];
    }),
  );
}

type Meant = {
  readonly says: 'lettering.letterInNumber' | 'lettering.figureInWord' | 'lettering.lettersAlike';
  /** Undefined where it may be one of several. */
  readonly written?: string;
};

/** A number in all but one sign. `20l` is a measure, `2º` typed as `2o` an ordinal, `I95` a road: these stay. */
function inNumber(word: string, after: string): Meant | undefined {
  const number = /^[OolI\d]+$/.test(word) && /\d/.test(word) && /[OolI]/.test(word);
  const inside = /\d[OolI]+\d/.test(word);
  const before = /^[OlI]\d{3,}$/.test(word) || (/^[OlI]\d$/.test(word) && /^[./-]\d/.test(after));
  const behind = /^\d{2,}O$/.test(word);
  if (!number || !(inside || before || behind)) return undefined;
  return { says: 'lettering.letterInNumber', written: word.replace(/[Oo]/g, '0').replace(/[lI]/g, '1') };
}

function inWord(word: string): Meant | undefined {
  if (FIGURE_WITHIN(word).test(word) && (word.match(/\p{L}/gu)?.length ?? 0) >= 3) {
    const says = 'lettering.figureInWord';
    if (word.includes('1')) return { says };
    return { says, written: word.replace('0', /\p{Ll}0|0\p{Ll}/u.test(word) ? 'o' : 'O') };
  }
  if (SMALL_L_IN_CAPITALS(word).test(word) && (word.match(/\p{Lu}/gu)?.length ?? 0) >= 3) {
    return { says: 'lettering.lettersAlike', written: word.replace(/l/g, 'I') };
  }
  if (CAPITAL_I_WITHIN(word).test(word) && !/^(?:Ma?c|De|D[aiu]|L[aeo]|V[ao]n|Fitz|St|Al|El)I/.test(word)) {
    // A capital I for both sexes, as in FreundInnen, is German.
    return /\p{Ll}In/u.test(word)
      ? undefined
      : { says: 'lettering.lettersAlike', written: word.replace(/(?<=\p{Ll})I(?=\p{Ll})/gu, 'l') };
  }
  return undefined;
}
