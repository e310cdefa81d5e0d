import { words as first } from './en/english-first.ts';
import type { Language } from './languages.ts';

/** What comes over the wire together: words that are asked for at the same time. */
export type Group = 'first' | 'work' | 'cut' | 'proof';

/** Words by part and name. */
export type Words = Readonly<Record<string, object>>;

/**
 * Where each group's words are, in every language. Only what English says until the first plate is in sight is at
 * hand; everything else comes when it is needed, and only in the language spoken.
 */
export const BOOKS: Readonly<Record<Language, Readonly<Record<Group, () => Promise<Words>>>>> = {
  en: {
    first: () => Promise.resolve(first),
    work: async () => (await import('./en/english-work.ts')).words,
    cut: async () => (await import('./en/english-cut.ts')).words,
    proof: async () => (await import('./en/english-proof.ts')).words,
  },
  de: {
    first: async () => (await import('./de/german-first.ts')).words,
    work: async () => (await import('./de/german-work.ts')).words,
    cut: async () => (await import('./de/german-cut.ts')).words,
    proof: async () => (await import('./de/german-proof.ts')).words,
  },
  fr: {
    first: async () => (await import('./fr/french-first.ts')).words,
    work: async () => (await import('./fr/french-work.ts')).words,
    cut: async () => (await import('./fr/french-cut.ts')).words,
    proof: async () => (await import('./fr/french-proof.ts')).words,
  },
  es: {
    first: async () => (await import('./es/spanish-first.ts')).words,
    work: async () => (await import('./es/spanish-work.ts')).words,
    cut: async () => (await import('./es/spanish-cut.ts')).words,
    proof: async () => (await import('./es/spanish-proof.ts')).words,
  },
};
