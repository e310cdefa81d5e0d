import { allFakers, type Faker } from '@faker-js/faker';
import { BEGINNING_IDS, type BeginningId } from '../../../web/state/beginning-ids.ts';
import { seeded } from '../../judge/seeded.ts';
import { lettersOf, textsOf, type AnswerCase } from './answered.ts';

const ALPHABET = Array.from('ABCDEFGHIJKLMNOPQRSTUVWXYZ');

/** All pairs of capitals in each beginning that takes initials, in every lettering it offers. */
export function initialsCases(): AnswerCase[] {
  const takers: readonly (readonly [BeginningId, string])[] = [
    ['initials-and-date', 'initials'],
    ['golden-wedding', 'names'],
  ];
  return takers.flatMap(([beginning, question]) =>
    lettersOf(beginning).flatMap((letters) =>
      ALPHABET.flatMap((a) => ALPHABET.map((b) => ({ beginning, letters, answers: { [question]: `${a} & ${b}` } }))),
    ),
  );
}

/** Languages whose names @faker-js/faker ships (MIT), with accents, apostrophes and hyphens. */
const COUNTRIES: readonly Faker[] = [
  'en',
  'en_IE',
  'de',
  'fr',
  'es',
  'it',
  'sv',
  'nb_NO',
  'da',
  'pt_PT',
  'nl',
  'pl',
  'cs_CZ',
  'hu',
  'tr',
].map((country) => allFakers[country as keyof typeof allFakers]);
const LONGEST = 40;

/** A seeded number of names, each beginning in turn taking a fresh one in every field that takes words. */
export function nameCases(count: number, seed: number): { readonly one: AnswerCase; readonly longest: number }[] {
  const random = seeded(seed);
  COUNTRIES.forEach((country, i) => country.seed(seed + i));
  const cases: { readonly one: AnswerCase; readonly longest: number }[] = [];
  for (let texts = 0, i = 0; texts < count; i++) {
    const beginning = BEGINNING_IDS[i % BEGINNING_IDS.length]!;
    const asked = textsOf(beginning).filter((q) => q.kind === 'text' && q.figures !== true && q.id !== 'initials');
    if (asked.length === 0) continue;
    const answers = Object.fromEntries(
      asked.map((q) => [q.id, nameOf(random.pick(COUNTRIES), random.whole(1, LONGEST))]),
    );
    texts += asked.length;
    cases.push({
      one: { beginning, answers, letters: random.pick(lettersOf(beginning)) ?? '' },
      longest: Math.max(0, ...Object.values(answers).map((text) => Array.from(text).length)),
    });
  }
  return cases;
}

/** A name of up to so many characters: one alone, a whole one, or two joined; cut at a word where it can be. */
function nameOf({ person }: Faker, most: number): string {
  const first = person.firstName();
  const whole = `${first} ${person.lastName()}`;
  const pair = `${first} & ${person.firstName()} ${person.lastName()}-${person.lastName()}`;
  const fitting = [pair, whole, first].find((text) => Array.from(text).length <= most);
  return fitting ?? Array.from(first).slice(0, most).join('');
}
