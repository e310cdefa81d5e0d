import { useThree } from '@react-three/fiber';
import { useLayoutEffect, useMemo } from 'react';
import type { Theme } from '../painting/oak.ts';
import type { OakTexture } from '../painting/textures.ts';
import type { Arranged } from './arrange.ts';
import { Barrel } from './Barrel.tsx';
import { Lamp } from './Lamp.tsx';
import { MarkOn } from './MarkOn.tsx';
import { paintedTexture } from './painted-texture.ts';
import { PlateOn } from './PlateOn.tsx';
import { Room } from './Room.tsx';
import { ironCanvas, type SheetLook } from './sheet-look.ts';
import { useOwn } from './use-own.ts';
import { warmUp } from './warm-up.ts';

interface SceneProps {
  readonly arranged: readonly Arranged[];
  readonly state: 'plate' | 'paint' | 'char';
  readonly paint: string;
  readonly theme: Theme;
  readonly oak: OakTexture;
  readonly sheet: SheetLook;
  /** Says what the scene shows; told once that has been drawn. */
  readonly shows: string;
  readonly onDrawn: (shows: string, held: string) => void;
}

export function BarrelScene(props: SceneProps) {
  const { arranged, state, paint, theme, oak, sheet, shows } = props;
  const gl = useThree((s) => s.gl);
  useMemo(() => warmUp(gl), [gl]);
  const wood = useOwn(() => paintedTexture(oak.wood), [oak]);
  const steel = useOwn(() => paintedTexture(ironCanvas()), []);
  const reach = Math.max(
    ...arranged.map(
      (a) => Math.abs(a.x) + (a.surface?.kind === 'side' ? a.plateRadiusMm * 1.1 : a.barrel.endMm * 0.58),
    ),
  );
  return (
    <>
      <Lamp reachMm={reach} theme={theme} shadowKey={shows} />
      <Room placed={arranged} theme={theme} />
      {arranged.map((a, i) => (
        <group key={i} position={[a.x, a.y, 0]}>
          <Barrel barrel={a.barrel} pose={a.pose} head={a.head} wood={wood} steel={steel} theme={theme} />
          {a.plate && a.surface && state === 'plate' && (
            <PlateOn plate={a.plate} surface={a.surface} look={sheet} theme={theme} />
          )}
          {a.plate && a.surface && state !== 'plate' && (
            <MarkOn
              plate={a.plate}
              surface={a.surface}
              kind={state}
              paint={paint}
              theme={theme}
              oak={oak}
              woodHalfMm={Math.max(a.barrel.headAcrossMm, a.barrel.headAlongMm) / 2}
            />
          )}
        </group>
      ))}
      <Told {...props} />
    </>
  );
}

/** Tells what has been drawn, and how many geometries and textures the card holds. */
function Told({ shows, onDrawn }: SceneProps) {
  const { scene, invalidate } = useThree();
  useLayoutEffect(() => {
    // eslint-disable-next-line react-hooks/immutability -- a handle on what the card draws, no state of React
    scene.onAfterRender = (gl) => onDrawn(shows, `${gl.info.memory.geometries}/${gl.info.memory.textures}`);
    invalidate();
  }, [scene, invalidate, shows, onDrawn]);
  return null;
}
