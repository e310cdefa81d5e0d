import { FrontSide } from 'three';
import type { Surface } from '../../../geometry/barrel/surface.ts';
import type { PlateResult } from '../../../geometry/plate/plate.ts';
import type { Theme } from '../painting/oak.ts';
import { litMaterial } from './lit-material.ts';
import { paintedTexture } from './painted-texture.ts';
import { plateMesh } from './plate-mesh.ts';
import type { SheetLook } from './sheet-look.ts';
import { toGeometry } from './to-geometry.ts';
import { useOwn } from './use-own.ts';

interface PlateOnProps {
  readonly plate: PlateResult;
  readonly surface: Surface;
  readonly look: SheetLook;
  readonly theme: Theme;
}

/** The plate laid on the wood, its openings true holes through the sheet. */
export function PlateOn({ plate, surface, look, theme }: PlateOnProps) {
  const { openings, diameterMm, rules } = plate;
  const geometry = useOwn(() => {
    const regions = openings.map((o) => o.region);
    return toGeometry(plateMesh(regions, diameterMm / 2, rules.thicknessMm, surface));
  }, [openings, diameterMm, rules.thicknessMm, surface]);
  const map = useOwn(() => paintedTexture(look.canvas), [look]);
  const sheet = useOwn(() => {
    const { metalness, polish, opacity } = look;
    const made = litMaterial({ map, color: '#fff', theme, metal: metalness, polish, opacity });
    made.shadowSide = FrontSide;
    return made;
  }, [map, look, theme]);
  return <mesh geometry={geometry} material={sheet} castShadow receiveShadow />;
}
