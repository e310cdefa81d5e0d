import { useEffect, useRef, type KeyboardEvent } from 'react';
import type { NestedSheet, PlacedPlate } from '../../../geometry/sheet/sheets.ts';
import { useUi } from '../../page/page-context.ts';
import { lengthWords } from '../../words/say/format-number.ts';
import { t } from '../../words/t.ts';
import { useCut, useCutParts } from '../state/cut-context.ts';
import css from './SheetStage.module.css';
import type { SheetView } from './sheet-view.ts';

interface PlateButtonsProps {
  readonly sheet: NestedSheet;
  readonly view: SheetView;
}

/** What the canvas shows, for keys and for those who do not see it: a button in the place of every plate. */
export function PlateButtons({ sheet, view }: PlateButtonsProps) {
  const { store, work } = useCutParts();
  const selected = useCut((s) => s.selected);
  const sheetAt = useCut((s) => s.sheetAt);
  const unit = useUi((s) => s.unit);
  const place = useRef<HTMLDivElement>(null);
  const first = sheet.plates.find(({ id }) => id === selected) ?? sheet.plates[0];

  useEffect(() => {
    // keys go on with the plate that was chosen
    const inside = place.current?.contains(document.activeElement);
    if (inside && selected !== undefined) buttonOf(place.current, selected)?.focus({ preventScroll: true });
  }, [selected]);

  function press(e: KeyboardEvent, plate: PlacedPlate): void {
    const step = e.shiftKey ? 10 : 1;
    const move = MOVES[e.key];
    if (move) {
      work.move(plate.id, sheetAt, { x: plate.x + move[0] * step, y: plate.y + move[1] * step }, false);
    } else if (e.key === '[' || e.key === ']') {
      work.turn([plate.id], plate.turnDeg + (e.key === ']' ? 5 : -5));
    } else if (e.key.toLowerCase() === 'l' && !e.ctrlKey && !e.metaKey) work.lock(plate.id, !plate.locked);
    else if (e.key === 'PageDown' || e.key === 'PageUp') {
      const at = sheet.plates.indexOf(plate) + (e.key === 'PageDown' ? 1 : -1);
      const next = sheet.plates[(at + sheet.plates.length) % sheet.plates.length];
      if (next) {
        store.getState().set({ selected: next.id });
        buttonOf(place.current, next.id)?.focus({ preventScroll: true });
      }
    } else return;
    e.preventDefault();
  }

  return (
    <div
      ref={place}
      className={css.buttons}
      role="group"
      aria-label={t('cut.sheet.plates', { count: sheet.plates.length })}
      style={{ transform: `translate(${view.x}px, ${view.y}px) scale(${view.scale})` }}
    >
      {sheet.plates.map((plate) => (
        <button
          key={plate.id}
          type="button"
          data-plate={plate.id}
          className={css.plate}
          tabIndex={plate === first ? 0 : -1}
          aria-pressed={plate.id === selected}
          aria-label={t(plate.locked ? 'cut.sheet.lockedPlate' : 'cut.sheet.plate', {
            plate: plate.id,
            across: lengthWords(plate.diameterMm, unit),
            x: lengthWords(plate.x, unit),
            y: lengthWords(plate.y, unit),
          })}
          aria-keyshortcuts="ArrowLeft ArrowRight ArrowUp ArrowDown [ ] L PageDown PageUp"
          style={{
            left: plate.x - plate.diameterMm / 2,
            top: -plate.y - plate.diameterMm / 2,
            width: plate.diameterMm,
            height: plate.diameterMm,
          }}
          onFocus={() => store.getState().set({ selected: plate.id })}
          onKeyDown={(e) => press(e, plate)}
        />
      ))}
    </div>
  );
}

/** x to the right, y up. */
const MOVES: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};

function buttonOf(place: HTMLElement | null, id: string): HTMLElement | null {
  return place?.querySelector(`[data-plate="${CSS.escape(id)}"]`) ?? null;
}
