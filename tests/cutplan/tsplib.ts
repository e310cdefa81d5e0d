import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Point } from '../../geometry/shapes.ts';

/** TSPLIB (Reinelt, ORSA Journal on Computing 3 (1991) 376-384): optima as published with the library. */
export const OPTIMA: readonly (readonly [string, number])[] = [
  ['eil51', 426],
  ['berlin52', 7542],
  ['st70', 675],
  ['kroA100', 21282],
];

/** Its instances are not part of the project: they are read where a folder beside it holds data/tsplib. */
const FOLDER = join('data', 'tsplib');

export function tsplibFolder(): string | undefined {
  const beside = join(import.meta.dirname, '..', '..', '..');
  return readdirSync(beside, { withFileTypes: true })
    .map(({ name }) => join(beside, name, FOLDER))
    .find((path) => existsSync(join(path, 'berlin52.tsp')));
}

export function readInstance(folder: string, name: string): Point[] {
  const [, nodes = ''] = readFileSync(join(folder, `${name}.tsp`), 'utf8').split('NODE_COORD_SECTION');
  return [...nodes.matchAll(/^\s*\d+\s+(\S+)\s+(\S+)\s*$/gm)].map(([, x, y]) => ({ x: Number(x), y: Number(y) }));
}

/** EUC_2D of TSPLIB 95, 2.1: the straight distance, rounded to the nearest whole number. */
export function roundedDistance(a: Point, b: Point): number {
  return Math.floor(Math.hypot(a.x - b.x, a.y - b.y) + 0.5);
}
