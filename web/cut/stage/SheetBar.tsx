import { ChevronLeft, ChevronRight } from 'lucide-react';
import { useUi } from '../../page/page-context.ts';
import { IconButton } from '../../ui/IconButton.tsx';
import { UndoButtons } from '../../ui/UndoButtons.tsx';
import { formatNumber } from '../../words/say/format-number.ts';
import { t } from '../../words/t.ts';
import { useCut, useCutParts } from '../state/cut-context.ts';
import { alikeAs } from '../state/plates-wanted.ts';
import css from './SheetBar.module.css';
import { sizeWords } from '../state/sheet-words.ts';

/** Which sheet is seen, how full it is, and steps back and forward. */
export function SheetBar() {
  const { work } = useCutParts();
  const sheets = useCut((s) => s.history.present);
  const at = useCut((s) => s.sheetAt);
  const canUndo = useCut((s) => s.history.past.length > 0);
  const canRedo = useCut((s) => s.history.future.length > 0);
  const unit = useUi((s) => s.unit);
  const sheet = sheets[at];
  const alike = alikeAs(sheets, at);
  return (
    <div className={css.bar}>
      <IconButton
        label={t('cut.sheet.before')}
        disabled={at === 0}
        onClick={() => work.show(at - 1)}
        sign={ChevronLeft}
        size={20}
      />
      <p className={css.which} role="status" data-testid="which-sheet">
        <strong>
          {sheet ? t('cut.sheet.of', { number: at + 1, count: sheets.length }) : t('cut.sheet.no')}
          {alike > 0 && t('cut.sheet.alike', { count: alike })}
        </strong>
        {sheet && (
          <>
            <span className={css.facts}>{sizeWords(sheet.widthMm, sheet.heightMm, unit)}</span>
            <span className={css.facts}>
              {t('cut.sheet.facts', { count: sheet.plates.length, used: formatNumber(sheet.usedShare * 100, 0) })}
            </span>
          </>
        )}
      </p>
      <IconButton
        label={t('cut.sheet.after')}
        disabled={at >= sheets.length - 1}
        onClick={() => work.show(at + 1)}
        sign={ChevronRight}
        size={20}
      />
      <span className={css.gap} />
      <UndoButtons
        undoName={t('cut.sheet.undo')}
        redoName={t('cut.sheet.redo')}
        canUndo={canUndo}
        canRedo={canRedo}
        undo={work.undo}
        redo={work.redo}
      />
    </div>
  );
}
