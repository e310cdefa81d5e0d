import { memoize } from '../../../geometry/cache.ts';
import type { PlateResult } from '../../../geometry/plate/plate.ts';
import { traceRegions } from '../../barrel/painting/trace.ts';
import type { ScenePlate } from './scene.ts';

/** A plate's openings as paths for the canvas, made once for each plate; millimetres, y up. */
export interface PlatePaths {
  /** All that is metal, reaching far beyond the rim. */
  readonly metal: Path2D;
  readonly scene: ScenePlate;
}

export const pathsOf = memoize((plate: PlateResult): PlatePaths => {
  const openings = new Path2D();
  traceRegions(
    openings,
    plate.openings.map((o) => o.region),
  );
  const metal = new Path2D(openings);
  metal.rect(-plate.diameterMm, -plate.diameterMm, 2 * plate.diameterMm, 2 * plate.diameterMm);
  const scene = { openings, radiusMm: plate.diameterMm / 2, thicknessMm: plate.rules.thicknessMm };
  return { metal, scene };
});

/** What would be cut without bridges; only worth making where bridges are shown. */
export function unbridgedOf(plate: PlateResult): Path2D {
  const path = new Path2D();
  traceRegions(path, plate.unbridged);
  return path;
}

/** The openings of some elements alone. */
export function openingsOf(plate: PlateResult, ids: ReadonlySet<string>): Path2D {
  const path = new Path2D();
  traceRegions(
    path,
    plate.openings.filter((o) => o.elementIds.some((id) => ids.has(id))).map((o) => o.region),
  );
  return path;
}
