import { noise2, seededRandom } from '../painting/seeded.ts';
import type { BarrelMeasures } from './measures.ts';
import { corner, emptyMesh, grid, type Mesh, type Triple } from './mesh.ts';
import { middleZ, outsideMm } from './shell.ts';
import { face, spokesBetween, sweep, type OutlinePoint } from './sweep.ts';

/** Where hoops sit, from an end, as shares of the length: chime, quarter and bilge hoop at each end. Common practice, no source. */
const PLACES = [
  { fromEnd: 0.012, wideShare: 0.044 },
  { fromEnd: 0.115, wideShare: 0.04 },
  { fromEnd: 0.265, wideShare: 0.04 },
];
/** Hoop steel about 1.6 mm: common practice, no source. Drawn a little fuller, so that its edge catches light. */
const THICK_MM = 2.2;
const AROUND = 144;
/** Length of the lap that is riveted. */
const LAP_MM = 62;

/** Steel hoops about a barrel, their laps with two rivets each. */
export function hoopsMesh(barrel: BarrelMeasures, endZ: number): Mesh {
  const mesh = emptyMesh();
  const random = seededRandom(73);
  const middle = middleZ(barrel, endZ);
  for (const end of [1, -1]) {
    for (const place of PLACES) {
      const far = barrel.lengthMm / 2 - place.fromEnd * barrel.lengthMm;
      const near = far - place.wideShare * barrel.lengthMm;
      const [top, foot] = end === 1 ? [far, near] : [-near, -far];
      const level = 0.86 + random() * 0.2;
      const tone: Triple = [level, level * 0.985, level * 0.96];
      // Laps are set here and there, never in one line.
      const lapAt = Math.PI * (0.2 + random() * 0.35);
      hoop(mesh, barrel, { top, foot, middle }, tone, lapAt);
    }
  }
  return mesh;
}

interface Band {
  readonly top: number;
  readonly foot: number;
  readonly middle: number;
}

function hoop(mesh: Mesh, barrel: BarrelMeasures, band: Band, tone: Triple, lapAt: number): void {
  // Worn unevenly all round.
  const around = spokesBetween(0, 2 * Math.PI, AROUND, 3).map((spoke, i) => ({
    ...spoke,
    shade: 0.9 + 0.2 * noise2((i % AROUND) * 0.35, band.top, 19),
  }));
  const thick = THICK_MM * Math.min(1, barrel.bilgeMm / 500 + 0.25);
  sweep(mesh, bandOutline(barrel, band, 0, thick), around, tone);
  const radius = outsideMm(barrel, (band.top + band.foot) / 2);
  const lap = LAP_MM / radius;
  const outline = bandOutline(barrel, band, thick, thick * 0.9);
  sweep(mesh, outline, spokesBetween(lapAt, lapAt + lap, 8, 3), [tone[0] * 0.96, tone[1] * 0.96, tone[2] * 0.96]);
  for (const end of [lapAt, lapAt + lap]) lapEnd(mesh, outline, end, end === lapAt ? -1 : 1, tone);
  const wide = band.top - band.foot;
  for (const [share, up] of [
    [0.3, 0.24],
    [0.7, -0.24],
  ] as const) {
    const along = (band.top + band.foot) / 2 + up * wide;
    const r = outsideMm(barrel, along) + 1.9 * thick;
    rivet(mesh, lapAt + lap * share, r, band.middle + along, Math.min(6, wide * 0.17), tone);
  }
}

/** Upper edge, face and lower edge of a band that stands so many mm off the wood. */
function bandOutline(barrel: BarrelMeasures, { top, foot, middle }: Band, off: number, thick: number): OutlinePoint[] {
  const at = (along: number, out: number) => ({ r: outsideMm(barrel, along) + off + out, z: middle + along });
  const v = [0, 0.02] as const;
  return [
    ...face(at(top, -0.6), at(top, thick), [0.7, 1.15], v),
    ...face(at(top, thick), at(foot, thick), [1, 0.95], [0, 0.2]),
    ...face(at(foot, thick), at(foot, -0.6), [0.6, 0.35], v),
  ];
}

function lapEnd(mesh: Mesh, outline: readonly OutlinePoint[], angle: number, sense: number, tone: Triple): void {
  const [a, b, , c, , d] = outline;
  if (!a || !b || !c || !d) return;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const normal: Triple = [-sin * sense, cos * sense, 0];
  const dark: Triple = [tone[0] * 0.5, tone[1] * 0.5, tone[2] * 0.5];
  const ids = [a, b, c, d].map((p) => corner(mesh, [p.r * cos, p.r * sin, p.z], normal, [0, 0], dark));
  const [i = 0, j = 0, k = 0, l = 0] = ids;
  if (sense > 0) mesh.indices.push(i, k, j, i, l, k);
  else mesh.indices.push(i, j, k, i, k, l);
}

/** A flat dome that looks away from the axis. */
function rivet(mesh: Mesh, angle: number, r: number, z: number, radius: number, tone: Triple): void {
  const out: Triple = [Math.cos(angle), Math.sin(angle), 0];
  const side: Triple = [-Math.sin(angle), Math.cos(angle), 0];
  grid(mesh, 12, RISES.length - 1, (i, k) => {
    const up = RISES[k] ?? 1;
    const turn = (i / 12) * 2 * Math.PI;
    const [x, y] = [Math.cos(turn), Math.sin(turn)];
    const [flat, rise] = [Math.cos((up * Math.PI) / 2), Math.sin((up * Math.PI) / 2)];
    const [wide, high] = [radius * flat, radius * 0.45 * rise];
    return corner(
      mesh,
      [(r + high) * out[0] + wide * x * side[0], (r + high) * out[1] + wide * x * side[1], z + wide * y],
      [rise * out[0] + flat * x * side[0], rise * out[1] + flat * x * side[1], flat * y],
      [0, 0],
      [tone[0] * (0.75 + 0.4 * up), tone[1] * (0.75 + 0.4 * up), tone[2] * (0.75 + 0.4 * up)],
    );
  });
}

/** Rings of a rivet's dome, from its foot (0) to its top (1). */
const RISES = [0, 0.35, 0.7, 1];
