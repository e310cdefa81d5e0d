import { corner, grid, type Mesh, type Triple } from './mesh.ts';

/** A point of an outline that is turned about the barrel's axis (z); the normal lies in the plane of axis and radius. */
export interface OutlinePoint {
  readonly r: number;
  readonly z: number;
  readonly nr: number;
  readonly nz: number;
  /** Multiplies the colour. */
  readonly shade: number;
  /** Along the texture. */
  readonly v: number;
}

/** A place across what is swept. */
export interface Spoke {
  readonly angle: number;
  readonly shade: number;
  /** Across the texture. */
  readonly u: number;
  /** How far the surface stands back there, mm. */
  readonly back?: number;
}

/** Two points of an outline and how the face between them looks; its normal is to the left of the way from a to b. */
export function face(
  a: { readonly r: number; readonly z: number },
  b: { readonly r: number; readonly z: number },
  shade: readonly [number, number],
  v: readonly [number, number],
): [OutlinePoint, OutlinePoint] {
  const length = Math.hypot(b.r - a.r, b.z - a.z) || 1;
  const normal = { nr: -(b.z - a.z) / length, nz: (b.r - a.r) / length };
  return [
    { ...a, ...normal, shade: shade[0], v: v[0] },
    { ...b, ...normal, shade: shade[1], v: v[1] },
  ];
}

/**
 * Turns an outline about the axis over the given spokes (counter-clockwise as seen from the head). The outline runs so
 * that its outer side lies to its left with r to the right and z up; `oval` stretches x and y.
 */
export function sweep(
  mesh: Mesh,
  outline: readonly OutlinePoint[],
  spokes: readonly Spoke[],
  tone: Triple,
  oval: readonly [number, number] = [1, 1],
): void {
  grid(mesh, outline.length - 1, spokes.length - 1, (row, column) => {
    const [p, spoke] = [outline[row]!, spokes[column]!];
    const [c, s] = [Math.cos(spoke.angle), Math.sin(spoke.angle)];
    const [r, z] = [p.r - (spoke.back ?? 0) * p.nr, p.z - (spoke.back ?? 0) * p.nz];
    const level = p.shade * spoke.shade;
    return corner(
      mesh,
      [r * c * oval[0], r * s * oval[1], z],
      [p.nr * c, p.nr * s, p.nz],
      [spoke.u, p.v],
      [tone[0] * level, tone[1] * level, tone[2] * level],
    );
  });
}

/** Evenly spaced spokes from one angle to another. */
export function spokesBetween(from: number, to: number, count: number, uPerRadian = 0): Spoke[] {
  return Array.from({ length: count + 1 }, (_, i) => {
    const angle = from + ((to - from) * i) / count;
    return { angle, shade: 1, u: angle * uPerRadian };
  });
}
