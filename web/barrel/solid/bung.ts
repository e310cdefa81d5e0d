import type { BarrelMeasures } from './measures.ts';
import { corner, emptyMesh, type Mesh, type Triple } from './mesh.ts';
import { middleZ } from './shell.ts';
import { face, spokesBetween, sweep } from './sweep.ts';

/** A bung is about 50 mm across and stands a finger's breadth proud: common practice, no source. */
const [ACROSS_MM, PROUD_MM] = [52, 13];
const TONE: Triple = [1.12, 1.06, 0.96];

/** The staves with the bung in the middle of the uppermost stave, softwood, a little tapered; in the barrel's own frame, y up. */
export function addBung(to: Mesh, barrel: BarrelMeasures, endZ: number): Mesh {
  const small = Math.min(1, barrel.bilgeMm / 600);
  const [r, high] = [(ACROSS_MM / 2) * small, PROUD_MM * small];
  const wood = barrel.bilgeMm / 2;
  const bung = emptyMesh();
  // Upright on its own axis first: top, bevel, side down to its foot, and round it the shade at the hole.
  const outline = [
    ...face({ r: 0, z: high }, { r: r * 0.92, z: high }, [0.98, 0.92], [0.06, 0.025]),
    ...face({ r: r * 0.92, z: high }, { r, z: high * 0.85 }, [1, 1], [0.025, 0.02]),
    ...face({ r, z: high * 0.85 }, { r: r * 0.97, z: 0 }, [0.85, 0.45], [0.02, 0]),
    ...face({ r: r * 0.97, z: 0.6 }, { r: r * 1.1, z: 0.6 }, [0.18, 0.3], [0, 0.01]),
  ];
  sweep(bung, outline, spokesBetween(0, 2 * Math.PI, 28, 0.02), TONE);
  const middle = middleZ(barrel, endZ);
  const first = to.positions.length / 3;
  for (let i = 0; i < bung.positions.length / 3; i++) {
    const at = (of: readonly number[], k: number) => of[i * 3 + k] ?? 0;
    corner(
      to,
      [at(bung.positions, 0), wood + at(bung.positions, 2), middle - at(bung.positions, 1)],
      [at(bung.normals, 0), at(bung.normals, 2), -at(bung.normals, 1)],
      [bung.uvs[i * 2] ?? 0, bung.uvs[i * 2 + 1] ?? 0],
      [at(bung.colours, 0), at(bung.colours, 1), at(bung.colours, 2)],
    );
  }
  to.indices.push(...bung.indices.map((index) => first + index));
  return to;
}
