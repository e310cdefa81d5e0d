import { memo } from 'react';
import type { Opening } from '../../../geometry/bridges/types.ts';
import { clockPoint } from '../../../geometry/measure/clock.ts';
import type { Canvas } from './canvas/canvas-context.ts';
import { isBare, radiusTicks } from './canvas/ruler.ts';
import { ScreenShape } from './canvas/ScreenShape.tsx';
import { toScreen } from './canvas/view.ts';

interface RulersProps {
  readonly radiusMm: number;
  /** The barrel needs the space around it. */
  readonly tight: boolean;
  /** The scale is engraved in the metal: it breaks off at openings, and figures keep clear of them. */
  readonly openings: readonly Opening[];
  readonly metal: Path2D;
}

/** Hours around the barrel and millimetres or inches along the radius at three o'clock. Always the same size on screen. */
export const Rulers = memo(function Rulers(props: RulersProps) {
  return (
    <>
      <ScreenShape paint={(ctx, canvas) => paintHours(ctx, canvas, props.tight)} />
      <ScreenShape paint={(ctx, canvas) => paintRadius(ctx, canvas, props)} />
    </>
  );
});

function paintHours(ctx: CanvasRenderingContext2D, { view, worldMm, palette }: Canvas, tight: boolean): void {
  ctx.strokeStyle = palette.ink;
  ctx.fillStyle = palette.ink;
  ctx.font = "400 12px 'Page', system-ui, sans-serif";
  ctx.textAlign = 'center';
  ctx.textBaseline = 'middle';
  const edge = worldMm * view.scale;
  const near = tight ? 3 : 5;
  for (let minute = 0; minute < 60; minute++) {
    const hour = minute % 5 === 0;
    const ray = clockPoint(1, minute * 6);
    const at = (r: number) => [view.leftPx + ray.x * r, view.topPx - ray.y * r] as const;
    ctx.globalAlpha = hour ? 0.66 : 0.36;
    ctx.lineWidth = 1;
    ctx.beginPath();
    ctx.moveTo(...at(edge + near));
    ctx.lineTo(...at(edge + near + (hour ? 5.5 : 3)));
    ctx.stroke();
    if (minute % 15 !== 0) continue;
    ctx.globalAlpha = 0.8;
    ctx.fillText(String(minute === 0 ? 12 : minute / 5), ...at(edge + near + 12.5));
  }
}

function paintRadius(
  ctx: CanvasRenderingContext2D,
  { view, size, units, unitWord, palette }: Canvas,
  { radiusMm, openings, metal }: RulersProps,
): void {
  const centre = toScreen(view, { x: 0, y: 0 });
  const rim = toScreen(view, { x: radiusMm, y: 0 });
  const onScreen = new Path2D();
  onScreen.addPath(metal, new DOMMatrix([view.scale, 0, 0, -view.scale, view.leftPx, view.topPx]));
  ctx.clip(onScreen, 'evenodd');
  ctx.strokeStyle = palette.engraved;
  ctx.fillStyle = palette.engraved;
  ctx.lineWidth = 1;
  ctx.globalAlpha = 0.5;
  ctx.font = "400 11px 'Page', system-ui, sans-serif";
  ctx.textAlign = 'center';
  ctx.textBaseline = 'bottom';
  const y = Math.round(centre.topPx) + 0.5;
  ctx.beginPath();
  ctx.moveTo(centre.leftPx - 4, y);
  ctx.lineTo(rim.leftPx, y);
  ctx.moveTo(Math.round(centre.leftPx) + 0.5, y - 4);
  ctx.lineTo(Math.round(centre.leftPx) + 0.5, y + 4);
  const ticks = radiusTicks(radiusMm, units, view.scale);
  for (const tick of ticks) {
    const x = Math.round(toScreen(view, { x: tick.mm, y: 0 }).leftPx) + 0.5;
    ctx.moveTo(x, y);
    ctx.lineTo(x, y - (tick.label === undefined ? 3 : 6));
  }
  ctx.stroke();
  ctx.globalAlpha = 0.85;
  let unitSaid = false;
  for (const tick of ticks.toReversed()) {
    if (tick.label === undefined) continue;
    const x = toScreen(view, { x: tick.mm, y: 0 }).leftPx;
    const text = unitSaid ? tick.label : `${tick.label} ${unitWord}`;
    const halfMm = (ctx.measureText(text).width / 2 + 3) / view.scale;
    if (x > size.width - 24 || tick.mm + halfMm > radiusMm || !isBare(openings, tick.mm, halfMm, 16 / view.scale))
      continue;
    ctx.fillText(text, x, y - 7);
    unitSaid = true;
  }
}
