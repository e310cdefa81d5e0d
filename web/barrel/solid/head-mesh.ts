import { onWood, type HeadSurface } from '../../../geometry/barrel/surface.ts';
import type { BarrelMeasures } from './measures.ts';
import { corner, emptyMesh, grey, grid, type Mesh } from './mesh.ts';

const RINGS = 20;
const AROUND = 96;

/** What a head that carries no plate is like. */
export function flatHead(barrel: BarrelMeasures): HeadSurface {
  const headDiameterMm = Math.min(barrel.headAcrossMm, barrel.headAlongMm);
  return { kind: 'head', headDiameterMm, crownMm: 0, plateDiameterMm: headDiameterMm };
}

/** How high the head's edge lies over the plate's underside, mm: 0 when flat, below 0 when it bulges. */
export function headEdgeZ(surface: HeadSurface): number {
  return onWood(surface, { x: surface.headDiameterMm / 2, y: 0 }).z;
}

/**
 * The head: crowned as measured, its boards' texture over the square around it, darker towards the croze where little
 * light comes.
 */
export function headMesh(barrel: BarrelMeasures, surface: HeadSurface): Mesh {
  const mesh = emptyMesh();
  const [rx, ry] = [barrel.headAcrossMm / 2, barrel.headAlongMm / 2];
  const half = Math.max(rx, ry);
  return grid(mesh, RINGS, AROUND, (k, i) => {
    // Closer rings near the edge, where the shade is.
    const share = 1 - (1 - k / RINGS) ** 2;
    const angle = (i / AROUND) * 2 * Math.PI;
    const [x, y] = [rx * share * Math.cos(angle), ry * share * Math.sin(angle)];
    const { z } = onWood(surface, { x, y });
    const near = onWood(surface, { x: x * 0.99, y: y * 0.99 });
    const fall = share > 0 ? (near.z - z) / (0.01 * half * share) : 0;
    const length = Math.hypot(1, fall);
    const toEdge = (1 - share) * half;
    const shade = 1 - 0.34 * Math.exp(-toEdge / (barrel.recessMm * 0.9)) - 0.36 * Math.exp(-toEdge / 3);
    const normal = [(fall * Math.cos(angle)) / length, (fall * Math.sin(angle)) / length, 1 / length] as const;
    return corner(mesh, [x, y, z], normal, [0.5 + x / (2 * half), 0.5 + y / (2 * half)], grey(shade));
  });
}
