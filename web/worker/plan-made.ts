import { planCuts } from '../../geometry/cutplan/plate/plan-cuts.ts';
import type { Design } from '../../geometry/design/schema.ts';
import type { PlateResult } from '../../geometry/plate/plate.ts';
import { composeBarrelPicture } from '../../geometry/proof/barrel-picture.ts';
import { provePlan } from '../../geometry/pipeline/prove-plan.ts';
import type { PlannedPlate } from './plate-api.ts';

/** A plate with its cut plan, proven as before files are written: its pictures, and what a price needs of the plan. */
export function planMade(design: Design, made: PlateResult): PlannedPlate {
  const plan = planCuts(made);
  const plate = provePlan(made, plan);
  return {
    plate,
    cuttingMm: plan.cuttingLengthMm,
    openings: plan.contours.filter(({ kind }) => kind === 'opening').length,
    barrel: composeBarrelPicture(design, { plate, plan }),
  };
}
