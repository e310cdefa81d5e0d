/**
 * Page Cut (`?page=cut`) comes when it is opened.
 *
 * - state/cut-store.ts keeps the order, the sheets and the moves to undo; state/cut-work.ts is all that can be done to them.
 * - worker/cut-worker.ts keeps the designs as they were taken (cut-plates.ts) and their plans until the sheets lie
 *   otherwise (cut-plans.ts). A plan is of the designs as taken: `findOutdated` says when they were changed since.
 * - The sheet is three canvases (stage/SheetStage.tsx: plates, plan, what moves) under a button for each plate, which keys
 *   and screen readers use. Playing adds what was cut since the last frame.
 * - Each fold is a file of its own and asks for nothing before it is opened.
 * - Rows of a series that are done lie packed in IndexedDB (web/state/saved-rows.ts). Their key names the built worker,
 *   so that another build makes them again.
 */

import { useEffect, useMemo } from 'react';
import { usePage } from '../page/page-context.ts';
import { Notice } from '../page/Notice.tsx';
import { t } from '../words/t.ts';
import { ChangedNote } from './ChangedNote.tsx';
import { CutApprovals } from './CutApprovals.tsx';
import { CutContext, cutOf, useCut, useCutParts, usePlannedSheet } from './state/cut-context.ts';
import css from './CutPage.module.css';
import { CutSide } from './folds/CutSide.tsx';
import { PlateTools } from './stage/PlateTools.tsx';
import { PlayBar } from './stage/PlayBar.tsx';
import { SheetBar } from './stage/SheetBar.tsx';
import { SheetStage } from './stage/SheetStage.tsx';
import { timelineOf } from './stage/timeline.ts';
import { useNoStrayDrop } from './use-no-stray-drop.ts';
import { useUndoKeys } from '../ui/use-undo-keys.ts';

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
  const busy = useCut((s) => s.busy);
  const trouble = useCut((s) => s.trouble);
  const planned = usePlannedSheet();
  useUndoKeys(useCutParts().work);
  useNoStrayDrop();
  const beats = useMemo(() => (planned ? timelineOf(planned.plan, planned.settings) : []), [planned]);
  return (
    <div className={css.desk}>
      <SheetBar />
      <ChangedNote />
      <CutApprovals />
      <div className={css.stage} data-busy={busy}>
        {sheet ? (
          <SheetStage sheet={sheet} beats={beats} />
        ) : (
          <p className={css.empty}>
            {trouble !== undefined ? t(trouble) : busy ? t(`cut.work.${busy}`) : t('cut.sheet.none')}
          </p>
        )}
        <Notice />
      </div>
      <PlateTools />
      {beats.length > 0 && <PlayBar beats={beats} />}
    </div>
  );
}
