import { createCache } from '../../../geometry/cache.ts';
import type { Theme } from '../painting/oak.ts';
import { paintMetal } from '../painting/paint-plate.ts';
import { blankCanvas, context, steelTexture } from '../painting/textures.ts';

const SIZE = 512;

export interface SheetLook {
  readonly canvas: HTMLCanvasElement;
  readonly metalness: number;
  /** As litMaterial takes it. */
  readonly polish: number;
  readonly opacity: number;
}

const LOOKS = createCache<SheetLook>(20);
let iron: HTMLCanvasElement | undefined;

/** Metal is brushed, plywood shows its grain, plastics are plain or clear. In: id of a material (geometry/stock/). */
export function sheetLook(material: string, theme: Theme): SheetLook {
  return LOOKS.getOrMake(`${material}/${theme}`, () => make(material, theme));
}

/** Hoop iron, streaked a little along its length. */
export function ironCanvas(): HTMLCanvasElement {
  if (iron) return iron;
  iron = blankCanvas(SIZE, SIZE);
  const ctx = context(iron);
  ctx.fillStyle = '#fff';
  ctx.fillRect(0, 0, SIZE, SIZE);
  ctx.globalAlpha = 0.3;
  ctx.globalCompositeOperation = 'multiply';
  ctx.drawImage(steelTexture(), 0, 0, SIZE, SIZE);
  return iron;
}

function make(material: string, theme: Theme): SheetLook {
  const canvas = blankCanvas(SIZE, SIZE);
  const ctx = context(canvas);
  const plain = (colour: string) => {
    ctx.fillStyle = colour;
    ctx.fillRect(0, 0, SIZE, SIZE);
  };
  if (material === 'birch-plywood') {
    plain('#d9bd8c');
    ctx.globalAlpha = 0.5;
    ctx.globalCompositeOperation = 'multiply';
    ctx.drawImage(steelTexture(), 0, 0, SIZE, SIZE);
    return { canvas, metalness: 0, polish: 8, opacity: 1 };
  }
  if (material === 'hdpe' || material === 'pvc') {
    plain('#f1efe8');
    return { canvas, metalness: 0.05, polish: 20, opacity: 1 };
  }
  if (material === 'pet-film' || material === 'polycarbonate') {
    plain('#dfe8ea');
    return { canvas, metalness: 0.12, polish: 80, opacity: 0.5 };
  }
  ctx.translate(SIZE / 2, SIZE / 2);
  ctx.scale(SIZE / 2, -SIZE / 2);
  paintMetal(ctx, { radiusMm: 1, theme });
  if (material === 'mild-steel') {
    ctx.globalCompositeOperation = 'multiply';
    ctx.fillStyle = '#b4b3b4';
    ctx.fillRect(-1, -1, 2, 2);
  }
  return { canvas, metalness: 0.42, polish: 45, opacity: 1 };
}
