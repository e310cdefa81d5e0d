import type { TextElement } from '../../design/schema.ts';
import type { Finding } from '../../findings.ts';
import { isWestern, writtenForm } from '../../sentences/written-form.ts';
import { type Lettering, remark } from './lettering.ts';

/**
 * A name that stands twice on a plate, written in two ways: `Marrow` and `Marow`, `O’Brien` and `OBrien`, `José` and
 * `Jose`, `Müller` and `Mueller`. Few alarms, so:
 *
 * - only words of letters alone that begin with a capital: numbers in a series never count;
 * - accents or an apostrophe lost: words of 4 letters and more, but not what is two words rightly (`ORDINARY`);
 * - a letter doubled or not: the longer of 6 letters and more;
 * - one letter lost, gained, changed or two exchanged: both of 7 letters and more, and neither in the first letter nor in
 *   the last two, where plurals, cases and sexes differ (`Cooper` and `Coopers`, `hermanos` and `hermanas`, `Hansen` and
 *   `Jansen`).
 */
export function checkNamesAlike(lettering: Lettering): Finding[] {
  const words = namesIn(lettering.texts);
  return likelyPairs(words).flatMap(([one, other]) => {
    if (!isOneName(one, other)) return [];
    return [
      remark(lettering, {
        code: 'name-typed-differently',
        severity: 'look',
        on: [other.on, one.on],
        says: 'lettering.nameTwice',
        values: { one: one.typed, other: other.typed },
      }),
    ];
  });
}

interface Name {
  readonly typed: string;
  /** In small letters, with its accents, apostrophes alike. */
  readonly small: string;
  /** Without accents and apostrophes. */
  readonly bare: string;
  /** Likewise, with German ä, ö, ü as ae, oe, ue. */
  readonly german: string;
  readonly on: TextElement;
}

/** Rightly two words, or forms of one, that differ by an accent, an umlaut or one letter within. */
const ORDINARY = new Set(
  (
    'schon mutter vater bruder tochter garten vogel apfel boden laden hafen ofen wagen konnte hatte wurde ' +
    'como esta mas solo papa papas publico sabana cote cotes peche marche passe tache mure pate jeune marie maries aime ' +
    'later latter hoping hopping diner dinner diners dinners desert dessert through thorough planed planned'
  ).split(' '),
);

/** Of what is left when a name is taken apart: accents, and apostrophes. */
const MARKS = (small: string): RegExp => (isWestern(small) ? /[\u0300-\u036f']/g : /[\p{M}']/gu);
const NAME = writtenForm("(?<![\\p{L}\\p{M}\\p{N}'’])\\p{Lu}(?:[\\p{L}\\p{M}]|['’](?=\\p{L}))*(?![\\p{L}\\p{N}])", 'g');

/** Each spelling once, where it stands first. */
function namesIn(texts: readonly TextElement[]): Name[] {
  const names = new Map<string, Name>();
  for (const on of texts) {
    for (const [typed] of on.text.matchAll(NAME(on.text))) {
      const small = typed.normalize('NFC').toLowerCase().replaceAll('’', "'");
      if (!names.has(small))
        names.set(small, { typed, small, bare: bareOf(small), german: bareOf(spelledOut(small)), on });
    }
  }
  return [...names.values()];
}

/**
 * Pairs that are equal bare, or with one letter left out of each: by lists, since all pairs of a plate full of words are
 * too many to look at with every keystroke.
 */
function likelyPairs(names: readonly Name[]): (readonly [Name, Name])[] {
  const lists = new Map<string, Name[]>();
  const pairs = new Map<string, readonly [Name, Name]>();
  for (const name of names) {
    const { bare } = name;
    const keys = new Set([bare, name.german]);
    if (bare.length >= 5) for (let i = 1; i < bare.length; i++) keys.add(bare.slice(0, i) + bare.slice(i + 1));
    for (const key of keys) {
      const list = lists.get(key) ?? [];
      for (const other of list) pairs.set(`${other.small} ${name.small}`, [other, name]);
      list.push(name);
      lists.set(key, list);
    }
  }
  return [...pairs.values()];
}

function isOneName(one: Name, other: Name): boolean {
  if (ORDINARY.has(one.bare) && ORDINARY.has(other.bare)) return false;
  if (one.bare === other.bare || one.german === other.german) {
    if (one.bare.length < 4 || isPossessive(one, other)) return false;
    return !apostropheAlone(one, other) || /^\p{L}'\p{L}{4}/u.test(one.small) || /^\p{L}'\p{L}{4}/u.test(other.small);
  }
  return differByOneSlip(one.bare, other.bare);
}

/** `Coopers` and `Cooper’s`. */
function isPossessive(one: Name, other: Name): boolean {
  return one.small.replace(/'s$/, 's') === other.small.replace(/'s$/, 's');
}

/** `We’ll` and `Well` are two words; `O’Brien` and `OBrien` are one. */
function apostropheAlone(one: Name, other: Name): boolean {
  return one.small.replaceAll("'", '') === other.small.replaceAll("'", '');
}

function differByOneSlip(a: string, b: string): boolean {
  const [short, long] = a.length <= b.length ? [a, b] : [b, a];
  let from = 0;
  while (from < short.length && short[from] === long[from]) from++;
  let behind = 0;
  while (behind < short.length - from && short.at(-1 - behind) === long.at(-1 - behind)) behind++;
  const [left, right] = [short.slice(from, short.length - behind), long.slice(from, long.length - behind)];
  const gained = left === '' && right.length === 1;
  // Of a doubled letter the second one counts as gained: `marow`, `marrow`.
  if (gained && right === long[from - 1]) return long.length >= 6;
  const changed = left.length === 1 && right.length === 1;
  const exchanged = left.length === 2 && right.length === 2 && left[0] === right[1] && left[1] === right[0];
  return (gained || changed || exchanged) && short.length >= 7 && from >= 1 && behind >= 2;
}

function bareOf(small: string): string {
  return small
    .normalize('NFD')
    .replace(MARKS(small), '')
    .replaceAll('ß', 'ss')
    .replaceAll('ø', 'o')
    .replaceAll('ł', 'l')
    .replaceAll('æ', 'ae')
    .replaceAll('œ', 'oe');
}

function spelledOut(small: string): string {
  return small.replace(/[äöüæœø]/g, (letter) => ({ ä: 'ae', ö: 'oe', ü: 'ue', ø: 'oe' })[letter] ?? letter);
}
