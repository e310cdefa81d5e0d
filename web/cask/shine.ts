import {
  CanvasTexture,
  EquirectangularReflectionMapping,
  PMREMGenerator,
  SRGBColorSpace,
  type WebGLRenderTarget,
} from 'three';
import type { WebGLRenderer } from 'three';
import type { Theme } from '../barrel-view/oak.ts';
import { blankCanvas, context } from '../barrel-view/textures.ts';

/** What steel reflects: a dim cellar, a lamp high on the left, the pale wall, the floor. Small: steel here is brushed. */
export function shineOf(gl: WebGLRenderer, theme: Theme): WebGLRenderTarget {
  // Asking each program for its log makes the page wait until it is compiled; these are three's own and known good.
  gl.debug.checkShaderErrors = false;
  const canvas = blankCanvas(64, 32);
  const ctx = context(canvas);
  const day = theme === 'light';
  const sky = ctx.createLinearGradient(0, 0, 0, 32);
  for (const [at, colour] of day
    ? ([
        [0, '#8f887c'],
        [0.42, '#cfc5b4'],
        [0.56, '#8a7a66'],
        [1, '#3a3027'],
      ] as const)
    : ([
        [0, '#2b241d'],
        [0.42, '#5d4c3b'],
        [0.56, '#33281e'],
        [1, '#130e0a'],
      ] as const))
    sky.addColorStop(at, colour);
  ctx.fillStyle = sky;
  ctx.fillRect(0, 0, 64, 32);
  for (const [x, y, r, colour] of [
    [40, 8, 11, day ? 'rgba(255, 250, 240, 1)' : 'rgba(255, 214, 160, 0.95)'],
    [8, 12, 8, day ? 'rgba(225, 226, 230, 0.7)' : 'rgba(110, 110, 130, 0.5)'],
  ] as const) {
    const glow = ctx.createRadialGradient(x, y, 0, x, y, r);
    glow.addColorStop(0, colour);
    glow.addColorStop(1, 'rgba(0, 0, 0, 0)');
    ctx.fillStyle = glow;
    ctx.fillRect(0, 0, 64, 32);
  }
  const picture = new CanvasTexture(canvas);
  picture.colorSpace = SRGBColorSpace;
  picture.mapping = EquirectangularReflectionMapping;
  const generator = new PMREMGenerator(gl);
  const target = generator.fromEquirectangular(picture);
  generator.dispose();
  picture.dispose();
  return target;
}
