import type { Surface } from '../../../geometry/barrel/surface.ts';
import { headEdgeZ } from './head-mesh.ts';
import type { BarrelMeasures } from './measures.ts';
import type { Triple } from './mesh.ts';
import { middleZ } from './shell.ts';

/** Height of the beams that a barrel lies on, as a share of its bilge: common practice, no source. */
const BEAM_SHARE = 0.07;

/** How a barrel stands or lies, so that what is marked faces the one who looks: the plate's frame is the room's. */
export interface Pose {
  /** Plane of the stave ends on the barrel's own axis. */
  readonly endZ: number;
  /** Turns and moves the barrel's own frame (axis z) into the room. Radians, mm. */
  readonly rotation: Triple;
  readonly position: Triple;
  readonly lies: 'towards' | 'across' | 'stands';
  readonly floorY: number;
  /** What is seen from straight in front, and how far it goes back; mm. */
  readonly halfWidthMm: number;
  readonly halfHeightMm: number;
  readonly depthMm: number;
}

/** A head faces the one who looks; lines along the hoops want a barrel that stands, lines up the staves one that lies. */
export function poseOf(barrel: BarrelMeasures, surface: Surface): Pose {
  const radius = barrel.bilgeMm / 2;
  const lying = -radius - beamMm(barrel);
  if (surface.kind === 'head') {
    return {
      endZ: headEdgeZ(surface) + barrel.recessMm,
      rotation: [0, 0, 0],
      position: [0, 0, 0],
      lies: 'towards',
      floorY: lying,
      halfWidthMm: radius,
      halfHeightMm: radius,
      depthMm: barrel.lengthMm,
    };
  }
  const endZ = barrel.lengthMm / 2;
  const common = { endZ, position: [0, 0, -radius - middleZ(barrel, endZ)] as Triple, depthMm: barrel.bilgeMm };
  if (surface.lines === 'along-hoops') {
    const rotation: Triple = [-Math.PI / 2, 0, 0];
    return { ...common, rotation, lies: 'stands', floorY: -endZ, halfWidthMm: radius, halfHeightMm: endZ };
  }
  const rotation: Triple = [0, Math.PI / 2, 0];
  return { ...common, rotation, lies: 'across', floorY: lying, halfWidthMm: endZ, halfHeightMm: radius };
}

export function beamMm(barrel: BarrelMeasures): number {
  return BEAM_SHARE * barrel.bilgeMm;
}
