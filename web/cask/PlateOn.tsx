import { FrontSide, type Texture } from 'three';
import type { Surface } from '../../geometry/barrel/surface.ts';
import type { PlateResult } from '../../geometry/plate.ts';
import { paintedTexture } from './painted-texture.ts';
import { plateMesh } from './plate-mesh.ts';
import type { SheetLook } from './sheet-look.ts';
import { toGeometry } from './to-geometry.ts';
import { useOwn } from './use-own.ts';

interface PlateOnProps {
  readonly plate: PlateResult;
  readonly surface: Surface;
  readonly look: SheetLook;
  readonly shine: Texture;
}

/** The plate laid on the wood, its openings true holes through the sheet. */
export function PlateOn({ plate, surface, look, shine }: PlateOnProps) {
  const { openings, diameterMm, rules } = plate;
  const geometry = useOwn(() => {
    const regions = openings.map((o) => o.region);
    return toGeometry(plateMesh(regions, diameterMm / 2, rules.thicknessMm, surface));
  }, [openings, diameterMm, rules.thicknessMm, surface]);
  const map = useOwn(() => paintedTexture(look.canvas), [look]);
  return (
    <mesh geometry={geometry} castShadow receiveShadow>
      <meshStandardMaterial
        map={map}
        vertexColors
        metalness={look.metalness}
        roughness={look.roughness}
        envMap={shine}
        envMapIntensity={0.9}
        transparent={look.opacity < 1}
        opacity={look.opacity}
        shadowSide={FrontSide}
      />
    </mesh>
  );
}
