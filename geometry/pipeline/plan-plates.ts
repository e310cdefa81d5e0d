import type { FaceSource } from '../adapters/face.ts';
import { planCuts } from '../cutplan/plate/plan-cuts.ts';
import type { Design } from '../design/schema.ts';
import type { PlannedPlate } from '../files/paper/plate-drawing.ts';
import { makePlate } from './make-plate.ts';
import { provePlan } from './prove-plan.ts';
import type { SolveStore } from './solve-store.ts';
import type { StockBook } from '../stock/stock-book.ts';

/** Every plate of a design, made, planned and proven from its plan. */
export function planPlates(design: Design, faces: FaceSource, store: SolveStore, book: StockBook): PlannedPlate[] {
  return design.plates.map((spec) => {
    const plate = makePlate(design, spec.id, faces, store, book);
    const plan = planCuts(plate);
    return { plate: provePlan(plate, plan), plan };
  });
}
