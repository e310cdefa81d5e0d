import { PAPER_EN } from '../../sentences/paper-en.ts';
import { dayWords } from '../../sentences/day-words.ts';
import type { KeyOf } from '../../sentences/make-say.ts';
import { speakEnglish, type Speak } from '../../sentences/speak-from.ts';
import type { WordValues } from '../../sentences/wording.ts';
import { type Tongue, writtenNumber } from '../../sentences/written-number.ts';
import { MM_PER_INCH } from '../../units.ts';
import type { PaperFormat } from './paper-format.ts';

/** How a paper says things: words and figures in its language. A figure that does not exist is a dash. */
export interface PaperWords {
  readonly language: Tongue;
  readonly speak: Speak;
  readonly say: (key: KeyOf<typeof PAPER_EN>, values?: WordValues) => string;
  /** With all its decimals, as in columns. */
  readonly number: (value: number | undefined, decimals: number) => string;
  /** Without noughts at the end. */
  readonly plain: (value: number) => string;
  readonly mm: (value: number | undefined, decimals?: number) => string;
  readonly inches: (mm: number) => string;
  /** A day as people write it; what is no day by ISO 8601 as it is. */
  readonly day: (at: string) => string;
}

export function paperWords({ language, speak = speakEnglish }: Omit<PaperFormat, 'page'>): PaperWords {
  const number = (value: number | undefined, decimals: number) =>
    value === undefined ? '–' : writtenNumber(value, decimals, language, true);
  const withUnit = (text: string, unit: string) => (text === '–' ? text : `${text} ${unit}`);
  return {
    language,
    speak,
    say: (key, values) => speak(PAPER_EN.say(key, values)),
    number,
    plain: (value) => writtenNumber(value, 3, language),
    mm: (value, decimals = 1) => withUnit(number(value, decimals), 'mm'),
    day: (at) => {
      const day = dayWords(at);
      return typeof day === 'string' ? day : speak(day);
    },
    inches: (mm) => withUnit(number(mm / MM_PER_INCH, 3), 'in'),
  };
}

/** As a heading stands above its part: in capitals. */
export function asHeading(text: string): string {
  return text.toUpperCase();
}
