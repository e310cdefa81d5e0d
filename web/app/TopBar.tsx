import { LayoutGrid, Link } from 'lucide-react';
import { useStore } from 'zustand';
import { LONGEST_TITLE, setTitle } from '../state/actions/agreed/set-title.ts';
import { IconButton } from '../ui/IconButton.tsx';
import { UndoButtons } from '../ui/UndoButtons.tsx';
import { t } from '../words/t.ts';
import { useAct, useDesign, usePage, useUi } from '../page/page-context.ts';
import { PageSwitch } from './PageSwitch.tsx';
import { Settings } from './Settings.tsx';
import css from './TopBar.module.css';
import { useHandOn } from '../handover/use-hand-on.ts';

/** Name, pages, own designs, title, undo and redo, link, and how it is shown. */
export function TopBar() {
  const { design: store, ui } = usePage();
  const design = useDesign();
  const { title } = design;
  const { copy } = useHandOn();
  const act = useAct();
  const canUndo = useStore(store, (s) => s.history.past.length > 0);
  const canRedo = useStore(store, (s) => s.history.future.length > 0);
  const page = useUi((s) => s.page);
  return (
    <header className={css.bar}>
      <h1 className={css.name}>
        <svg viewBox="0 0 32 32" width="28" height="28" aria-hidden focusable="false">
          <circle cx="16" cy="16" r="15" className={css.disc} />
          <path d="M18 6.2a10 10 0 0 1 0 19.6M14 6.2a10 10 0 0 0 0 19.6" className={css.cut} />
          <circle cx="16" cy="16" r="3.2" className={css.middle} />
        </svg>
        <span>{t('page.name')}</span>
      </h1>
      <PageSwitch />
      <IconButton
        label={t('keep.button')}
        sign={LayoutGrid}
        size={20}
        className={css.own}
        aria-haspopup="dialog"
        onClick={() => ui.getState().set({ designsOpen: true })}
      >
        <span>{t('keep.button')}</span>
      </IconButton>
      <input
        className={css.title}
        aria-label={t('page.top.title')}
        value={title}
        maxLength={LONGEST_TITLE}
        autoComplete="off"
        onChange={(e) => {
          const { value } = e.target;
          act((d) => setTitle(d, value));
        }}
        onBlur={() => store.getState().closeMerge()}
      />
      <div className={css.tools}>
        {page === 'design' && (
          <>
            <UndoButtons
              undoName={t('page.top.undo')}
              redoName={t('page.top.redo')}
              canUndo={canUndo}
              canRedo={canRedo}
              undo={() => store.getState().undo()}
              redo={() => store.getState().redo()}
            />
            <IconButton
              label={t('link.copy')}
              sign={Link}
              size={20}
              className={css.link}
              onClick={() => void copy(design).then(({ sentence }) => ui.getState().set({ notice: sentence }))}
            />
          </>
        )}
        <Settings />
      </div>
    </header>
  );
}
