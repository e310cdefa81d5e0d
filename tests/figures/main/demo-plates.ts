import { readdirSync, readFileSync } from 'node:fs';
import { loadFaces } from '../../../fonts/node-faces.ts';
import { createStore } from '../../../geometry/pipeline/solve-store.ts';
import type { CutPlan } from '../../../geometry/cutplan/cut-plan.ts';
import { planCuts } from '../../../geometry/cutplan/plate/plan-cuts.ts';
import { readDesign } from '../../../geometry/design/read-design.ts';
import type { Design } from '../../../geometry/design/schema.ts';
import { writeDxf } from '../../../geometry/files/dxf/dxf.ts';
import { writeSvg } from '../../../geometry/files/svg/svg.ts';
import { makePlate } from '../../../geometry/pipeline/make-plate.ts';
import type { PlateResult } from '../../../geometry/plate/plate.ts';
import { BUILT_IN } from '../../../geometry/stock/built-in-stock.ts';
import { once } from '../claim.ts';

export interface DemoPlate {
  readonly design: Design;
  readonly plate: PlateResult;
  readonly plan: CutPlan;
  readonly dxf: string;
  readonly svg: string;
}

const FOLDER = new URL('../../../web/demo/', import.meta.url);

/** The designs that the page offers as beginnings, as their files hold them. */
export function demoDesigns(): Design[] {
  const designs = readdirSync(FOLDER)
    .filter((name) => name.endsWith('.json'))
    .sort()
    .map((name) => {
      const read = readDesign(readFileSync(new URL(name, FOLDER), 'utf8'));
      if ('problem' in read) throw new Error(`${name}: ${read.problem}`);
      return read.design;
    });
  if (designs.length === 0) throw new Error('there is no demo design in web/demo/');
  return designs;
}

/** Every plate of every demo design, worked out and written once for all claims. */
export const demoPlates = once(async (): Promise<DemoPlate[]> => {
  const made: DemoPlate[] = [];
  for (const design of demoDesigns()) {
    const { faces } = await loadFaces(design);
    const store = createStore();
    for (const { id } of design.plates) {
      const plate = makePlate(design, id, faces, store, BUILT_IN);
      const plan = planCuts(plate);
      made.push({ design, plate, plan, dxf: writeDxf(design, plate, plan), svg: writeSvg(design, plate, plan) });
    }
  }
  return made;
});
