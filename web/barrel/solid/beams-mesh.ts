import type { BarrelMeasures } from './measures.ts';
import { corner, emptyMesh, grey, quad, type Mesh, type Triple } from './mesh.ts';
import { beamMm } from './pose.ts';
import { middleZ, outsideMm } from './shell.ts';

/** Two beams across beneath a lying barrel with a wedge at each side, in the barrel's own frame, y up. */
export function beamsMesh(barrel: BarrelMeasures, endZ: number, woodSideMm: number): Mesh {
  const mesh = emptyMesh();
  const radius = barrel.bilgeMm / 2;
  const floor = -radius - beamMm(barrel);
  const wide = radius * 0.12;
  for (const side of [1, -1]) {
    const along = side * barrel.lengthMm * 0.27;
    const z = middleZ(barrel, endZ) + along;
    const round = outsideMm(barrel, along) + 2;
    const top = -round;
    block(mesh, [-radius * 0.86, radius * 0.86], [floor, top], [z - wide, z + wide], woodSideMm);
    for (const hand of [1, -1]) wedge(mesh, hand, round, top, [z - wide * 0.8, z + wide * 0.8], woodSideMm);
  }
  return mesh;
}

type Span = readonly [number, number];

function block(mesh: Mesh, x: Span, y: Span, z: Span, side: number): void {
  const sides: readonly (readonly [Triple, Triple, Triple, Triple, Triple, number])[] = [
    [[0, 0, 1], [x[0], y[0], z[1]], [x[1], y[0], z[1]], [x[1], y[1], z[1]], [x[0], y[1], z[1]], 0.8],
    [[0, 0, -1], [x[1], y[0], z[0]], [x[0], y[0], z[0]], [x[0], y[1], z[0]], [x[1], y[1], z[0]], 0.6],
    [[0, 1, 0], [x[0], y[1], z[1]], [x[1], y[1], z[1]], [x[1], y[1], z[0]], [x[0], y[1], z[0]], 0.62],
    [[1, 0, 0], [x[1], y[0], z[1]], [x[1], y[0], z[0]], [x[1], y[1], z[0]], [x[1], y[1], z[1]], 0.7],
    [[-1, 0, 0], [x[0], y[0], z[0]], [x[0], y[0], z[1]], [x[0], y[1], z[1]], [x[0], y[1], z[0]], 0.8],
  ];
  for (const [normal, a, b, c, d, shade] of sides) flat(mesh, normal, [a, b, c, d], shade, side);
}

/** Its slope touches the barrel. */
function wedge(mesh: Mesh, hand: number, round: number, top: number, z: Span, side: number): void {
  const angle = 0.36;
  const [x0, x1] = [round * Math.sin(0.16), round * Math.sin(angle) * 1.1];
  const high = -round * Math.cos(angle) - 1;
  const [low, tall, foot]: Triple[] = [
    [hand * x0, top, 0],
    [hand * x1, high, 0],
    [hand * x1, top, 0],
  ];
  if (!low || !tall || !foot) return;
  const at = (p: Triple, depth: number): Triple => [p[0], p[1], depth];
  const order = (points: readonly [Triple, Triple, Triple, Triple]): readonly [Triple, Triple, Triple, Triple] =>
    hand > 0 ? points : [points[3], points[2], points[1], points[0]];
  flat(mesh, [0, 0, 1], order([at(low, z[1]), at(foot, z[1]), at(tall, z[1]), at(tall, z[1])]), 0.86, side);
  flat(mesh, [hand, 0, 0], order([at(foot, z[1]), at(foot, z[0]), at(tall, z[0]), at(tall, z[1])]), 0.75, side);
  flat(mesh, [-hand * 0.5, 0.86, 0], order([at(low, z[1]), at(tall, z[1]), at(tall, z[0]), at(low, z[0])]), 0.7, side);
}

function flat(mesh: Mesh, normal: Triple, points: readonly Triple[], shade: number, side: number): void {
  const ids = points.map((p) => corner(mesh, p, normal, [(p[1] + p[2]) / side, p[0] / side], grey(shade)));
  const [a = 0, b = 0, c = 0, d = 0] = ids;
  quad(mesh, a, b, c, d);
}
