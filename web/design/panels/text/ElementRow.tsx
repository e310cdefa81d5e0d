import { isText } from '../../../../geometry/design/kinds.ts';
import { SlidersHorizontal, Trash2 } from 'lucide-react';
import { useEffect, useRef, useState } from 'react';
import { LONGEST_TEXT } from '../../../../geometry/design/limits.ts';
import type { DesignElement } from '../../../../geometry/design/schema.ts';
import { removeElement } from '../../../state/actions/elements/remove-element.ts';
import { setText } from '../../../state/actions/elements/set-text.ts';
import { useAct, usePage, useUi } from '../../../page/page-context.ts';
import { IconButton } from '../../../ui/IconButton.tsx';
import { TextField } from '../../../ui/fields/TextField.tsx';
import { later } from '../../../ui/later.tsx';
import { t } from '../../../words/t.ts';
import { BorderDetails } from './BorderDetails.tsx';
import { DateButton, DateTool } from './DateTool.tsx';
import css from './ElementRow.module.css';
import { elementWords, kindWords } from '../../../page/element-words.ts';
import { LineTextDetails } from './LineTextDetails.tsx';
import { RingTextDetails } from './RingTextDetails.tsx';

/** Knows every motif: loaded when one is worked on. */
const DrawingDetails = later(async () => (await import('./DrawingDetails.tsx')).DrawingDetails);

/** One element of the list: its text as a field, and behind a fold where exactly it stands. */
export function ElementRow({ element }: { readonly element: DesignElement }) {
  const { design, ui } = usePage();
  const act = useAct();
  const chosen = useUi((s) => s.selectedId === element.id);
  const [open, setOpen] = useState(false);
  const [dating, setDating] = useState(false);
  const row = useRef<HTMLLIElement>(null);

  // chosen on the plate: bring its row into view
  useEffect(() => {
    if (chosen && row.current !== null && !row.current.contains(document.activeElement)) {
      row.current.scrollIntoView({ block: 'nearest' });
    }
  }, [chosen]);

  const choose = (): void => ui.getState().set({ selectedId: element.id });
  const what = elementWords(element);
  const detailsId = `details-${element.id}`;
  return (
    <li ref={row} className={css.row} data-chosen={chosen || undefined}>
      <div className={css.line}>
        {!isText(element) ? (
          <button type="button" className={css.border} onClick={choose} aria-pressed={chosen}>
            {element.kind === 'artwork' ? what : kindWords(element)}
          </button>
        ) : (
          <TextField
            label={kindWords(element)}
            value={element.text}
            dataId={element.id}
            maxLength={LONGEST_TEXT}
            hint={hintFor(element.text)}
            onFocus={choose}
            onChange={(text) => act((d) => setText(d, element.id, text))}
          />
        )}
        <div className={css.tools}>
          {isText(element) && (
            <DateButton
              what={what}
              open={dating}
              controls={`date-${element.id}`}
              onPress={() => {
                choose();
                setDating(!dating);
              }}
            />
          )}
          <IconButton
            label={t('say.adjust', { what })}
            sign={SlidersHorizontal}
            aria-expanded={open}
            aria-controls={detailsId}
            onClick={() => {
              choose();
              setOpen(!open);
            }}
          />
          <IconButton
            label={t('say.remove', { what })}
            sign={Trash2}
            onClick={() => {
              act((d) => removeElement(d, element.id));
              ui.getState().set({ selectedId: undefined, notice: t('say.removed', { what }) });
              // the button that had the focus is gone with its row
              document.getElementById('elements-title')?.focus();
            }}
          />
        </div>
      </div>
      {isText(element) && (
        <div id={`date-${element.id}`} hidden={!dating} className={css.details}>
          {dating && (
            <DateTool
              text={element.text}
              most={LONGEST_TEXT}
              caret={() => caretIn(row.current)}
              onWrite={(text) => {
                act((d) => setText(d, element.id, text));
                design.getState().closeMerge();
              }}
            />
          )}
        </div>
      )}
      <div id={detailsId} hidden={!open} className={css.details}>
        {open && element.kind === 'ringText' && <RingTextDetails element={element} />}
        {open && element.kind === 'lineText' && <LineTextDetails element={element} />}
        {open && element.kind === 'border' && <BorderDetails element={element} />}
        {open && (element.kind === 'motif' || element.kind === 'artwork') && <DrawingDetails element={element} />}
      </div>
    </li>
  );
}

/** Where the person last stood in the row's text. */
function caretIn(row: HTMLElement | null): number | undefined {
  return row?.querySelector<HTMLInputElement>('input[data-field]')?.selectionStart ?? undefined;
}

function hintFor(text: string): string | undefined {
  if (text.trim() === '') return t('say.empties');
  return text.length >= LONGEST_TEXT ? t('say.longest', { most: LONGEST_TEXT }) : undefined;
}
