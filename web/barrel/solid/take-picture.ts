import { OrthographicCamera, PerspectiveCamera, type Scene, type WebGLRenderer } from 'three';
import { blankCanvas, context } from '../painting/textures.ts';
import { isStraight, pictureHalfMm, type Eye } from './eye.ts';
import { look } from './EyeRig.tsx';

const PICTURE_PX = 2000;

/**
 * The scene as the eye sees it, square, as a PNG of 2000 by 2000 pixels. Straight on it is drawn to scale, without
 * foreshortening: see pictureHalfMm.
 */
export async function takePicture(gl: WebGLRenderer, scene: Scene, eye: Eye): Promise<Uint8Array<ArrayBuffer>> {
  const picture = blankCanvas(PICTURE_PX, PICTURE_PX);
  const ratio = gl.getPixelRatio();
  const { domElement } = gl;
  const [width, height] = [domElement.width / ratio, domElement.height / ratio];
  gl.setPixelRatio(1);
  gl.setSize(PICTURE_PX, PICTURE_PX, false);
  gl.render(scene, cameraFor(eye));
  // Taken in the same task, before the browser clears what was drawn.
  context(picture).drawImage(domElement, 0, 0, PICTURE_PX, PICTURE_PX);
  gl.setPixelRatio(ratio);
  gl.setSize(width, height, false);
  const blob = await new Promise<Blob | null>((done) => picture.toBlob(done, 'image/png'));
  if (!blob) throw new Error('The browser made no picture of its own canvas.');
  return new Uint8Array(await blob.arrayBuffer());
}

function cameraFor(eye: Eye): PerspectiveCamera | OrthographicCamera {
  if (!isStraight(eye)) {
    const camera = new PerspectiveCamera();
    look(camera, eye, 1);
    return camera;
  }
  const half = pictureHalfMm(eye);
  const camera = new OrthographicCamera(-half, half, half, -half, 1, half * 20);
  camera.position.set(eye.at[0], eye.at[1], eye.at[2] + half * 6);
  camera.updateMatrixWorld();
  return camera;
}
