import { Languages } from 'lucide-react';
import { LANGUAGES, languageById } from '../words/languages.ts';
import { speak, t } from '../words/t.ts';
import css from './LanguageChoice.module.css';
import { usePage, useUi } from '../page/page-context.ts';

const ID = 'language';

/** The language of the page, each named in itself. */
export function LanguageChoice() {
  const { ui } = usePage();
  const language = useUi((s) => s.language);

  async function choose(id: string): Promise<void> {
    const wanted = languageById(id);
    if (wanted === undefined) return;
    try {
      await speak(wanted);
    } catch {
      ui.getState().set({ notice: t('trouble.language') });
      return;
    }
    ui.getState().set({ language: wanted, notice: undefined });
    // The page is drawn anew in its new words; whoever chose by keyboard stays where they were.
    requestAnimationFrame(() => (document.getElementById(ID) ?? document.getElementById('settings'))?.focus());
  }

  return (
    <div className={css.language}>
      <Languages size={20} aria-hidden className={css.sign} />
      <select
        id={ID}
        className={css.choice}
        aria-label={t('page.top.language')}
        title={t('page.top.language')}
        value={language}
        onChange={(e) => void choose(e.target.value)}
      >
        {LANGUAGES.map(({ id, name }) => (
          <option key={id} value={id} lang={id}>
            {name}
          </option>
        ))}
      </select>
    </div>
  );
}
