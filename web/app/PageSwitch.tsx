import { Layers } from 'lucide-react';
import type { PageName } from '../state/ui-store.ts';
import { Button } from '../ui/Button.tsx';
import { t } from '../words/t.ts';
import { usePage, useUi } from './page-context.ts';
import css from './PageSwitch.module.css';

const PAGES: readonly PageName[] = ['design', 'cut'];

/** From the design to how it is cut, and back. A phone has room for one sign: to the other page. */
export function PageSwitch() {
  const { ui } = usePage();
  const page = useUi((s) => s.page);
  const other = page === 'design' ? 'cut' : 'design';
  const go = (to: PageName): void => ui.getState().set({ page: to });
  return (
    <nav className={css.pages} aria-label={t('page.pages.switch')}>
      {PAGES.map((name) => (
        <button
          key={name}
          type="button"
          className={css.page}
          aria-current={name === page ? 'page' : undefined}
          onClick={() => go(name)}
        >
          {t(`page.pages.${name}`)}
        </button>
      ))}
      <Button
        kind="icon"
        className={css.other}
        aria-label={t(`page.pages.${other}`)}
        title={t(`page.pages.${other}`)}
        onClick={() => go(other)}
      >
        {page === 'design' ? <Layers size={20} aria-hidden /> : t('page.pages.design')}
      </Button>
    </nav>
  );
}
