import { DoubleSide, type Texture } from 'three';
import type { HeadSurface } from '../../geometry/barrel/surface.ts';
import { beamsMesh } from './beams-mesh.ts';
import { headMesh } from './head-mesh.ts';
import { hoopsMesh } from './hoops.ts';
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
  readonly shine: Texture;
  readonly night: boolean;
}

/** Staves, hoops, head and what it lies on. */
export function Cask({ cask, pose, head, wood, shine, night }: CaskProps) {
  const { endZ } = pose;
  const key = JSON.stringify([cask, head, endZ]);
  const woodSideMm = Math.max(cask.headAcrossMm, cask.headAlongMm);
  const staves = useOwn(() => toGeometry(stavesMesh(cask, endZ, woodSideMm)), [key]);
  const hoops = useOwn(() => toGeometry(hoopsMesh(cask, endZ)), [key]);
  const boards = useOwn(() => toGeometry(headMesh(cask, head)), [key]);
  const beams = useOwn(() => toGeometry(beamsMesh(cask, endZ, woodSideMm)), [key]);
  // The crown is measured from the plate; the barrel's own head carries none when its side is marked.
  const headZ = pose.lies === 'towards' ? 0 : endZ - cask.recessMm;
  return (
    <group rotation={[...pose.rotation]} position={[...pose.position]}>
      <mesh geometry={staves} castShadow receiveShadow>
        <meshLambertMaterial map={wood} vertexColors color={night ? '#e2d8ca' : '#e3ded6'} />
      </mesh>
      <mesh geometry={boards} position-z={headZ} receiveShadow>
        <meshLambertMaterial map={wood} vertexColors color={night ? '#fff4e4' : '#fdfcfa'} />
      </mesh>
      <mesh geometry={hoops} receiveShadow>
        <meshStandardMaterial
          vertexColors
          color={night ? '#77777a' : '#85888a'}
          metalness={0.8}
          roughness={0.5}
          envMap={shine}
          envMapIntensity={1.25}
          side={DoubleSide}
        />
      </mesh>
      {pose.lies !== 'stands' && (
        <mesh geometry={beams}>
          <meshLambertMaterial map={wood} vertexColors color={night ? '#a89c90' : '#b9ada0'} />
        </mesh>
      )}
    </group>
  );
}
