import { Shape } from 'react-konva';
import { useCanvas, type Canvas } from './canvas-context.ts';

export type Paint = (ctx: CanvasRenderingContext2D, canvas: Canvas) => void;

/** A shape painted in CSS pixels of the stage, y down: the same size however near one looks. */
export function ScreenShape({ paint }: { readonly paint: Paint }) {
  const canvas = useCanvas();
  return (
    <Shape
      listening={false}
      perfectDrawEnabled={false}
      sceneFunc={(konva) => {
        const ctx = konva._context;
        ctx.save();
        paint(ctx, canvas);
        ctx.restore();
      }}
    />
  );
}
