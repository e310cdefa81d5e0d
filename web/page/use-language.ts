import { useEffect } from 'react';
import { t } from '../words/t.ts';
import { useUi } from './page-context.ts';

/** Puts the language on the document, for readers that speak aloud, and its title in that language. */
export function useLanguageOnDocument(): void {
  const language = useUi((s) => s.language);
  useEffect(() => {
    document.documentElement.lang = language;
    document.title = t('page.documentTitle');
  }, [language]);
}
