import { difference, EndType, FillRule, inflatePaths, JoinType, type Paths64, union as union2 } from 'clipper2-ts';
import load, { type Clipper2, type PathsD } from 'clipper2-wasm';
import { offset, ringsOf, subtract, union } from '../../../geometry/adapters/clipper.ts';
import { signedAreaMm2 } from '../../../geometry/measure/ring.ts';
import type { Point, Ring } from '../../../geometry/shapes.ts';
import { GRID_MM, ROUND_JOIN_ERROR_MM } from '../../../geometry/units.ts';
import { timeInTurns } from '../../bench/timing.ts';
import { type Claim, rounded } from '../claim.ts';
import { bundledKB } from './bundled-size.ts';
import { corpusRings } from './glyph-corpus.ts';

const SHRINK_MM = -0.15;
const GROW_MM = 2;
const SCALE = 1 / GRID_MM;
const DECIMALS = 4;
const ROUNDS = 2;
/** Of the glyphs of all faces; no divisor of their letters, so that every letter comes. */
const EVERY = 10;
/** Areas of one glyph may differ by this share: all round corners are polygons, each library's its own. */
const SAME_AREA = 0.002;

/** United, less a bar, grown, shrunk: what a glyph goes through. Areas of each, mm2. */
type Chain = (rings: readonly Ring[], bar: Ring) => number[];

/**
 * clipper-lib stays. Measured on 2026-12-01, all three give the same areas; clipper2-ts does it with 0.83 of the work and
 * clipper2-wasm with 0.42, which is little where a keystroke clips one letter. The wasm must be waited for and weighs
 * three times as much. Steps inside it can't be counted, which is how endless work is told (count-clipper.ts).
 */
export const CLIPPING_CLAIMS: readonly Claim[] = [
  {
    name: 'clipping-libraries',
    wanted: 'clipper-lib against clipper2-ts and clipper2-wasm: 0 glyphs of other areas',
    timed: true,
    async measure() {
      const wasm = await load();
      const chains: Readonly<Record<string, Chain>> = {
        'clipper-lib': first,
        'clipper2-ts': typed,
        'clipper2-wasm': inWasm(wasm),
      };
      const glyphs = (await corpusRings()).filter((_, i) => i % EVERY === 0);
      let other = 0;
      for (const { rings, bar } of glyphs) {
        const [ours = [], ...theirs] = Object.values(chains).map((chain) => chain(rings, bar));
        const differs = theirs.some((areas) =>
          areas.some((area, i) => Math.abs(area - ours[i]!) > SAME_AREA * Math.abs(ours[i]!) + 0.001),
        );
        if (differs) other++;
      }
      const some = glyphs.filter((_, i) => i % 6 === 0);
      const times = await timeInTurns(
        ROUNDS,
        Object.values(chains).map((chain) => () => some.forEach(({ rings, bar }) => chain(rings, bar))),
      );
      const kB = await Promise.all([
        bundledKB("export { default } from 'clipper-lib';"),
        bundledKB(
          "export { union, difference, inflatePaths, Clipper64, ClipperOffset, PolyTree64 } from 'clipper2-ts';",
        ),
        bundledKB("export { default } from 'clipper2-wasm';", 'clipper2-wasm/dist/umd/clipper2z.wasm'),
      ]);
      const told = Object.keys(chains).map(
        (name, i) => `${name} ${rounded(times[i]! / times[0]!, 2)} times the work, ${kB[i]} kB`,
      );
      return { value: other, unit: `of ${glyphs.length} glyphs; ${told.join('; ')} gzip`, ok: other === 0 };
    },
  },
];

const first: Chain = (rings, bar) => {
  const united = union(rings);
  const all = [united, subtract(united, [bar]), offset(united, GROW_MM), offset(united, SHRINK_MM)];
  return all.map((regions) => sumOf(ringsOf(regions)));
};

const typed: Chain = (rings, bar) => {
  const united = union2(rings.map(toInts), FillRule.NonZero);
  const grow = (mm: number) =>
    inflatePaths(united, mm * SCALE, JoinType.Round, EndType.Polygon, 2, ROUND_JOIN_ERROR_MM * SCALE);
  const all: Paths64[] = [united, difference(united, [toInts(bar)], FillRule.NonZero), grow(GROW_MM), grow(SHRINK_MM)];
  return all.map((paths) => sumOf(paths.map((path) => path.map((p) => ({ x: p.x / SCALE, y: p.y / SCALE })))));
};

function inWasm(wasm: Clipper2): Chain {
  const { JoinType: join, EndType: end, FillRule: fill } = wasm;
  const copyIn = (rings: readonly Ring[]): PathsD => {
    const paths = new wasm.PathsD();
    for (const ring of rings) {
      const path = new wasm.PathD();
      path.assign(Float64Array.from(ring.flatMap((p) => [p.x, p.y, 0])));
      paths.push_back(path);
      path.delete();
    }
    return paths;
  };
  return (rings, bar) => {
    const [drawn, bars] = [copyIn(rings), copyIn([bar])];
    const united = wasm.UnionSelfD(drawn, fill.NonZero, DECIMALS);
    const grow = (mm: number) =>
      wasm.InflatePathsD(united, mm, join.Round, end.Polygon, 2, DECIMALS, ROUND_JOIN_ERROR_MM);
    const all = [united, wasm.DifferenceD(united, bars, fill.NonZero, DECIMALS), grow(GROW_MM), grow(SHRINK_MM)];
    const areas = all.map((paths) => sumOf(copyOut(paths)));
    for (const paths of [drawn, bars, ...all]) paths.delete();
    return areas;
  };
}

/** Three numbers a point: this build carries a third with each. */
function copyOut(paths: PathsD): Ring[] {
  return Array.from({ length: paths.size() }, (_, i) => {
    const path = paths.get(i);
    const flat = path.view();
    const ring = Array.from({ length: flat.length / 3 }, (_, k): Point => ({ x: flat[3 * k]!, y: flat[3 * k + 1]! }));
    path.delete();
    return ring;
  });
}

function toInts(ring: Ring): { x: number; y: number }[] {
  return ring.map((p) => ({ x: Math.round(p.x * SCALE), y: Math.round(p.y * SCALE) }));
}

/** Holes run the other way round and count as less. */
function sumOf(rings: readonly Ring[]): number {
  return rings.reduce((sum, ring) => sum + signedAreaMm2(ring), 0);
}
