import type { Clipper2, PathsD } from 'clipper2-wasm';
import load from 'clipper2-wasm';
import { createCache } from '../../../geometry/cache.ts';
import { offset, subtract, union } from '../../../geometry/adapters/clipper.ts';
import { solveUnit } from '../../../geometry/bridges/solve-unit.ts';
import type { UnitInPlace } from '../../../geometry/bridges/bridge-openings.ts';
import { judgeGaps } from '../../../geometry/checks/gap-findings.ts';
import { proveUnits } from '../../../geometry/checks/prove-units.ts';
import { placeRing } from '../../../geometry/measure/place.ts';
import { flattenOutline } from '../../../geometry/measure/flatten.ts';
import { regionAreaMm2, signedAreaMm2 } from '../../../geometry/measure/ring.ts';
import type { PlateResult } from '../../../geometry/plate/plate.ts';
import type { Ring } from '../../../geometry/shapes.ts';
import { FLATTEN_ERROR_MM, ROUND_JOIN_ERROR_MM } from '../../../geometry/units.ts';

// What a plate costs when nothing is kept and all is one drawing: what the glyph store is held against.

/** Every outline of the plate, flattened and in its place, not yet united. */
export function placedRings(plate: PlateResult): Ring[] {
  return plate.layout.shapes.flatMap((shape) =>
    flattenOutline(shape.outline, FLATTEN_ERROR_MM).map((ring) => placeRing(ring, shape.placement)),
  );
}

/** The plain chain: all outlines of the plate united and bridged as one drawing, then proved and measured whole. */
export function bridgeWhole(plate: PlateResult): number {
  const regions = union(placedRings(plate));
  const solved = solveUnit(regions, plate.rules, 'hidden');
  const unit: UnitInPlace = { key: 'all', frame: { x: 0, y: 0, turnDeg: 0 }, solved, firstOpening: 0 };
  const proof = proveUnits([unit], solved.openings, plate.diameterMm, plate.rules, createCache(1000));
  const openings = solved.openings.map((region, i) => ({ id: `${i}`, elementIds: [], word: '', region }));
  judgeGaps(proof, openings, plate.rules);
  return solved.bars.length;
}

/** Looks at what the bars left: two that find it clean, and the last. */
const LOOKS = 3;

/**
 * The booleans and offsets of that chain and nothing else: union; shrunk metal to find pieces; less the bars; shrunk
 * again for each look at what the bars left. Gives the openings' area, mm2.
 */
export function clipWithClipperLib(plate: PlateResult, rings: readonly Ring[]): number {
  const shrinkMm = 0.49 * plate.rules.leastBridgeMm;
  const united = union(rings);
  offset(united, shrinkMm);
  const left = subtract(
    united,
    plate.bridges.map((b) => b.outline),
  );
  for (let look = 0; look < LOOKS; look++) offset(left, shrinkMm);
  return left.reduce((sum, r) => sum + regionAreaMm2(r), 0);
}

export function loadClipper2(): Promise<Clipper2> {
  return load();
}

/** The same in clipper2-wasm on the same grid: rings and bars copied in once, the openings copied out. */
export function clipWithClipper2(wasm: Clipper2, plate: PlateResult, rings: readonly Ring[]): number {
  const shrinkMm = 0.49 * plate.rules.leastBridgeMm;
  const nonZero = wasm.FillRule.NonZero;
  const { JoinType, EndType } = wasm;
  const grow = (paths: PathsD) =>
    wasm.InflatePathsD(paths, shrinkMm, JoinType.Round, EndType.Polygon, 2, GRID_DECIMALS, ROUND_JOIN_ERROR_MM);
  const drawn = copyIn(wasm, rings);
  const bars = copyIn(
    wasm,
    plate.bridges.map((b) => b.outline),
  );
  const united = wasm.UnionSelfD(drawn, nonZero, GRID_DECIMALS);
  const grown = grow(united);
  const left = wasm.DifferenceD(united, bars, nonZero, GRID_DECIMALS);
  const looks = Array.from({ length: LOOKS }, () => grow(left));
  const area = copyOut(left).reduce((sum, ring) => sum + signedAreaMm2(ring), 0);
  for (const paths of [drawn, bars, united, grown, left, ...looks]) paths.delete();
  return Math.abs(area);
}

/** Decimals of a millimetre on the grid of GRID_MM. */
const GRID_DECIMALS = 4;

/** Three numbers a point: this build of the library carries a third with each. */
function copyIn(wasm: Clipper2, rings: readonly Ring[]): PathsD {
  const paths = new wasm.PathsD();
  for (const ring of rings) {
    const flat = new Float64Array(3 * ring.length);
    ring.forEach((p, i) => {
      flat[3 * i] = p.x;
      flat[3 * i + 1] = p.y;
    });
    const path = new wasm.PathD();
    path.assign(flat);
    paths.push_back(path);
    path.delete();
  }
  return paths;
}

function copyOut(paths: PathsD): Ring[] {
  return Array.from({ length: paths.size() }, (_, i) => {
    const path = paths.get(i);
    const flat = path.view();
    const ring = Array.from({ length: flat.length / 3 }, (_p, j) => ({ x: flat[3 * j]!, y: flat[3 * j + 1]! }));
    path.delete();
    return ring;
  });
}
