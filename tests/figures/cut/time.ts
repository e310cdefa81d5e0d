import { closeRun } from '../../../geometry/cutplan/contour-walk.ts';
import { loadFaces } from '../../../fonts/node-faces.ts';
import { type Motion, timeRun } from '../../../geometry/cutplan/cost/feed.ts';
import { planCuts } from '../../../geometry/cutplan/plate/plan-cuts.ts';
import { settingsFor } from '../../../geometry/cutplan/cost/settings-for.ts';
import type { Run } from '../../../geometry/cutplan/sheet-plan.ts';
import { makePlate } from '../../../geometry/pipeline/make-plate.ts';
import { createStore } from '../../../geometry/pipeline/solve-store.ts';
import { BUILT_IN } from '../../../geometry/stock/built-in-stock.ts';
import { inChords, straightS } from '../../cutplan/run-time.ts';
import { type Claim, once, rounded } from '../claim.ts';
import { demoDesigns } from '../main/demo-plates.ts';

/** So fine that a chord's height over the smallest letter's arcs stays under what a corner may be cut short by. */
const STEP_MM = 0.2;

/** Every opening of the demo plates, as it is cut, with the settings of the design's own stock. */
const demoRuns = once(async () => {
  const runs: { run: Run; motion: Motion }[] = [];
  for (const design of demoDesigns()) {
    const motion = settingsFor(BUILT_IN, design.stock);
    if ('problem' in motion) throw new Error(motion.problem);
    const { faces } = await loadFaces(design);
    const store = createStore();
    for (const { id } of design.plates) {
      const { contours } = planCuts(makePlate(design, id, faces, store, BUILT_IN));
      for (const cut of contours) if (cut.kind === 'opening') runs.push({ run: closeRun(cut.contour), motion });
    }
  }
  return runs;
});

const sumS = (runs: readonly { run: Run; motion: Motion }[]): number =>
  runs.reduce((sum, { run, motion }) => sum + timeRun(run, motion).seconds, 0);

export const TIME_CLAIMS: readonly Claim[] = [
  {
    name: 'time-model',
    wanted: 'straight runs against the closed formula of a trapezoid of speed, worst of 900: at most 1e-9',
    measure: () => {
      let worst = 0;
      for (const process of BUILT_IN.processes) {
        for (let i = 0; i < 180; i++) {
          const mm = 0.01 * 1.08 ** i;
          const { accelerationMmS2, cornerMm } = process.machine;
          const feedMmMin = process.cutting[0]?.rows[i % 3]?.speedMmMin ?? 1000;
          const motion = { feedMmMin, accelerationMmS2: accelerationMmS2.value, cornerMm: cornerMm.value };
          const run = [
            { x: 3, y: -2, bulge: 0 },
            { x: 3 + 0.6 * mm, y: -2 + 0.8 * mm, bulge: 0 },
          ];
          worst = Math.max(worst, Math.abs(timeRun(run, motion).seconds / straightS(mm, motion) - 1));
        }
      }
      return Promise.resolve({ value: rounded(worst, 2), unit: 'of the time', ok: worst <= 1e-9 });
    },
  },
  {
    name: 'time-finer',
    wanted: 'all openings of the demo plates in chords of 0.2 mm against ten times finer ones: at most 0.01',
    measure: async () => {
      const runs = await demoRuns();
      const as = (step: number) => sumS(runs.map(({ run, motion }) => ({ run: inChords(run, step), motion })));
      const off = Math.abs(as(STEP_MM) / as(STEP_MM / 10) - 1);
      return { value: rounded(off, 2), unit: `of ${rounded(sumS(runs))} s, ${runs.length} contours`, ok: off <= 0.01 };
    },
  },
  {
    name: 'time-arcs',
    wanted: 'the same as lines and arcs against the finest chords: at most 0.01',
    measure: async () => {
      const runs = await demoRuns();
      const fine = sumS(runs.map(({ run, motion }) => ({ run: inChords(run, STEP_MM / 10), motion })));
      const off = Math.abs(sumS(runs) / fine - 1);
      return { value: rounded(off, 2), unit: 'of the time', ok: off <= 0.01 };
    },
  },
];
