import { ChevronDown } from 'lucide-react';
import { PAGES } from '../state/ui-store.ts';
import { Drop } from '../ui/Drop.tsx';
import { t } from '../words/t.ts';
import { usePage, useUi } from './page-context.ts';
import css from './PageSwitch.module.css';
import { useCompact } from './use-compact.ts';

/** From page to page: side by side, or on a phone under the name of the one that is open. */
export function PageSwitch() {
  const page = useUi((s) => s.page);
  return (
    <nav className={css.pages} aria-label={t('page.pages.switch')}>
      {useCompact() ? (
        <Drop
          side="left"
          choosing
          face={
            <>
              <span className={css.now}>{t(`page.pages.${page}`)}</span>
              <ChevronDown size={16} aria-hidden />
            </>
          }
        >
          <div className={css.list}>
            <Pages />
          </div>
        </Drop>
      ) : (
        <Pages />
      )}
    </nav>
  );
}

function Pages() {
  const { ui } = usePage();
  const page = useUi((s) => s.page);
  return PAGES.map((name) => (
    <button
      key={name}
      type="button"
      className={css.page}
      aria-current={name === page ? 'page' : undefined}
      onClick={() => ui.getState().set({ page: name })}
    >
      {t(`page.pages.${name}`)}
    </button>
  ));
}
