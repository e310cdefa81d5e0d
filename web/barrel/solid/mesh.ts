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

/**
 * A surface of corners in rows, each row one step after the other. `at` adds a corner (row 0 to rows, column 0 to
 * columns) and gives its number. Seen from outside with the rows to the right, columns go up.
 */
export function grid(mesh: Mesh, rows: number, columns: number, at: (row: number, column: number) => number): Mesh {
  const all = Array.from({ length: rows + 1 }, (_, r) => Array.from({ length: columns + 1 }, (_, c) => at(r, c)));
  const corners = (r: number, c: number): number => all[r]?.[c] ?? 0;
  for (let r = 0; r < rows; r++) {
    for (let c = 0; c < columns; c++) {
      quad(mesh, corners(r, c), corners(r + 1, c), corners(r + 1, c + 1), corners(r, c + 1));
    }
  }
  return mesh;
}

export function grey(level: number): Triple {
  return [level, level, level];
}
