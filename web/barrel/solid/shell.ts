import { crownRadiusMm, sagittaMm } from '../../../geometry/barrel/crown.ts';
import { headBoards } from '../painting/oak.ts';
import { seededRandom } from '../painting/seeded.ts';
import { SEED } from '../painting/textures.ts';
import type { BarrelMeasures } from './measures.ts';
import { emptyMesh, type Mesh, type Triple } from './mesh.ts';
import { face, sweep, type OutlinePoint, type Spoke } from './sweep.ts';

/**
 * The staves of a barrel: axis along z, `endZ` the plane of the stave ends at the head that is looked at. They carry
 * the texture of the head's boards, each a strip of one board.
 */
const ROWS = 36;
/** Width of a stave at the bilge: common practice, no source. */
const STAVE_WIDE_MM = 74;

/** Outside radius in mm at so many mm from the middle of the barrel: staves are arcs of a circle. */
export function outsideMm(barrel: BarrelMeasures, alongMm: number): number {
  const arc = crownRadiusMm(barrel.lengthMm, (barrel.bilgeMm - barrel.endMm) / 2);
  return barrel.bilgeMm / 2 - sagittaMm(arc, 2 * Math.abs(alongMm));
}

/** Where the middle of a barrel lies on its axis. */
export function middleZ(barrel: BarrelMeasures, endZ: number): number {
  return endZ - barrel.lengthMm / 2;
}

export function stavesMesh(barrel: BarrelMeasures, endZ: number, woodSideMm: number): Mesh {
  const mesh = emptyMesh();
  const outline = staveOutline(barrel, endZ, woodSideMm);
  const mean = (barrel.headAcrossMm + barrel.headAlongMm) / 2;
  const oval = [barrel.headAcrossMm / mean, barrel.headAlongMm / mean] as const;
  for (const stave of staves(barrel)) sweep(mesh, outline, stave.spokes, stave.tone, oval);
  return mesh;
}

/** The outline runs from the head over the chime and its bevel, then down the outside to the other end. */
function staveOutline(barrel: BarrelMeasures, endZ: number, woodSideMm: number): OutlinePoint[] {
  const inner = (barrel.headAcrossMm + barrel.headAlongMm) / 4;
  const wall = barrel.endMm / 2 - inner;
  const { recessMm } = barrel;
  // The croze lies behind the head's edge; from it the chime opens a little (the howel), then bevels to the end.
  const croze = { r: inner - 0.5, z: endZ - recessMm - 6 };
  const howel = { r: inner + wall * 0.06, z: endZ - recessMm * 0.42 };
  const bevel = { r: inner + wall * 0.5, z: endZ - 0.8 };
  const flat = { r: barrel.endMm / 2 - 2.5, z: endZ };
  const outer = { r: outsideMm(barrel, barrel.lengthMm / 2 - 2.5), z: endZ - 2.5 };
  const at = (mm: number): number => mm / woodSideMm;
  const ends = [
    ...face(croze, howel, [0.3, 0.74], [0, at(recessMm)]),
    ...face(howel, bevel, [0.8, 0.96], [at(20), at(26)]),
    ...face(bevel, flat, [0.74, 0.8], [at(26), at(27)]),
    ...face(flat, outer, [0.9, 0.9], [at(27), at(30)]),
  ];
  const middle = middleZ(barrel, endZ);
  const side = Array.from({ length: ROWS + 1 }, (_, i): OutlinePoint => {
    const along = (barrel.lengthMm / 2 - 2.5) * (1 - (2 * i) / ROWS);
    const slope = (outsideMm(barrel, along + 0.5) - outsideMm(barrel, along - 0.5)) / 1;
    const length = Math.hypot(1, slope);
    return {
      r: outsideMm(barrel, along),
      z: middle + along,
      nr: 1 / length,
      nz: -slope / length,
      shade: 1,
      v: at(barrel.lengthMm / 2 - along),
    };
  });
  return [...ends, ...side];
}

interface Stave {
  readonly spokes: readonly Spoke[];
  readonly tone: Triple;
}

/** Staves of differing width and tone that close the circle. */
function staves(barrel: BarrelMeasures): readonly Stave[] {
  const random = seededRandom(1207);
  const count = Math.max(14, Math.round((Math.PI * barrel.bilgeMm) / Math.min(STAVE_WIDE_MM, barrel.bilgeMm / 7)));
  const widths = Array.from({ length: count }, () => 0.68 + random() * 0.64);
  const total = widths.reduce((a, b) => a + b, 0);
  const boards = headBoards(1, SEED);
  // A joint runs down the middle of the top in no barrel: the bung stave lies there.
  let at = Math.PI / 2 - ((widths[0] ?? 0) / total) * Math.PI;
  return widths.map((width) => {
    const [from, span] = [at, (width / total) * 2 * Math.PI];
    at += span;
    const level = 0.84 + random() * 0.24;
    const warm = (random() - 0.5) * 0.07;
    const board = boards[Math.floor(random() * boards.length)] ?? { startMm: 0, endMm: 0.1 };
    const wide = board.endMm - board.startMm;
    const u0 = board.startMm + wide * (0.08 + random() * 0.1);
    const spokes = ACROSS.map(([mm, shade, back]): Spoke => {
      const share = shareAcross(mm, (barrel.endMm / 2) * span);
      return { angle: from + share * span, shade, back, u: u0 + share * wide * 0.74 };
    });
    return { spokes, tone: [level * (1 + warm), level, level * (1 - warm)] };
  });
}

/** From one edge of a stave to the other: mm from the edge (below 0: from the far one; null: shares), shade, setback. */
const ACROSS: readonly (readonly [number | { readonly share: number }, number, number])[] = [
  [0, 0.2, 1.1],
  [0.7, 0.42, 0.5],
  [2.2, 0.94, 0.1],
  [{ share: 0.3 }, 1, 0],
  [{ share: 0.5 }, 1.02, 0],
  [{ share: 0.7 }, 1, 0],
  [-2.2, 0.92, 0.1],
  [-0.7, 0.42, 0.5],
  [-0.001, 0.2, 1.1],
];

function shareAcross(at: number | { readonly share: number }, wideMm: number): number {
  if (typeof at !== 'number') return at.share;
  return at < 0 ? 1 + Math.max(-0.3, at / wideMm) : Math.min(0.3, at / wideMm);
}
