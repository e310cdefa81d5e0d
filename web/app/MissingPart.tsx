import { useUi, usePage } from '../page/page-context.ts';
import { Button } from '../ui/Button.tsx';
import { t } from '../words/t.ts';
import css from './NewerVersion.module.css';

/** What was pressed needs a part of the page that the server no longer has: the person says when to load again. */
export function MissingPart() {
  const { ui } = usePage();
  const missing = useUi((s) => s.partMissing);
  return (
    <div role="alert">
      {missing && (
        <p className={css.bar}>
          <span>{t('page.part.missing')}</span>
          <Button kind="quiet" onClick={() => location.reload()}>
            {t('page.part.again')}
          </Button>
          <Button kind="quiet" onClick={() => ui.getState().set({ partMissing: false })}>
            {t('keep.newerLater')}
          </Button>
        </p>
      )}
    </div>
  );
}
