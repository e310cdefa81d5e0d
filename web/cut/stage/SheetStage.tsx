import { useEffect, useMemo, useRef, useState } from 'react';
import type { NestedSheet } from '../../../geometry/sheet/sheets.ts';
import { useTheme } from '../../page/use-theme.ts';
import { t } from '../../words/t.ts';
import { useCut, useCutParts, usePlannedSheet, usePlay } from '../state/cut-context.ts';
import { paintDone, paintHead } from './paint-play.ts';
import { fateOf, paintPlan } from './paint-plan.ts';
import { paintPlate, paintSheet, type SheetScene } from './paint-sheet.ts';
import { PlateButtons } from './PlateButtons.tsx';
import css from './SheetStage.module.css';
import { circle, takePen, wipe, type SheetPen } from './sheet-pen.ts';
import { doneAt, type Beat } from './timeline.ts';
import type { SizePx } from '../../ui/size.ts';
import { useSize } from '../../ui/use-size.ts';
import { type Ghost, useSheetHand } from './use-sheet-hand.ts';
import { useSheetView } from './use-sheet-view.ts';

/** Before the page is laid out. */
const NO_SIZE: SizePx = { width: 0, height: 0 };

interface SheetStageProps {
  readonly sheet: NestedSheet;
  readonly beats: readonly Beat[];
}

/** The sheet as it lies on the machine: plates below, the plan over them, on top what is in the hand or being cut. */
export function SheetStage({ sheet, beats }: SheetStageProps) {
  const { play } = useCutParts();
  const plates = useCut((s) => s.plates);
  const rest = useCut((s) => (s.rest?.sheet === s.sheetAt ? s.rest : undefined));
  const faults = useCut((s) => s.faults);
  const sheetAt = useCut((s) => s.sheetAt);
  const selected = useCut((s) => s.selected);
  const shown = useCut((s) => s.shown);
  const lit = useCut((s) => s.lit);
  const planned = usePlannedSheet();
  const playing = usePlay((s) => s.on);
  const theme = useTheme();
  const frame = useRef<HTMLDivElement>(null);
  const low = useRef<HTMLCanvasElement>(null);
  const middle = useRef<HTMLCanvasElement>(null);
  const top = useRef<HTMLCanvasElement>(null);
  const size = useSize(frame) ?? NO_SIZE;
  const { view, zoom, pan, reset } = useSheetView(sheet, size);
  const hand = useSheetHand(frame, sheet, view, zoom, pan);
  const [dpr] = useState(() => Math.min(2, devicePixelRatio));

  const paths = useMemo(() => new Map(plates.map(({ wish, path }) => [wish, new Path2D(path)])), [plates]);
  const scene: SheetScene = {
    sheet,
    paths,
    rest,
    faulty: new Set(faults.flatMap((f) => (f.sheet === sheetAt ? f.plates : []))),
    selected,
    lifted: hand.lifted,
    uncut: playing,
  };
  const deps = [sheet, paths, rest, faults, sheetAt, selected, hand.lifted, playing, view, size, theme, dpr] as const;

  useEffect(() => {
    const pen = takePen(low.current, frame.current, size, view, dpr);
    if (pen) paintSheet(pen, scene);
    // the scene is made of these anew at each drawing
    // eslint-disable-next-line react-hooks/exhaustive-deps
  }, deps);

  useEffect(() => {
    const pen = takePen(middle.current, frame.current, size, view, dpr);
    if (pen && planned && !playing) paintPlan(pen, planned, shown, { lit, selected });
  }, [planned, shown, lit, selected, view, size, theme, dpr, playing]);

  // What is played is drawn apart from React: a frame adds what was cut since the last one.
  useEffect(() => {
    if (!playing || !planned) return;
    const done = takePen(middle.current, frame.current, size, view, dpr);
    const head = takePen(top.current, frame.current, size, view, dpr);
    if (!done || !head) return;
    const fates = fateOf(planned);
    let drawn = 0;
    const draw = (): void => {
      const { atS } = play.getState();
      const now = doneAt(beats, atS);
      if (now < drawn) {
        wipe(done);
        drawn = 0;
      }
      paintDone(done, beats, drawn, now, fates);
      drawn = now;
      paintHead(head, beats, atS);
    };
    draw();
    return play.subscribe((now, before) => {
      if (now.atS !== before.atS) draw();
    });
  }, [playing, planned, beats, view, size, theme, dpr, play]);

  useEffect(() => {
    if (playing) return;
    const pen = takePen(top.current, frame.current, size, view, dpr);
    if (!pen || !hand.ghost) return;
    for (const plate of hand.ghost.plates) {
      paintPlate(pen, plate, { ...scene, faulty: hand.ghost.faulty, selected: plate.id }, new Map());
    }
    paintFinger(pen, hand.ghost);
    // as above
    // eslint-disable-next-line react-hooks/exhaustive-deps
  }, [...deps, hand.ghost]);

  return (
    <div
      ref={frame}
      className={css.frame}
      data-testid="sheet"
      data-plates={sheet.plates.length}
      {...hand.handlers}
      onDoubleClick={reset}
    >
      <canvas ref={low} className={css.layer} aria-hidden />
      <canvas ref={middle} className={css.layer} aria-hidden />
      <canvas ref={top} className={css.layer} aria-hidden />
      <PlateButtons sheet={sheet} view={view} />
      {hand.ghost?.sentence !== undefined && (
        <p className={css.says} role="status">
          {hand.ghost.sentence}
        </p>
      )}
      <div className={css.zoom} data-tool>
        <button type="button" aria-label={t('cut.sheet.nearer')} onClick={() => zoom(1.5)}>
          +
        </button>
        <button type="button" aria-label={t('cut.sheet.farther')} onClick={() => zoom(1 / 1.5)}>
          −
        </button>
        <button type="button" className={css.whole} onClick={reset}>
          {t('cut.sheet.whole')}
        </button>
      </div>
    </div>
  );
}

/** Where the hand is, while the plate rests beside it. */
function paintFinger(pen: SheetPen, { hand, radiusMm }: Ghost): void {
  const { ctx, inks, px } = pen;
  circle(pen, hand, radiusMm);
  ctx.setLineDash([4 * px, 4 * px]);
  ctx.lineWidth = px;
  ctx.strokeStyle = inks.copper;
  ctx.stroke();
  ctx.setLineDash([]);
}
