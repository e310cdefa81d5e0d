import type { Point } from '../shapes.ts';
import { secondMomentMm4, sectionModulusMm3, torsionConstantMm4, torsionModulusMm3 } from './beam.ts';
import { UNHELD_SHARE } from '../units.ts';

/**
 * A flat grillage of rigid bodies on beams, moving out of its plane only.
 *
 * Each body has three freedoms: its lift (along z, mm) at its reference point and its turns about x and y (rad).
 * Each beam is built in at both ends, in a body or in fixed ground, and bends and twists as beam.ts says; its 6 x 6
 * stiffness is that of the textbook grid member (Euler-Bernoulli bending, Saint-Venant torsion, warping left out).
 *
 * 1. Bodies are parted into groups that share no beam: ground does not carry motion.
 * 2. Each group's stiffness matrix is assembled and factored (Cholesky: it is symmetric and, when held, positive).
 * 3. Loads are solved for one by one.
 *
 * N, mm, MPa. Not promised: the bodies' own bending, shear in stubby beams, large deflections.
 */
export interface Beam {
  /** Bodies at its ends by index; GROUND for what stays still. */
  readonly a: number;
  readonly b: number;
  readonly from: Point;
  readonly to: Point;
  readonly widthMm: number;
}

export const GROUND = -1;

/** What all beams are made of. */
export interface Section {
  readonly thicknessMm: number;
  readonly youngMPa: number;
  readonly shearMPa: number;
}

/** Bodies that move together, with their factored stiffness. */
export interface Group {
  readonly bodies: readonly number[];
  readonly beams: readonly Beam[];
  /** Lower triangle of the Cholesky factor, row by row; absent when something in the group is not held. */
  readonly factor: Float64Array | undefined;
}

/** Lift and turns of bodies, three numbers each, in the order of the group's bodies. */
export type Motion = Float64Array;

/** The groups of a grillage, or only that of one body. In: reference point of each body, beams, section. */
export function groupsOf(centres: readonly Point[], beams: readonly Beam[], section: Section, only?: number): Group[] {
  const root = centres.map((_, i) => i);
  const find = (i: number): number => (root[i] === i ? i : (root[i] = find(root[i]!)));
  for (const { a, b } of beams) if (a !== GROUND && b !== GROUND) root[find(a)] = find(b);
  const bodiesOf = new Map<number, number[]>();
  centres.forEach((_, i) => bodiesOf.set(find(i), [...(bodiesOf.get(find(i)) ?? []), i]));
  const wanted = [...bodiesOf.values()].filter((bodies) => only === undefined || bodies.includes(only));
  return wanted.map((bodies) => {
    const mine = beams.filter(({ a, b }) => a !== b && (bodies.includes(a) || bodies.includes(b)));
    return { bodies, beams: mine, factor: factored(stiffness(bodies, centres, mine, section), 3 * bodies.length) };
  });
}

/** Work done by a force of 1 N at p on the body's freedoms: its lift there, per unit of each. */
export function liftAt(p: Point, centre: Point): readonly [number, number, number] {
  return [1, p.y - centre.y, centre.x - p.x];
}

/** Motion of a group under forces on its freedoms (N, Nmm, Nmm a body). */
export function motionUnder(group: Group, load: Float64Array): Motion | undefined {
  const l = group.factor;
  if (!l) return undefined;
  const n = load.length;
  const x = load.slice();
  for (let i = 0; i < n; i++) {
    let sum = x[i]!;
    for (let k = 0; k < i; k++) sum -= l[i * n + k]! * x[k]!;
    x[i] = sum / l[i * n + i]!;
  }
  for (let i = n - 1; i >= 0; i--) {
    let sum = x[i]!;
    for (let k = i + 1; k < n; k++) sum -= l[k * n + i]! * x[k]!;
    x[i] = sum / l[i * n + i]!;
  }
  return x;
}

/**
 * Greatest equivalent stress (von Mises, bending and torsion together) at the beams' ends, MPa. What the corner where a
 * bar meets the sheet adds is left out, as is usual for a load that is put on a few times.
 */
export function greatestStressMPa(group: Group, motion: Motion, centres: readonly Point[], section: Section): number {
  let greatest = 0;
  for (const beam of group.beams) {
    const rows = endRows(beam, group.bodies, centres);
    const [w1, s1, t1, w2, s2, t2] = rows.map((row) => row.reduce((sum, { at, by }) => sum + motion[at]! * by, 0)) as [
      number,
      number,
      number,
      number,
      number,
      number,
    ];
    const { ei, gj, length } = rigidities(beam, section);
    const chord = (6 * ei * (w1 - w2)) / length ** 2;
    const first = Math.abs(chord + (ei / length) * (4 * s1 + 2 * s2));
    const second = Math.abs(chord + (ei / length) * (2 * s1 + 4 * s2));
    const bending = Math.max(first, second) / sectionModulusMm3(beam.widthMm, section.thicknessMm);
    const shear = ((gj / length) * Math.abs(t1 - t2)) / torsionModulusMm3(beam.widthMm, section.thicknessMm);
    greatest = Math.max(greatest, Math.sqrt(bending ** 2 + 3 * shear ** 2));
  }
  return greatest;
}

/** A number by which one freedom of the group adds to an end's motion. */
interface Part {
  readonly at: number;
  readonly by: number;
}

/** Lift, slope along the beam and twist about it at both ends, each as a sum over freedoms; none for ground. */
function endRows({ a, b, from, to }: Beam, bodies: readonly number[], centres: readonly Point[]): Part[][] {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const [dx, dy] = [(to.x - from.x) / length, (to.y - from.y) / length];
  const end = (body: number, p: Point): Part[][] => {
    if (body === GROUND) return [[], [], []];
    const at = 3 * bodies.indexOf(body);
    const [lift, turnX, turnY] = liftAt(p, centres[body]!);
    return [
      [
        { at, by: lift },
        { at: at + 1, by: turnX },
        { at: at + 2, by: turnY },
      ],
      [
        { at: at + 1, by: dy },
        { at: at + 2, by: -dx },
      ],
      [
        { at: at + 1, by: dx },
        { at: at + 2, by: dy },
      ],
    ];
  };
  return [...end(a, from), ...end(b, to)];
}

function rigidities({ from, to, widthMm }: Beam, { youngMPa, shearMPa, thicknessMm }: Section) {
  return {
    ei: youngMPa * secondMomentMm4(widthMm, thicknessMm),
    gj: shearMPa * torsionConstantMm4(widthMm, thicknessMm),
    length: Math.hypot(to.x - from.x, to.y - from.y),
  };
}

function stiffness(
  bodies: readonly number[],
  centres: readonly Point[],
  beams: readonly Beam[],
  section: Section,
): Float64Array {
  const n = 3 * bodies.length;
  const matrix = new Float64Array(n * n);
  for (const beam of beams) {
    const rows = endRows(beam, bodies, centres);
    const { ei, gj, length: l } = rigidities(beam, section);
    const [k, s, t] = [(12 * ei) / l ** 3, (6 * ei) / l ** 2, gj / l];
    const [near, far] = [(4 * ei) / l, (2 * ei) / l];
    const member = [
      [k, s, 0, -k, s, 0],
      [s, near, 0, -s, far, 0],
      [0, 0, t, 0, 0, -t],
      [-k, -s, 0, k, -s, 0],
      [s, far, 0, -s, near, 0],
      [0, 0, -t, 0, 0, t],
    ];
    rows.forEach((row, i) =>
      rows.forEach((column, j) => {
        const value = member[i]![j]!;
        if (value === 0) return;
        for (const p of row) for (const q of column) matrix[p.at * n + q.at]! += p.by * value * q.by;
      }),
    );
  }
  return matrix;
}

function factored(matrix: Float64Array, n: number): Float64Array | undefined {
  const l = matrix.slice();
  for (let i = 0; i < n; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = matrix[i * n + j]!;
      for (let k = 0; k < j; k++) sum -= l[i * n + k]! * l[j * n + k]!;
      if (i !== j) l[i * n + j] = sum / l[j * n + j]!;
      else if (sum > UNHELD_SHARE * matrix[i * n + i]!) l[i * n + i] = Math.sqrt(sum);
      else return undefined;
    }
  }
  return l;
}
