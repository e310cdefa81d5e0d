import { useMemo, type ComponentType, type ReactNode } from 'react';
import type { PageName } from '../state/ui-store.ts';
import { Coming, later } from '../ui/later.tsx';
import { t, withWords } from '../words/t.ts';
import { ImportPlace } from '../design/artwork/ImportPlace.tsx';
import { OrderPlace } from '../handover/order/OrderPlace.tsx';
import css from './App.module.css';
import { ApprovalAskPlace, ApprovalPlace } from './ApprovalPlace.tsx';
import { LinkRefused } from './LinkRefused.tsx';
import { MissingPart } from './MissingPart.tsx';
import { MyDesignsPlace } from './MyDesignsPlace.tsx';
import { NewerVersion } from './NewerVersion.tsx';
import { Notice } from '../page/Notice.tsx';
import { NumbersMissing } from './NumbersMissing.tsx';
import { OtherTab } from './OtherTab.tsx';
import { usePage, useUi } from '../page/page-context.ts';
import { EditContext } from '../ui/fields/edit-context.ts';
import { Panel } from '../design/Panel.tsx';
import { StageBar } from '../design/bench/StageBar.tsx';
import { StageLater } from '../design/bench/StageLater.tsx';
import { StepNav } from '../design/StepNav.tsx';
import { TopBar } from './TopBar.tsx';
import { useLanguageOnDocument } from '../page/use-language.ts';
import { useKeyboardOpen } from './use-keyboard-open.ts';
import { useShortcuts } from './use-shortcuts.ts';
import { useThemeOnDocument } from '../page/use-theme.ts';
import { VerdictBar } from './VerdictBar.tsx';

// All but the design is large, and most visitors never open it.
const LATER: Readonly<Record<Exclude<PageName, 'design'>, ComponentType<{ readonly waiting?: ReactNode }>>> = {
  proof: later(async () => (await withWords(import('./ProofPlace.tsx'), 'work', 'proof')).ProofPlace),
  cut: later(async () => (await withWords(import('../cut/CutPage.tsx'), 'work', 'cut')).CutPage),
};

/** The pages under one bar: the design, and what comes after it. */
export function App() {
  useShortcuts();
  useKeyboardOpen();
  useThemeOnDocument();
  useLanguageOnDocument();
  const language = useUi((s) => s.language);
  const page = useUi((s) => s.page);
  const unit = useUi((s) => s.unit);
  const { design } = usePage();
  const edit = useMemo(() => ({ unit, endEdit: () => design.getState().closeMerge() }), [unit, design]);
  const refused = useUi((s) => s.linkRefused !== undefined);
  const Later = page === 'design' ? undefined : LATER[page];
  if (refused) return <LinkRefused key={language} />;
  return (
    // Drawn anew when the language changes, so that every word is asked for again.
    <EditContext key={language} value={edit}>
      <div className={css.page}>
        <a href="#stage" className={css.skip}>
          {t('page.skip')}
        </a>
        {page === 'design' && (
          <a href="#questions" className={css.skip}>
            {t('page.skipQuestions')}
          </a>
        )}
        <div>
          <NewerVersion />
          <NumbersMissing />
          <MissingPart />
        </div>
        <TopBar />
        {Later !== undefined ? <Later key={page} waiting={<Coming />} /> : <DesignPage />}
        <MyDesignsPlace />
        <OrderPlace />
        {page === 'design' && <ImportPlace />}
        <OtherTab />
        <ApprovalAskPlace />
      </div>
    </EditContext>
  );
}

/** The plate large on one side, one question at a time on the other. */
function DesignPage() {
  const choosing = useUi((s) => s.step === 'say' && s.begin === 'choose');
  return (
    <main className={css.main} data-choosing={choosing || undefined}>
      <div className={css.plate}>
        <StageBar />
        <div className={css.stage}>
          <StageLater />
          {!choosing && <Notice />}
        </div>
        <ApprovalPlace />
        <VerdictBar />
      </div>
      <div className={css.side}>
        <StepNav />
        <Panel />
        {choosing && <Notice />}
      </div>
    </main>
  );
}
