/** The languages the page speaks, each by its own name. */
export const LANGUAGES = [
  { id: 'en', name: 'English' },
  { id: 'de', name: 'Deutsch' },
  { id: 'fr', name: 'Français' },
  { id: 'es', name: 'Español' },
] as const;

export type Language = (typeof LANGUAGES)[number]['id'];

/** The first of a person's languages that we speak; tags as the browser gives them (BCP 47), `de-AT`. Else English. */
export function languageFor(tags: readonly string[]): Language {
  for (const tag of tags) {
    const found = languageById(tag.toLowerCase().split('-')[0]);
    if (found !== undefined) return found;
  }
  return 'en';
}

export function languageById(id: unknown): Language | undefined {
  return LANGUAGES.find((language) => language.id === id)?.id;
}
