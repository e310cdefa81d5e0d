import { Shape } from 'react-konva';
import type { View } from './view.ts';

/** A shape drawn in plate millimetres, y up; px is one CSS pixel in millimetres. */
export function PlateShape(props: {
  readonly view: View;
  readonly draw: (ctx: CanvasRenderingContext2D, px: number) => void;
}) {
  const { view, draw } = props;
  return (
    <Shape
      listening={false}
      perfectDrawEnabled={false}
      sceneFunc={(konva) => {
        const ctx = konva._context;
        ctx.save();
        ctx.transform(view.scale, 0, 0, -view.scale, view.leftPx, view.topPx);
        draw(ctx, 1 / view.scale);
        ctx.restore();
      }}
    />
  );
}
