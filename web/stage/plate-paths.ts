import type { PlateResult } from '../../geometry/plate.ts';
import { traceRegions } from '../barrel-view/trace.ts';
import type { ScenePlate } from './scene.ts';

/** A plate's openings as paths for the canvas, made once for each plate; millimetres, y up. */
export interface PlatePaths {
  readonly unbridged: Path2D;
  /** All that is metal, reaching far beyond the rim. */
  readonly metal: Path2D;
  readonly scene: ScenePlate;
}

export function pathsOf(plate: PlateResult): PlatePaths {
  const scene = scenePlate(plate);
  const unbridged = new Path2D();
  traceRegions(unbridged, plate.unbridged);
  const metal = new Path2D(scene.openings);
  metal.rect(-plate.diameterMm, -plate.diameterMm, 2 * plate.diameterMm, 2 * plate.diameterMm);
  return { unbridged, metal, scene };
}

/** What is painted of a plate, without the openings of elements that are being dragged. */
export function scenePlate(plate: PlateResult, without: ReadonlySet<string> = NONE): ScenePlate {
  const openings = new Path2D();
  const shown =
    without.size === 0 ? plate.openings : plate.openings.filter((o) => !o.elementIds.some((id) => without.has(id)));
  traceRegions(
    openings,
    shown.map((o) => o.region),
  );
  return { openings, radiusMm: plate.diameterMm / 2, thicknessMm: plate.rules.thicknessMm };
}

const NONE: ReadonlySet<string> = new Set();
