/** Triangles as plain numbers: made and tested without any screen. Lengths in mm, colours multiply what is painted. */
export interface Mesh {
  readonly positions: number[];
  readonly normals: number[];
  readonly uvs: number[];
  readonly colours: number[];
  readonly indices: number[];
}

export type Triple = readonly [number, number, number];

export function emptyMesh(): Mesh {
  return { positions: [], normals: [], uvs: [], colours: [], indices: [] };
}

/** Adds a corner; gives its number. */
export function corner(mesh: Mesh, at: Triple, normal: Triple, uv: readonly [number, number], colour: Triple): number {
  mesh.positions.push(at[0], at[1], at[2]);
  mesh.normals.push(normal[0], normal[1], normal[2]);
  mesh.uvs.push(uv[0], uv[1]);
  mesh.colours.push(colour[0], colour[1], colour[2]);
  return mesh.positions.length / 3 - 1;
}

/** Four corners, counter-clockwise as seen from outside. */
export function quad(mesh: Mesh, a: number, b: number, c: number, d: number): void {
  mesh.indices.push(a, b, c, a, c, d);
}

export function grey(level: number): Triple {
  return [level, level, level];
}
