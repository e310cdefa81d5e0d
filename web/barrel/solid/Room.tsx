import type { Theme } from '../painting/oak.ts';
import { wallTexture } from '../painting/textures.ts';
import { paintedTexture } from './painted-texture.ts';
import { floorMesh, wallMesh, type Foot } from './room-mesh.ts';
import type { Placed } from './set-views.ts';
import { toGeometry } from './to-geometry.ts';
import { useOwn } from './use-own.ts';

/** One picture of the wall is so wide, mm. */
const WALL_PICTURE_MM = 1900;
/** Flags against the wall's stone; by night the lamp lights them more than the wall. Linear. */
const FLOOR_TONE: Record<Theme, [number, number, number]> = { light: [0.67, 0.59, 0.47], dark: [1.8, 1.8, 1.85] };

/** A quiet cellar: floor and wall, already lit; nothing in it is worked out for the lamp again. */
export function Room({ placed, theme }: { readonly placed: readonly Placed[]; readonly theme: Theme }) {
  const size = Math.max(...placed.map((p) => Math.max(p.barrel.lengthMm, p.barrel.bilgeMm, Math.abs(p.x) * 2)));
  const floorY = Math.min(...placed.map((p) => p.pose.floorY + p.y));
  const depth = Math.max(...placed.map((p) => p.pose.depthMm));
  const key = JSON.stringify(placed.map((p) => [p.barrel, p.x, p.y, p.pose.lies]));
  const floor = useOwn(() => toGeometry(floorMesh(size * 3.4, floorY, -depth / 2, placed.map(footOf))), [key]);
  const wall = useOwn(() => toGeometry(wallMesh(size * 3.4, floorY, -depth / 2, size * 3.4)), [key]);
  const stones = useOwn(() => paintedTexture(wallTexture(theme), 1 / WALL_PICTURE_MM), [theme]);
  return (
    <>
      <mesh geometry={wall}>
        <meshBasicMaterial map={stones} vertexColors color={theme === 'light' ? '#f3ece0' : '#ffffff'} />
      </mesh>
      <mesh geometry={floor}>
        <meshBasicMaterial map={stones} vertexColors color={FLOOR_TONE[theme]} />
      </mesh>
    </>
  );
}

function footOf({ barrel, pose, x }: Placed): Foot {
  const [half, round] = [barrel.lengthMm / 2, barrel.bilgeMm / 2];
  if (pose.lies === 'towards') return { x, z: pose.endZ - half, halfX: round * 0.74, halfZ: half * 0.94 };
  if (pose.lies === 'across') return { x, z: -round, halfX: half * 0.94, halfZ: round * 0.62 };
  return { x, z: -round, halfX: round * 0.72, halfZ: round * 0.72 };
}
