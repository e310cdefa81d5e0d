import { corner, emptyMesh, grid, type Mesh, type Triple } from './mesh.ts';

/** What stands on the floor: the middle of its foot, half its extents, mm. */
export interface Foot {
  readonly x: number;
  readonly z: number;
  readonly halfX: number;
  readonly halfZ: number;
}

const [RINGS, AROUND, WALL_ROWS] = [56, 80, 16];
/** So much smaller the stones of the wall would be than the flags of the floor. */
const FLAGS = 0.55;

/** A round floor with the lamp's light and the barrels' soft shadow in its colours; UVs in parts of a mm: the wall's stone in larger flags. */
export function floorMesh(radiusMm: number, y: number, middleZ: number, feet: readonly Foot[]): Mesh {
  const mesh = emptyMesh();
  return grid(mesh, RINGS, AROUND, (k, i) => {
    const far = (k / RINGS) ** 1.6 * radiusMm;
    const angle = (i / AROUND) * 2 * Math.PI;
    const [x, z] = [far * Math.cos(angle), middleZ - far * Math.sin(angle)];
    const lamp = 0.34 + 0.66 * Math.exp(-((far / (radiusMm * 0.6)) ** 2));
    const level = lamp * feet.reduce((light, foot) => light * (1 - 0.8 * shadow(foot, x, z)), 1);
    return corner(mesh, [x, y, z], [0, 1, 0], [x * FLAGS, z * FLAGS], [level, level * 0.985, level * 0.96]);
  });
}

/** The wall all round, seen from inside; brightest where the lamp's light falls on it behind the barrel. */
export function wallMesh(radiusMm: number, y: number, middleZ: number, heightMm: number): Mesh {
  const mesh = emptyMesh();
  // Seen from inside: the other way round than from outside.
  return grid(mesh, WALL_ROWS, AROUND, (j, i) => {
    const angle = (i / AROUND) * 2 * Math.PI;
    const [x, up] = [radiusMm * Math.cos(angle), (j / WALL_ROWS) * heightMm];
    const at: Triple = [x, y + up, middleZ - radiusMm * Math.sin(angle)];
    const spot = ((x + radiusMm * 0.3) / (radiusMm * 0.75)) ** 2 + ((up - heightMm * 0.42) / (heightMm * 0.5)) ** 2;
    const atFloor = 1 - 0.45 * Math.exp(-up / (heightMm * 0.05));
    const level = (0.42 + 0.58 * Math.exp(-spot)) * atFloor;
    return corner(mesh, at, [0, 0, 1], [angle * radiusMm, up], [level, level * 0.985, level * 0.955]);
  });
}

/** 0 to 1: deep where it stands, soft around it, drawn out to the right and back, away from the lamp. */
function shadow(foot: Foot, x: number, z: number): number {
  const size = Math.min(foot.halfX, foot.halfZ);
  const near = Math.exp(-((outside(foot, x, z) / (size * 0.42)) ** 2));
  const drawnOut = Math.exp(-((outside(foot, x - size * 0.55, z + size * 0.25) / (size * 0.8)) ** 2));
  return Math.min(1, 0.72 * near + 0.45 * drawnOut);
}

function outside(foot: Foot, x: number, z: number): number {
  const dx = Math.max(0, Math.abs(x - foot.x) - foot.halfX);
  const dz = Math.max(0, Math.abs(z - foot.z) - foot.halfZ);
  return Math.hypot(dx, dz);
}
