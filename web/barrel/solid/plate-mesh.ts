import { ShapeUtils, Vector2 } from 'three';
import type { Surface } from '../../../geometry/barrel/surface.ts';
import { thinRing } from '../../../geometry/measure/thin-ring.ts';
import type { Point, Region, Ring } from '../../../geometry/shapes.ts';
import { layOnPlate } from './lay.ts';
import { corner, emptyMesh, grey, quad, type Mesh } from './mesh.ts';
import { metalShapes } from './metal-shapes.ts';
import { PICTURE_ERROR_MM } from '../../../geometry/units.ts';

/** On a bent plate no edge spans more of the bend than this: on a barrel of 60 cm a chord of it stands off 0.06 mm. */
const LONGEST_BENT_MM = 12;

/**
 * A cut plate on its surface: its upper face with the openings as true holes, and the walls of the cuts and the rim.
 * Its underside lies on the wood and is never seen. UVs run over the square around the plate.
 */
export function plateMesh(openings: readonly Region[], radiusMm: number, thicknessMm: number, surface: Surface): Mesh {
  const mesh = emptyMesh();
  const bend = bendOf(surface);
  const uv = (p: Point) => [0.5 + p.x / (2 * radiusMm), 0.5 + p.y / (2 * radiusMm)] as const;
  const drawn = openings.map(({ outer, holes }): Region => {
    return { outer: thinRing(outer, PICTURE_ERROR_MM), holes: holes.map((hole) => thinRing(hole, PICTURE_ERROR_MM)) };
  });
  for (const shape of metalShapes(drawn, radiusMm)) {
    for (const [a, b, c] of triangles(shape, bend)) {
      const ids = [a, b, c].map((p) => {
        const { at, normal } = layOnPlate(surface, p, thicknessMm);
        return corner(mesh, at, normal, uv(p), grey(1));
      });
      mesh.indices.push(...ids);
    }
    for (const ring of [shape.outer, ...shape.holes]) wall(mesh, ring, thicknessMm, surface, bend, uv);
  }
  return mesh;
}

type Bend = ((p: Point) => number) | undefined;

/** How far round the bend a point lies, where there is one. */
function bendOf(surface: Surface): Bend {
  if (surface.kind === 'head') return undefined;
  return surface.lines === 'along-hoops' ? (p) => p.x : (p) => p.y;
}

function triangles(shape: Region, bend: Bend): readonly Triangle[] {
  const outer = shape.outer.map((p) => new Vector2(p.x, p.y));
  const holes = shape.holes.map((hole) => hole.map((p) => new Vector2(p.x, p.y)));
  const all: readonly Point[] = [...outer, ...holes.flat()];
  return ShapeUtils.triangulateShape(outer, holes).flatMap(([i = 0, j = 0, k = 0]) => {
    const [a, b, c] = [all[i], all[j], all[k]];
    return a && b && c ? split([a, b, c], bend) : [];
  });
}

type Triangle = readonly [Point, Point, Point];

/** Cuts a triangle until no edge spans too much of the bend. An edge is cut by what it is alone, so neighbours agree. */
function split(triangle: Triangle, bend: Bend): readonly Triangle[] {
  if (!bend) return [triangle];
  const [a, b, c] = triangle;
  const [ab, bc, ca] = [middle(a, b, bend), middle(b, c, bend), middle(c, a, bend)];
  const on = (...parts: Triangle[]) => parts.flatMap((part) => split(part, bend));
  if (ab && bc && ca) return on([a, ab, ca], [ab, b, bc], [ca, bc, c], [ab, bc, ca]);
  if (!ab && !bc && !ca) return [triangle];
  // Turned so that the first edge is cut and the last is not.
  if (ab && !ca) return bc ? on([a, ab, c], [ab, b, bc], [ab, bc, c]) : on([a, ab, c], [ab, b, c]);
  return split(bc && !ab ? [b, c, a] : [c, a, b], bend);
}

function middle(a: Point, b: Point, bend: (p: Point) => number): Point | undefined {
  if (Math.abs(bend(a) - bend(b)) <= LONGEST_BENT_MM) return undefined;
  return { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
}

/** The cut face along a ring whose metal lies to its left. */
function wall(
  mesh: Mesh,
  ring: Ring,
  thicknessMm: number,
  surface: Surface,
  bend: Bend,
  uv: (p: Point) => readonly [number, number],
): void {
  ring.forEach((from, i) => {
    const to = ring[(i + 1) % ring.length];
    if (!to) return;
    const length = Math.hypot(to.x - from.x, to.y - from.y);
    if (length === 0) return;
    const out = { x: (to.y - from.y) / length, y: -(to.x - from.x) / length };
    for (const [a, b] of along(from, to, bend)) {
      const end = (p: Point, up: number) => {
        const { at } = layOnPlate(surface, p, up);
        const ahead = layOnPlate(surface, { x: p.x + out.x, y: p.y + out.y }, up).at;
        const normal = [ahead[0] - at[0], ahead[1] - at[1], ahead[2] - at[2]] as const;
        return corner(mesh, at, normal, uv(p), grey(up === 0 ? 0.45 : 0.85));
      };
      quad(mesh, end(a, 0), end(b, 0), end(b, thicknessMm), end(a, thicknessMm));
    }
  });
}

function along(a: Point, b: Point, bend: Bend): (readonly [Point, Point])[] {
  const mid = bend && middle(a, b, bend);
  return mid ? [...along(a, mid, bend), ...along(mid, b, bend)] : [[a, b]];
}
