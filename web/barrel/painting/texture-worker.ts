import { oakPixels, type OakPixels, type OakWish } from './oak.ts';
import { STEEL_PX, steelPixels } from './steel.ts';

/** Wood and steel as they are painted, for one size of head: asked once, then the worker is ended. */
export interface TexturePixels {
  readonly oak: OakPixels;
  readonly steel: Uint8ClampedArray<ArrayBuffer>;
}

const scope = self as unknown as DedicatedWorkerGlobalScope;

scope.onmessage = ({ data }: MessageEvent<OakWish>) => {
  const made: TexturePixels = { oak: oakPixels(data), steel: steelPixels(STEEL_PX) };
  scope.postMessage(made, [made.oak.rgba.buffer, made.oak.relief.buffer, made.steel.buffer]);
};
