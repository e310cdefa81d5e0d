import { useFrame, useThree } from '@react-three/fiber';
import { useEffect } from 'react';
import { PerspectiveCamera } from 'three';
import { LENS_DEG, placeEye, type Eye } from './eye.ts';
import type { EyeHolder } from './eye-holder.ts';

/** In so low a place the choice of states lies over the bottom of the picture: what is seen moves up. */
const [LOW_PX, UP_PX] = [420, 24];

/** Moves the camera to where the eye is, and asks for a picture only when it has moved. */
export function EyeRig({ eye }: { readonly eye: EyeHolder }) {
  const invalidate = useThree((s) => s.invalidate);
  useEffect(() => eye.subscribe(() => invalidate()), [eye, invalidate]);
  useFrame(({ camera, size }) => {
    if (!(camera instanceof PerspectiveCamera)) return;
    look(camera, eye.get(), size.width / size.height);
    if (size.height < LOW_PX) camera.setViewOffset(size.width, size.height, 0, UP_PX, size.width, size.height);
    else camera.clearViewOffset();
  });
  return null;
}

export function look(camera: PerspectiveCamera, eye: Eye, aspect: number): void {
  camera.fov = LENS_DEG;
  camera.aspect = aspect;
  camera.near = eye.reachMm * 0.4;
  camera.far = eye.reachMm * 60;
  camera.position.set(...placeEye(eye, aspect));
  camera.up.set(0, 1, 0);
  camera.lookAt(...eye.at);
  camera.updateProjectionMatrix();
  camera.updateMatrixWorld();
}
