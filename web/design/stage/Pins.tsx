import type { StagePalette } from './canvas/palette.ts';
import { PIN_RADIUS_PX, type Pin } from './pins.ts';
import { ScreenShape } from './canvas/ScreenShape.tsx';

/** Numbers of the findings. A square stops the cut, a diamond is worth a look, a circle informs: shape before colour. */
export function Pins({ pins, lit }: { readonly pins: readonly Pin[]; readonly lit: number }) {
  return (
    <ScreenShape
      paint={(ctx, { palette }) => {
        for (const pin of pins) paintThread(ctx, pin, palette);
        for (const pin of pins) if (!pin.numbered) paintDot(ctx, pin, palette);
        for (const pin of pins) if (pin.numbered && pin.index !== lit) paintPin(ctx, pin, false, palette);
        for (const pin of pins) if (pin.index === lit) paintPin(ctx, pin, true, palette);
      }}
    />
  );
}

function paintThread(ctx: CanvasRenderingContext2D, pin: Pin, palette: StagePalette): void {
  if (Math.hypot(pin.at.leftPx - pin.foot.leftPx, pin.at.topPx - pin.foot.topPx) < 2) return;
  ctx.beginPath();
  ctx.moveTo(pin.foot.leftPx, pin.foot.topPx);
  ctx.lineTo(pin.at.leftPx, pin.at.topPx);
  ctx.strokeStyle = 'rgba(255, 255, 255, 0.8)';
  ctx.lineWidth = 3;
  ctx.stroke();
  ctx.strokeStyle = palette.pin[pin.severity];
  ctx.lineWidth = 1.25;
  ctx.stroke();
  ctx.beginPath();
  ctx.arc(pin.foot.leftPx, pin.foot.topPx, 3, 0, Math.PI * 2);
  ctx.fillStyle = palette.pin[pin.severity];
  ctx.fill();
}

function paintDot(ctx: CanvasRenderingContext2D, pin: Pin, palette: StagePalette): void {
  ctx.beginPath();
  ctx.arc(pin.at.leftPx, pin.at.topPx, 4, 0, Math.PI * 2);
  ctx.fillStyle = palette.pin[pin.severity];
  ctx.fill();
  ctx.strokeStyle = '#ffffff';
  ctx.lineWidth = 1.5;
  ctx.stroke();
}

function paintPin(ctx: CanvasRenderingContext2D, pin: Pin, lit: boolean, palette: StagePalette): void {
  const { leftPx: x, topPx: y } = pin.at;
  const r = PIN_RADIUS_PX * (lit ? 1.18 : pin.severity === 'note' ? 0.8 : 1);
  ctx.save();
  ctx.beginPath();
  if (pin.severity === 'stop') ctx.roundRect(x - r * 0.9, y - r * 0.9, r * 1.8, r * 1.8, 3);
  else if (pin.severity === 'look') {
    ctx.moveTo(x, y - r * 1.2);
    ctx.lineTo(x + r * 1.2, y);
    ctx.lineTo(x, y + r * 1.2);
    ctx.lineTo(x - r * 1.2, y);
    ctx.closePath();
  } else ctx.arc(x, y, r, 0, Math.PI * 2);
  ctx.lineJoin = 'round';
  ctx.shadowColor = 'rgba(20, 10, 4, 0.45)';
  ctx.shadowBlur = 5;
  ctx.shadowOffsetY = 1.5;
  ctx.strokeStyle = '#ffffff';
  ctx.lineWidth = lit ? 5 : 3;
  ctx.stroke();
  ctx.shadowColor = 'transparent';
  ctx.fillStyle = palette.pin[pin.severity];
  ctx.fill();
  ctx.fillStyle = palette.pinText;
  ctx.font = `600 ${pin.index > 8 || pin.severity === 'note' ? 11 : 12.5}px 'Page', system-ui, sans-serif`;
  ctx.textAlign = 'center';
  ctx.textBaseline = 'middle';
  ctx.fillText(String(pin.index + 1), x, y + 0.75);
  ctx.restore();
}
