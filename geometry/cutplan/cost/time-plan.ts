/** How long a sheet takes, pass by pass; set-up and work by hand are another matter (price.ts). */
import { closeRun, runLengthMm } from '../contour-walk.ts';
import { type Motion, timeRun, type TimedRun } from './feed.ts';
import type { CutPass, CutSettings, Rapid, Run, SheetPlan } from '../sheet-plan.ts';

export interface PassTime {
  readonly pass: string;
  /** From the beginning of the sheet to when the head leaves for this pass. */
  readonly fromS: number;
  readonly rapidS: number;
  readonly raiseS: number;
  readonly pierceS: number;
  readonly cut: TimedRun;
  /** Lead-ins behind tabs. */
  readonly tabS: number;
}

export interface PlanTime {
  readonly passes: readonly PassTime[];
  readonly rapidS: number;
  readonly raiseS: number;
  readonly pierceS: number;
  readonly cutS: number;
  readonly totalS: number;
}

/** Each pass with the way to it; ways after the last pass count in the sums only. */
export function timePlan(plan: SheetPlan, settings: CutSettings): PlanTime {
  let fromS = 0;
  const passes = plan.passes.map((pass, i): PassTime => {
    const rapid = plan.rapids[i];
    const cut = timeRun(runOf(pass), settings, stopsOf(pass));
    const time = {
      pass: pass.id,
      fromS,
      rapidS: rapid ? rapidTimeS(rapid, settings) : 0,
      raiseS: rapid?.raised ? settings.raiseS : 0,
      pierceS: settings.pierceS * (1 + (pass.tabsMm?.length ?? 0)),
      cut,
      tabS: (pass.tabsMm ?? []).reduce((s, { leadIn }) => s + timeRun(leadIn, settings).seconds, 0),
    };
    fromS += time.rapidS + time.raiseS + time.pierceS + cut.seconds + time.tabS;
    return time;
  });
  const home = plan.rapids.slice(plan.passes.length);
  const sum = (of: (time: PassTime) => number): number => passes.reduce((total, time) => total + of(time), 0);
  const rapidS = sum((t) => t.rapidS) + home.reduce((total, rapid) => total + rapidTimeS(rapid, settings), 0);
  const raiseS = sum((t) => t.raiseS) + home.filter((rapid) => rapid.raised).length * settings.raiseS;
  const pierceS = sum((t) => t.pierceS);
  const cutS = sum((t) => t.cut.seconds + t.tabS);
  return { passes, rapidS, raiseS, pierceS, cutS, totalS: rapidS + raiseS + pierceS + cutS };
}

/** All that the head runs with the beam on, from the pierce. */
export function runOf({ leadIn, path, leadOut }: CutPass): Run {
  const round = closeRun(path);
  const out = leadOut && leadOut.length > 1 ? [...round.slice(0, -1), ...leadOut] : round;
  return [...leadIn.slice(0, -1), ...out];
}

/** At a tab the cut ends, and begins behind it with another pierce. */
function stopsOf({ leadIn, tabsMm }: CutPass): number[] {
  const before = runLengthMm(leadIn);
  return (tabsMm ?? []).flatMap(({ fromMm, toMm }) => [before + fromMm, before + toMm]).sort((a, b) => a - b);
}

function rapidTimeS({ way }: Pick<Rapid, 'way'>, settings: CutSettings): number {
  return timeRun(
    way.map((p) => ({ ...p, bulge: 0 })),
    atRapid(settings),
  ).seconds;
}

/** The settings of a move with the beam off. */
export function atRapid({ rapidMmMin, accelerationMmS2, cornerMm }: CutSettings): Motion {
  return { feedMmMin: rapidMmMin, accelerationMmS2, cornerMm };
}
