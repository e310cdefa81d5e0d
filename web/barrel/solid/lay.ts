import { onPlate, onWood, type Surface } from '../../../geometry/barrel/surface.ts';
import type { Point } from '../../../geometry/shapes.ts';
import type { Triple } from './mesh.ts';

/** A point on a surface and the way it faces there. */
interface Laid {
  readonly at: Triple;
  readonly normal: Triple;
}

/** A point of the plate, so many mm above its underside. */
export function layOnPlate(surface: Surface, p: Point, upMm: number): Laid {
  const { x, y, z } = onPlate(surface, p);
  if (surface.kind === 'head') return { at: [x, y, z + upMm], normal: [0, 0, 1] };
  const normal = awayFromAxis(surface, x, y, z);
  // The kernel maps the middle of the sheet.
  return { at: shift([x, y, z], normal, upMm - surface.thicknessMm / 2), normal };
}

/** Where the plate's point marks the wood, so many mm above it. */
export function layOnWood(surface: Surface, p: Point, upMm: number): Laid {
  const { x, y, z } = onWood(surface, p);
  const normal: Triple = surface.kind === 'head' ? [0, 0, 1] : awayFromAxis(surface, x, y, z);
  return { at: shift([x, y, z], normal, upMm), normal };
}

function awayFromAxis(surface: Surface & { kind: 'side' }, x: number, y: number, z: number): Triple {
  const depth = z + surface.bilgeRadiusMm;
  const sideways = surface.lines === 'along-hoops' ? x : y;
  const length = Math.hypot(sideways, depth) || 1;
  return surface.lines === 'along-hoops'
    ? [sideways / length, 0, depth / length]
    : [0, sideways / length, depth / length];
}

function shift(at: Triple, normal: Triple, mm: number): Triple {
  return [at[0] + normal[0] * mm, at[1] + normal[1] * mm, at[2] + normal[2] * mm];
}
