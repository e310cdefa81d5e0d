import { CanvasTexture, MirroredRepeatWrapping, SRGBColorSpace } from 'three';

/** A painted canvas as a texture that goes on mirrored beyond its edges. */
export function paintedTexture(canvas: HTMLCanvasElement, repeat = 1): CanvasTexture {
  const texture = new CanvasTexture(canvas);
  texture.colorSpace = SRGBColorSpace;
  texture.wrapS = MirroredRepeatWrapping;
  texture.wrapT = MirroredRepeatWrapping;
  texture.repeat.set(repeat, repeat);
  texture.anisotropy = 4;
  return texture;
}
