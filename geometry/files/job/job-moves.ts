import { runsOf } from '../../cutplan/pass-runs.ts';
import type { CutPass, Rapid } from '../../cutplan/sheet-plan.ts';
import type { Point } from '../../shapes.ts';

/** A way with the beam off; raised: over what may stand. */
export interface Move {
  readonly raised: boolean;
  readonly way: readonly Point[];
}

/** The ways to each run of a pass, in order; the first as it was planned, where the pass before it is drawn as well. */
export function movesTo(pass: CutPass, before: CutPass | undefined, rapid: Rapid | undefined): Move[] {
  const runs = runsOf(pass);
  return runs.map((run, i): Move => {
    const to = run.leadIn[0] ?? run.cut[0]!;
    const last = runs[i - 1];
    // Across a tab: nothing stands there, the piece still hangs.
    if (last) return { raised: false, way: [last.cut.at(-1)!, to] };
    const isPlanned = rapid !== undefined && rapid.from === (before?.id ?? '');
    return isPlanned ? rapid : { raised: true, way: [endOf(before), to] };
  });
}

function endOf(pass: CutPass | undefined): Point {
  return pass ? (pass.leadOut?.at(-1) ?? pass.path[0]!) : { x: 0, y: 0 };
}
