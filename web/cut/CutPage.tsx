import { useEffect, useMemo } from 'react';
import { usePage } from '../page/page-context.ts';
import { Notice } from '../page/Notice.tsx';
import { t } from '../words/t.ts';
import { ChangedNote } from './ChangedNote.tsx';
import { CutApprovals } from './CutApprovals.tsx';
import { CutContext, cutOf, useCut, usePlannedSheet } from './state/cut-context.ts';
import css from './CutPage.module.css';
import { CutSide } from './folds/CutSide.tsx';
import { PlateTools } from './stage/PlateTools.tsx';
import { PlayBar } from './stage/PlayBar.tsx';
import { SheetBar } from './stage/SheetBar.tsx';
import { SheetStage } from './stage/SheetStage.tsx';
import { timelineOf } from './stage/timeline.ts';
import { useNoStrayDrop } from './use-no-stray-drop.ts';
import { useCutKeys } from './stage/use-cut-keys.ts';

/** For production: plates onto sheets, the order of cutting, files. */
export function CutPage() {
  const page = usePage();
  const cut = cutOf(page);
  useEffect(() => {
    void cut.work.look();
  }, [cut]);
  return (
    <CutContext value={cut}>
      <main id="stage" className={css.main} tabIndex={-1}>
        <Desk />
        <div className={css.side}>
          <CutSide />
        </div>
      </main>
    </CutContext>
  );
}

/** The sheet with what belongs to it. */
function Desk() {
  const sheet = useCut((s) => s.history.present[s.sheetAt]);
  const work = useCut((s) => s.work);
  const trouble = useCut((s) => s.trouble);
  const planned = usePlannedSheet();
  useCutKeys();
  useNoStrayDrop();
  const beats = useMemo(() => (planned ? timelineOf(planned.plan, planned.settings) : []), [planned]);
  return (
    <div className={css.desk}>
      <SheetBar />
      <ChangedNote />
      <CutApprovals />
      <div className={css.stage} data-busy={work}>
        {sheet ? (
          <SheetStage sheet={sheet} beats={beats} />
        ) : (
          <p className={css.empty}>
            {trouble !== undefined ? t(trouble) : work ? t(`cut.work.${work}`) : t('cut.sheet.none')}
          </p>
        )}
        <Notice />
      </div>
      <PlateTools />
      {beats.length > 0 && <PlayBar beats={beats} />}
    </div>
  );
}
