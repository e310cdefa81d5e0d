import { useCallback, useMemo, useState } from 'react';
import type { NestedSheet } from '../../../geometry/sheet/sheets.ts';
import type { SizePx } from '../../ui/size.ts';
import { fitView, panBy, zoomAt, type SheetView } from './sheet-view.ts';

interface SheetViewHold {
  readonly view: SheetView;
  /** Nearer by a factor, about a point of the screen or its middle. */
  readonly zoom: (factor: number, x?: number, y?: number) => void;
  readonly pan: (dx: number, dy: number) => void;
  readonly reset: () => void;
}

/** What a person chose holds for this size of sheet and screen; otherwise the whole sheet is seen. */
export function useSheetView(sheet: NestedSheet, size: SizePx): SheetViewHold {
  const key = `${sheet.widthMm} ${sheet.heightMm} ${size.width} ${size.height}`;
  const [own, setOwn] = useState<{ readonly key: string; readonly view: SheetView } | undefined>();
  const { widthMm, heightMm } = sheet;
  // the same as long as nothing changes, or all would be painted again at each drawing
  const fitted = useMemo(() => fitView({ widthMm, heightMm }, size), [widthMm, heightMm, size]);
  const view = own?.key === key ? own.view : fitted;
  const change = (next: (now: SheetView) => SheetView): void =>
    setOwn((before) => ({ key, view: next(before?.key === key ? before.view : fitted) }));
  return {
    view,
    zoom: (factor, x = size.width / 2, y = size.height / 2) =>
      change((now) => zoomAt(now, factor, x, y, fitted.scale / 1.5)),
    pan: (dx, dy) => change((now) => panBy(now, dx, dy, sheet, size)),
    reset: useCallback(() => setOwn(undefined), []),
  };
}
