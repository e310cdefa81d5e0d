/** What stands between two names, in the languages of the page: and, und, et, y. */
const BETWEEN = /\s*(?:[&+,/]|\s(?:and|und|et|y|e)\s)\s*/iu;

/** The first letters of up to two names: `Otto & Beata` gives O and B; none for a text without letters. */
export function initialsOf(names: string): string[] {
  return names
    .split(BETWEEN)
    .map((name) => /[\p{L}\p{N}]/u.exec(name)?.[0])
    .filter((letter) => letter !== undefined)
    .map((letter) => letter.toUpperCase())
    .slice(0, 2);
}
