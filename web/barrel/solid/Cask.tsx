import type { Texture } from 'three';
import type { Theme } from '../painting/oak.ts';
import type { HeadSurface } from '../../../geometry/barrel/surface.ts';
import { beamsMesh } from './beams-mesh.ts';
import { headMesh } from './head-mesh.ts';
import { hoopsMesh } from './hoops.ts';
import { litMaterial } from './lit-material.ts';
import { bunged } from './bung.ts';
import type { CaskMeasures } from './measures.ts';
import type { Pose } from './pose.ts';
import { stavesMesh } from './shell.ts';
import { toGeometry } from './to-geometry.ts';
import { useOwn } from './use-own.ts';

interface CaskProps {
  readonly cask: CaskMeasures;
  readonly pose: Pose;
  /** The head as it is crowned. */
  readonly head: HeadSurface;
  readonly wood: Texture;
  /** Brushed steel. */
  readonly steel: Texture;
  readonly theme: Theme;
}

/** Staves, hoops, head and what it lies on. */
export function Cask({ cask, pose, head, wood, steel, theme }: CaskProps) {
  const { endZ } = pose;
  const key = JSON.stringify([cask, head, endZ]);
  const woodSideMm = Math.max(cask.headAcrossMm, cask.headAlongMm);
  const staves = useOwn(() => toGeometry(bunged(stavesMesh(cask, endZ, woodSideMm), cask, endZ)), [key]);
  const hoops = useOwn(() => toGeometry(hoopsMesh(cask, endZ)), [key]);
  const boards = useOwn(() => toGeometry(headMesh(cask, head)), [key]);
  const beams = useOwn(() => toGeometry(beamsMesh(cask, endZ, woodSideMm)), [key]);
  // The crown is measured from the plate; the barrel's own head carries none when its side is marked.
  const headZ = pose.lies === 'towards' ? 0 : endZ - cask.recessMm;
  const night = theme === 'dark';
  const wooden = (color: string) => litMaterial({ map: wood, color, theme });
  const staveWood = useOwn(() => wooden(night ? '#e2d8ca' : '#e3ded6'), [wood, theme]);
  const headWood = useOwn(() => wooden(night ? '#fff4e4' : '#fdfcfa'), [wood, theme]);
  const beamWood = useOwn(() => wooden(night ? '#e6d8c8' : '#b9ada0'), [wood, theme]);
  const iron = useOwn(() => {
    return litMaterial({ map: steel, color: night ? '#8f8f92' : '#85888a', theme, metal: 0.8, polish: 18 });
  }, [steel, theme]);
  return (
    <group rotation={[...pose.rotation]} position={[...pose.position]}>
      <mesh geometry={staves} material={staveWood} castShadow receiveShadow />
      <mesh geometry={boards} material={headWood} position-z={headZ} receiveShadow />
      <mesh geometry={hoops} material={iron} receiveShadow />
      {pose.lies !== 'stands' && <mesh geometry={beams} material={beamWood} receiveShadow />}
    </group>
  );
}
