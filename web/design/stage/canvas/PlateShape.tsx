import type { StagePalette } from './palette.ts';
import { ScreenShape } from './ScreenShape.tsx';

interface PlateShapeProps {
  /** px is one CSS pixel in millimetres. */
  readonly paint: (ctx: CanvasRenderingContext2D, px: number, palette: StagePalette) => void;
}

/** A shape painted in plate millimetres, y up. */
export function PlateShape({ paint }: PlateShapeProps) {
  return (
    <ScreenShape
      paint={(ctx, { view, palette }) => {
        ctx.transform(view.scale, 0, 0, -view.scale, view.leftPx, view.topPx);
        paint(ctx, 1 / view.scale, palette);
      }}
    />
  );
}
