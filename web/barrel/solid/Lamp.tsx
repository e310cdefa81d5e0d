import { useThree } from '@react-three/fiber';
import { useLayoutEffect, useMemo } from 'react';
import { DirectionalLight, type WebGLRenderer } from 'three';
import type { Theme } from '../painting/oak.ts';
import { LAMP_FROM } from './lamp-from.ts';

interface LampProps {
  /** Half of what gets sharp shadows, mm: the heads or plates, not the whole barrels. */
  readonly reachMm: number;
  readonly theme: Theme;
  /** Changes whenever something that casts or takes a shadow does. */
  readonly shadowKey: string;
}

const SHADOW_PX = 2048;

/** One lamp at the upper left, a little light from all round. Its shadows are drawn only when something has changed. */
export function Lamp({ reachMm, theme, shadowKey }: LampProps) {
  const { gl, invalidate } = useThree();
  const lamp = useMemo(() => {
    const light = new DirectionalLight();
    light.castShadow = true;
    light.shadow.mapSize.set(SHADOW_PX, SHADOW_PX);
    light.shadow.bias = -0.0004;
    light.shadow.radius = 3;
    return light;
  }, []);
  useLayoutEffect(() => () => lamp.dispose(), [lamp]);
  useLayoutEffect(() => aim(lamp, reachMm), [lamp, reachMm]);
  useLayoutEffect(() => {
    drawShadowsOnce(gl);
    invalidate();
  }, [gl, invalidate, reachMm, shadowKey]);
  const day = theme === 'light';
  return (
    <>
      <primitive object={lamp} intensity={day ? 3 : 4.4} color={day ? '#fff6e8' : '#ffe4c2'} />
      <hemisphereLight args={[day ? '#fff6e8' : '#b8a896', day ? '#b09a80' : '#54443a', 1.5]} />
    </>
  );
}

function aim(lamp: DirectionalLight, reachMm: number): void {
  const far = reachMm * 4;
  lamp.position.set(...LAMP_FROM).multiplyScalar(far);
  const { camera } = lamp.shadow;
  [camera.left, camera.right, camera.bottom, camera.top] = [-reachMm, reachMm, -reachMm, reachMm];
  [camera.near, camera.far] = [reachMm, reachMm * 7];
  camera.updateProjectionMatrix();
}

function drawShadowsOnce(gl: WebGLRenderer): void {
  gl.shadowMap.autoUpdate = false;
  gl.shadowMap.needsUpdate = true;
}
