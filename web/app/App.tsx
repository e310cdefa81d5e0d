import { t } from '../words/t.ts';
import css from './App.module.css';
import { Notice } from './Notice.tsx';
import { Panel } from './Panel.tsx';
import { StageArea } from './StageArea.tsx';
import { StageBar } from './StageBar.tsx';
import { StepNav } from './StepNav.tsx';
import { TopBar } from './TopBar.tsx';
import { useShortcuts } from './use-shortcuts.ts';
import { useThemeOnDocument } from './use-theme.ts';
import { VerdictBar } from './VerdictBar.tsx';

/** Page Design: the plate large on one side, one question at a time on the other. */
export function App() {
  useShortcuts();
  useThemeOnDocument();
  return (
    <div className={css.page}>
      <a href="#stage" className={css.skip}>
        {t('page.skip')}
      </a>
      <TopBar />
      <main className={css.main}>
        <div className={css.plate}>
          <StageBar />
          <div className={css.stage}>
            <StageArea />
            <Notice />
          </div>
          <VerdictBar />
        </div>
        <div className={css.side}>
          <StepNav />
          <Panel />
        </div>
      </main>
    </div>
  );
}
