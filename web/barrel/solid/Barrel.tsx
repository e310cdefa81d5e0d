import type { Texture } from 'three';
import type { Theme } from '../painting/oak.ts';
import type { HeadSurface } from '../../../geometry/barrel/surface.ts';
import { beamsMesh } from './beams-mesh.ts';
import { headMesh } from './head-mesh.ts';
import { hoopsMesh } from './hoops.ts';
import { litMaterial } from './lit-material.ts';
import { addBung } from './bung.ts';
import type { BarrelMeasures } from './measures.ts';
import type { Pose } from './pose.ts';
import { stavesMesh } from './shell.ts';
import { toGeometry } from './to-geometry.ts';
import { useOwn } from './use-own.ts';

interface BarrelProps {
  readonly barrel: BarrelMeasures;
  readonly pose: Pose;
  /** The head as it is crowned. */
  readonly head: HeadSurface;
  readonly wood: Texture;
  readonly steel: Texture;
  readonly theme: Theme;
}

/** Staves, hoops, head and what it lies on. */
export function Barrel({ barrel, pose, head, wood, steel, theme }: BarrelProps) {
  const { endZ } = pose;
  const key = JSON.stringify([barrel, head, endZ]);
  const woodSideMm = Math.max(barrel.headAcrossMm, barrel.headAlongMm);
  const staves = useOwn(() => toGeometry(addBung(stavesMesh(barrel, endZ, woodSideMm), barrel, endZ)), [key]);
  const hoops = useOwn(() => toGeometry(hoopsMesh(barrel, endZ)), [key]);
  const boards = useOwn(() => toGeometry(headMesh(barrel, head)), [key]);
  const beams = useOwn(() => toGeometry(beamsMesh(barrel, endZ, woodSideMm)), [key]);
  // The crown is measured from the plate; the barrel's own head carries none when its side is marked.
  const headZ = pose.lies === 'towards' ? 0 : endZ - barrel.recessMm;
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
