import { ChevronDown } from 'lucide-react';
import { Drop } from '../ui/Drop.tsx';
import { t } from '../words/t.ts';
import { usePage, useUi } from '../page/page-context.ts';
import css from './PageSwitch.module.css';
import { useCompact } from './use-compact.ts';

/** From page to page: side by side, or on a phone under the name of the one that is open. */
export function PageSwitch() {
  const page = useUi((s) => s.page);
  const pages = useUi((s) => s.pages);
  const compact = useCompact();
  if (pages.length < 2) return undefined;
  return (
    <nav className={css.pages} aria-label={t('page.pages.switch')}>
      {compact ? (
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
  const pages = useUi((s) => s.pages);
  return pages.map((name) => (
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
