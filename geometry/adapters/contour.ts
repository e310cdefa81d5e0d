import { contours } from 'd3-contour';
import type { Region, Ring } from '../shapes.ts';

/**
 * Lines of equal value through a grid, the only importer of d3-contour (marching squares).
 * In: width times height values, row by row from the top. Out: the area where the value is at least `level`, in grid
 * steps, y down: outer rings and their holes, each ring once round without its first point again.
 */
export function areaAbove(values: readonly number[], width: number, height: number, level: number): Region[] {
  const found = contours()
    .size([width, height])
    .smooth(true)
    .contour([...values], level);
  return found.coordinates.map(([outer, ...holes]) => ({ outer: ringOf(outer!), holes: holes.map(ringOf) }));
}

function ringOf(line: readonly (readonly number[])[]): Ring {
  return line.slice(0, -1).map(([x, y]) => ({ x: x!, y: y! }));
}
