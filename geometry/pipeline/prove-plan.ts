import { notOnePiece } from '../checks/not-one-piece.ts';
import { verifyPlate } from '../checks/verify-plate.ts';
import type { CutPlan } from '../cutplan/cut-plan.ts';
import { sortFindings, verdictOf } from '../findings.ts';
import { contourToRing } from '../measure/arc.ts';
import type { PlateResult } from '../plate/plate.ts';
import type { Contour, Region } from '../shapes.ts';
import { FLATTEN_ERROR_MM } from '../units.ts';

/**
 * The last proof before files are written, from the cut plan alone: its lines and arcs, the whole plate at once,
 * nothing taken from any store. In: a plate and its plan. Out: the plate; where the proof disagrees with what the
 * plate says of itself, with findings that stop the cut and say where.
 */
export function provePlan(plate: PlateResult, plan: CutPlan): PlateResult {
  const openings = plan.contours.flatMap((c) => (c.kind === 'opening' ? [regionOf(c.contour)] : []));
  const { loose } = verifyPlate(plate.diameterMm, openings, plate.rules.leastBridgeMm);
  if (loose.length === 0 || plate.findings.some((f) => f.code === 'not-one-piece')) return plate;
  const findings = sortFindings([...plate.findings, ...loose.map((at) => notOnePiece(at, plate.rules.leastBridgeMm))]);
  return { ...plate, findings, verdict: verdictOf(findings) };
}

/** Every contour of a sound plate bounds an opening of its own: one within another is metal that falls out. */
function regionOf(contour: Contour): Region {
  return { outer: contourToRing(contour, FLATTEN_ERROR_MM), holes: [] };
}
