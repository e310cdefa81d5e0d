import { usePage, useUi } from '../page/page-context.ts';
import { Button } from '../ui/Button.tsx';
import failed from '../ui/Failed.module.css';
import { t } from '../words/t.ts';

/** Stands in for the whole page when the link in its address cannot be opened. */
export function LinkRefused() {
  const { ui } = usePage();
  const why = useUi((s) => s.linkRefused);

  function goOn(): void {
    history.replaceState(history.state, '', `${location.pathname}${location.search}`);
    ui.getState().set({ linkRefused: undefined });
  }

  return (
    <main className={failed.whole} data-testid="link-refused">
      <div className={failed.failed} role="alert">
        <h1 className={failed.title}>{t('link.refused')}</h1>
        <p>{why}</p>
        <div className={failed.buttons}>
          <Button kind="next" onClick={() => location.reload()}>
            {t('page.part.again')}
          </Button>
          <Button kind="plain" onClick={goOn}>
            {t('link.goOn')}
          </Button>
        </div>
      </div>
    </main>
  );
}
