import { describe, expect, it } from 'vitest';
import type { HeadSurface, SideSurface } from '../../../geometry/barrel/surface.ts';
import type { Region, Ring } from '../../../geometry/shapes.ts';
import type { Mesh } from '../../../web/barrel/solid/mesh.ts';
import { metalShapes } from '../../../web/barrel/solid/metal-shapes.ts';
import { plateMesh } from '../../../web/barrel/solid/plate-mesh.ts';

const HEAD: HeadSurface = { kind: 'head', headDiameterMm: 530, crownMm: 0, plateDiameterMm: 500 };
const SIDE: SideSurface = {
  kind: 'side',
  bilgeRadiusMm: 330,
  endRadiusMm: 285,
  lengthMm: 900,
  thicknessMm: 2,
  lines: 'along-hoops',
};

const square = (x: number, y: number, half: number): Ring => [
  { x: x - half, y: y - half },
  { x: x + half, y: y - half },
  { x: x + half, y: y + half },
  { x: x - half, y: y + half },
];
const hole = (ring: Ring): Ring => [...ring].reverse();
/** A square opening, one with a loose square in it, and an opening in that loose square. */
const OPENINGS: readonly Region[] = [
  { outer: square(-80, 0, 30), holes: [] },
  { outer: square(80, 0, 50), holes: [hole(square(80, 0, 30))] },
  { outer: square(80, 0, 10), holes: [] },
];
const OPEN_MM2 = 60 ** 2 + (100 ** 2 - 60 ** 2) + 20 ** 2;
/** A regular polygon of 192 sides in a circle of 250 mm. */
const ROUND_MM2 = 96 * 250 ** 2 * Math.sin((2 * Math.PI) / 192);

/** Area of the triangles whose corners all face as `faces` says. */
function areaOf(mesh: Mesh, faces: (i: number) => boolean): number {
  let sum = 0;
  for (let t = 0; t < mesh.indices.length; t += 3) {
    const ids = mesh.indices.slice(t, t + 3);
    if (!ids.every(faces)) continue;
    const [a, b, c] = ids.map((i) => mesh.positions.slice(3 * i, 3 * i + 3)) as [number[], number[], number[]];
    const [u, v] = [b.map((n, k) => n - a[k]!), c.map((n, k) => n - a[k]!)] as [number[], number[]];
    const cross = [
      u[1]! * v[2]! - u[2]! * v[1]!,
      u[2]! * v[0]! - u[0]! * v[2]!,
      u[0]! * v[1]! - u[1]! * v[0]!,
    ] as const;
    const normal = mesh.normals.slice(3 * ids[0]!, 3 * ids[0]! + 3);
    // Seen from outside its corners run counter-clockwise, so the normal agrees.
    const sign = Math.sign(cross[0] * normal[0]! + cross[1] * normal[1]! + cross[2] * normal[2]!);
    sum += (sign * Math.hypot(...cross)) / 2;
  }
  return sum;
}

describe('a plate as a body', () => {
  it('is metal with what is cut as true holes, loose pieces and what is cut in them too', () => {
    expect(metalShapes(OPENINGS, 250).map((shape) => shape.holes.length)).toEqual([2, 1]);
    const mesh = plateMesh(OPENINGS, 250, 2, HEAD);
    expect(areaOf(mesh, (i) => mesh.normals[3 * i + 2]! > 0.9)).toBeCloseTo(ROUND_MM2 - OPEN_MM2, 3);
  });

  it('has walls as high as the sheet along every cut and the rim', () => {
    const mesh = plateMesh(OPENINGS, 250, 2, HEAD);
    const rim = 192 * 2 * 250 * Math.sin(Math.PI / 192);
    expect(areaOf(mesh, (i) => Math.abs(mesh.normals[3 * i + 2]!) < 0.1)).toBeCloseTo(
      2 * (240 + 400 + 240 + 80 + rim),
      3,
    );
  });

  it('keeps its area in the middle of the sheet when it is rolled, and lies on the bilge', () => {
    const mesh = plateMesh(OPENINGS, 250, 2, SIDE);
    const radii = new Set<string>();
    for (let i = 0; i < mesh.positions.length; i += 3) {
      radii.add(Math.hypot(mesh.positions[i]!, mesh.positions[i + 2]! + 330).toFixed(6));
    }
    // Only its two faces: the wood's radius and a sheet more.
    expect([...radii].sort()).toEqual(['330.000000', '332.000000']);
    const top = areaOf(mesh, (i) => {
      const [x, z] = [mesh.positions[3 * i]!, mesh.positions[3 * i + 2]! + 330];
      return Math.abs(mesh.normals[3 * i]! - x / 332) < 1e-6 && Math.abs(mesh.normals[3 * i + 2]! - z / 332) < 1e-6;
    });
    // The outer face is stretched round the barrel by 332 / 331; flat triangles stand for a bent sheet.
    expect(Math.abs(top / ((ROUND_MM2 - OPEN_MM2) * (332 / 331)) - 1)).toBeLessThan(1e-3);
  });
});
