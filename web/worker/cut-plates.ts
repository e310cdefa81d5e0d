import { loadFaces } from '../../fonts/browser-faces.ts';
import type { CutPlan } from '../../geometry/cutplan/cut-plan.ts';
import { findMaskWaste } from '../../geometry/cutplan/plate/mask-waste.ts';
import { planCuts } from '../../geometry/cutplan/plate/plan-cuts.ts';
import { isText } from '../../geometry/design/kinds.ts';
import type { Design } from '../../geometry/design/schema.ts';
import { jobDesign } from '../../geometry/files/job/job.ts';
import { contourPath } from '../../geometry/files/svg/svg-path.ts';
import { makePlate } from '../../geometry/pipeline/make-plate.ts';
import type { PlateResult } from '../../geometry/plate/plate.ts';
import { provePlan } from '../../geometry/pipeline/prove-plan.ts';
import type { SolveStore } from '../../geometry/pipeline/solve-store.ts';
import type { StockBook } from '../../geometry/stock/stock-book.ts';
import type { CutPlate, OrderDesign } from './cut-api.ts';
import { withFaceProblems } from './with-face-problems.ts';

/** A plate of the order with all that planning needs. */
export interface OrderPlate {
  readonly shown: CutPlate;
  readonly design: Design;
  readonly plate: PlateResult;
  readonly plan: CutPlan;
}

/** All plates of a design, made, planned and proven, named by the design's key and their number. */
export async function orderPlates(
  { key, design }: OrderDesign,
  store: SolveStore,
  book: StockBook,
): Promise<readonly OrderPlate[]> {
  const { faces, problems } = await loadFaces(design);
  const texts = (face: string): string[] =>
    design.elements.flatMap((e) => (isText(e) && e.face === face ? [e.id] : []));
  return design.plates.map((spec, i) => {
    const made = withFaceProblems(makePlate(design, spec.id, faces, store, book), texts, problems);
    const plan = planCuts(made);
    const plate = provePlan(made, plan);
    return { shown: shownOf(`${key}${i + 1}`, key, design, plate, plan), design, plate, plan };
  });
}

function shownOf(wish: string, key: string, design: Design, plate: PlateResult, plan: CutPlan): CutPlate {
  const openings = plan.contours.flatMap((c) => (c.kind === 'opening' ? [c.contour] : []));
  return {
    wish,
    key,
    plateId: plate.plateId,
    job: jobDesign(wish, design, plate),
    diameterMm: plate.diameterMm,
    path: openings.map(contourPath).join(''),
    openings: openings.length,
    waste: findMaskWaste(design, plate),
    verdict: plate.verdict,
    stops: plate.findings
      .filter((f) => f.severity === 'stop')
      .map(({ sentence, words }) => ({ sentence, ...(words && { words }) })),
  };
}
