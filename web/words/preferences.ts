import { languageById, languageFor, type Language } from './languages.ts';

export type Unit = 'mm' | 'inch';
export type ThemeChoice = 'auto' | 'light' | 'dark';

export interface Preferences {
  readonly language: Language;
  readonly unit: Unit;
  readonly theme: ThemeChoice;
}

/** An earlier name, kept so that nobody's choices are lost. */
const KEY = 'bridgehead-tastes';

/** Language, unit and light of the last visit; a browser that keeps nothing gets the defaults. */
export function readPreferences(): Preferences {
  try {
    const kept = JSON.parse(localStorage.getItem(KEY) ?? '{}') as Partial<Preferences>;
    return {
      language: languageById(kept.language) ?? languageFor(navigator.languages),
      unit: kept.unit === 'inch' ? 'inch' : 'mm',
      theme: kept.theme === 'light' || kept.theme === 'dark' ? kept.theme : 'auto',
    };
  } catch {
    return { language: languageFor(navigator.languages), unit: 'mm', theme: 'auto' };
  }
}

export function writePreferences(preferences: Preferences): void {
  try {
    localStorage.setItem(KEY, JSON.stringify(preferences));
  } catch {
    // A browser may forbid it; nothing of the design is lost.
  }
}
