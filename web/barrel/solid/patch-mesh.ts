import type { Surface } from '../../../geometry/barrel/surface.ts';
import { layOnWood } from './lay.ts';
import { corner, emptyMesh, grey, grid, type Mesh } from './mesh.ts';

const CELLS = 56;
/** Above the wood, so that the two never fight for a pixel. */
const UP_MM = 0.15;

/**
 * The round of wood under a plate and a little more, for the mark. UVs run over the square around it in the plate's
 * frame: what is drawn there lies where the plate's points lie.
 */
export function patchMesh(surface: Surface, halfMm: number): Mesh {
  const mesh = emptyMesh();
  return grid(mesh, CELLS, CELLS, (i, j) => {
    const p = { x: ((2 * i) / CELLS - 1) * halfMm, y: ((2 * j) / CELLS - 1) * halfMm };
    // Beyond the round there is no mark; a head's wood ends there.
    const far = Math.hypot(p.x, p.y) / halfMm;
    const on = far > 1 ? { x: p.x / far, y: p.y / far } : p;
    const { at, normal } = layOnWood(surface, on, UP_MM);
    return corner(mesh, at, normal, [0.5 + on.x / (2 * halfMm), 0.5 + on.y / (2 * halfMm)], grey(1));
  });
}
