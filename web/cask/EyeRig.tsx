import { useFrame, useThree } from '@react-three/fiber';
import { useEffect } from 'react';
import { PerspectiveCamera } from 'three';
import { LENS_DEG, standsAt, type Eye } from './eye.ts';
import type { EyeHolder } from './eye-holder.ts';

/** Moves the camera to where the eye is, and asks for a picture only when it has moved. */
export function EyeRig({ eye }: { readonly eye: EyeHolder }) {
  const invalidate = useThree((s) => s.invalidate);
  useEffect(() => eye.subscribe(() => invalidate()), [eye, invalidate]);
  useFrame(({ camera, size }) => {
    if (camera instanceof PerspectiveCamera) look(camera, eye.get(), size.width / size.height);
  });
  return null;
}

export function look(camera: PerspectiveCamera, eye: Eye, aspect: number): void {
  camera.fov = LENS_DEG;
  camera.aspect = aspect;
  camera.near = eye.reachMm * 0.4;
  camera.far = eye.reachMm * 60;
  camera.position.set(...standsAt(eye, aspect));
  camera.up.set(0, 1, 0);
  camera.lookAt(...eye.at);
  camera.updateProjectionMatrix();
  camera.updateMatrixWorld();
}
