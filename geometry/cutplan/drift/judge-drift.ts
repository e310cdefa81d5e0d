/**
 * How drift is seen. witness.ts finds places for marks, witness-passes.ts makes their circles passes of the sheet's plan.
 *
 * 1. The small circle is cut before its plate, the large one after it or after a stage of it. Pierces and tabs of the large
 *    one lie on the diagonals: its ring is whole where it is measured (read-offset.ts).
 * 2. judge-drift.ts takes the offsets, fits shift and turn (registration.ts), and judges by stock/tolerances.ts less the
 *    measuring's uncertainty.
 * 3. plate/check-dimensions.ts gives the lengths that the spec sheet lists as A, B and C.
 */

/**
 * What measured witness marks say about a plate.
 *
 * In: where the small circle of each mark was found to lie to the large one around it, and how well that was measured.
 * Out: for each stage the shift and turn since the plate was begun, how far that carries a point of the plate at most,
 * and a verdict against the tolerance of the plate's own size; and the stage in which the sheet moved.
 *
 * 1. Shift and turn of every stage by least squares (registration.ts); a single mark gives the shift alone.
 * 2. The farthest that a point of the plate moved. Two cuts of the plate may be wrong to each other by as much, so the
 *    limit deviation of the plate's diameter is the limit.
 * 3. ISO 14253-1: proven good only at or under the limit less the measuring uncertainty, proven bad only over the limit
 *    plus it. Between the two the measuring was not good enough to say.
 * 4. Between one stage and the next, the move that is larger than its own uncertainty says where it happened.
 */
import type { Point } from '../../shapes.ts';
import { amount, inMm } from '../../sentences/say.ts';
import { CUT_EN } from '../../sentences/cut-en.ts';
import type { Wording } from '../../sentences/wording.ts';
import { register, type Registration } from './registration.ts';
import type { WitnessMark } from './witness.ts';

export interface WitnessReading {
  readonly mark: WitnessMark;
  /** Middle of the small circle less the middle of the large one, in the sheet's frame, mm. */
  readonly offset: Point;
}

export interface DriftWishes {
  /** Plate: its place on the sheet and its diameter. */
  readonly plate: { readonly x: number; readonly y: number; readonly diameterMm: number };
  /** Limit deviation of a size as large as the plate (geometry/stock/tolerances.ts). */
  readonly limitMm: number;
  /** Standard uncertainty of one coordinate of an offset. */
  readonly noiseMm: number;
}

/** ISO 14253-1 leaves the factor to agreement; 2 covers about 95 % (ISO/IEC Guide 98-3, 6.3). */
const COVERAGE = 2;

export type DriftVerdict = 'pass' | 'fail' | 'unproven';

export interface StageDrift {
  readonly stage: number;
  /** Of the plate's centre, since the plate was begun. */
  readonly shift: Point;
  /** Counter-clockwise; absent when one mark alone was measured. */
  readonly turnDeg?: number;
  /** Farthest that a point of the plate moved, and the uncertainty of that with COVERAGE. */
  readonly movedMm: number;
  readonly uncertaintyMm: number;
  /** The same since the stage before. */
  readonly sinceMm: number;
  readonly sinceUncertaintyMm: number;
  readonly residuals: readonly { readonly mark: string; readonly off: Point }[];
  readonly verdict: DriftVerdict;
}

export interface DriftReport {
  readonly verdict: DriftVerdict;
  readonly limitMm: number;
  readonly stages: readonly StageDrift[];
  /** The stage in which the sheet moved most, where a move is certain. */
  readonly movedIn?: number;
  /** A residual larger than the noise allows: a mark that was measured wrong, or a sheet that bent. */
  readonly doubtful: readonly string[];
  readonly sentences: readonly Wording[];
}

/** Undefined when no mark was measured. Readings of one mark count once: the last. */
export function judgeDrift(readings: readonly WitnessReading[], wishes: DriftWishes): DriftReport | undefined {
  const latest = [...new Map(readings.map((r) => [r.mark.id, r])).values()];
  const numbers = [...new Set(latest.map((r) => r.mark.stage))].sort((a, b) => a - b);
  const stages: StageDrift[] = [];
  let before: Fitted | undefined;
  for (const stage of numbers) {
    const fitted = fit(
      latest.filter((r) => r.mark.stage === stage),
      wishes,
    );
    stages.push(stageOf(stage, fitted, before, wishes));
    before = fitted;
  }
  const last = stages.at(-1);
  if (!last) return undefined;
  const failed = stages.find((s) => s.verdict === 'fail');
  const verdict = failed ? 'fail' : stages.every((s) => s.verdict === 'pass') ? 'pass' : 'unproven';
  const moved = stages.filter((s) => s.sinceMm > s.sinceUncertaintyMm).sort((a, b) => b.sinceMm - a.sinceMm)[0];
  const free = residualLimitMm(wishes.noiseMm);
  const doubtful = stages.flatMap((s) =>
    s.residuals.filter((r) => Math.hypot(r.off.x, r.off.y) > free).map((r) => r.mark),
  );
  const report = {
    verdict,
    limitMm: wishes.limitMm,
    stages,
    doubtful,
    ...(moved && { movedIn: moved.stage }),
  } as const;
  return { ...report, sentences: sentencesFor(report, failed ?? last) };
}

/** What is left at a mark after the fit stays below this in all but one case of a thousand: Rayleigh, 3.72 times. */
function residualLimitMm(noiseMm: number): number {
  return 3.72 * noiseMm;
}

interface Fitted {
  readonly readings: readonly WitnessReading[];
  readonly move: Registration;
  readonly shiftErrorMm: number;
  /** 0 where the turn is not known. */
  readonly turnErrorRad: number;
  readonly turned: boolean;
}

function fit(readings: readonly WitnessReading[], { plate, noiseMm }: DriftWishes): Fitted {
  const about = { x: plate.x, y: plate.y };
  const marks = readings.map(({ mark, offset }) => ({
    at: mark.at,
    found: { x: mark.at.x + offset.x, y: mark.at.y + offset.y },
  }));
  const move = register(marks, { about, noiseMm });
  if (move?.errors) {
    const turnErrorRad = (move.errors.turnDeg * Math.PI) / 180;
    return { readings, move, shiftErrorMm: move.errors.shiftMm, turnErrorRad, turned: true };
  }
  const n = readings.length;
  const shift = {
    x: readings.reduce((sum, r) => sum + r.offset.x, 0) / n,
    y: readings.reduce((sum, r) => sum + r.offset.y, 0) / n,
  };
  const residuals = readings.map((r) => ({ x: r.offset.x - shift.x, y: r.offset.y - shift.y }));
  return {
    readings,
    move: { about, shift, turnDeg: 0, scale: 1, residuals, meanSquareMm2: 0 },
    shiftErrorMm: noiseMm / Math.sqrt(n),
    turnErrorRad: 0,
    turned: false,
  };
}

function stageOf(stage: number, now: Fitted, before: Fitted | undefined, wishes: DriftWishes): StageDrift {
  const radius = wishes.plate.diameterMm / 2;
  const movedMm = farthestMm(now.move.shift, rad(now.move.turnDeg), radius);
  const uncertaintyMm = COVERAGE * Math.hypot(now.shiftErrorMm, radius * now.turnErrorRad);
  const shiftBefore = before?.move.shift ?? { x: 0, y: 0 };
  const sinceMm = farthestMm(
    { x: now.move.shift.x - shiftBefore.x, y: now.move.shift.y - shiftBefore.y },
    rad(now.move.turnDeg - (before?.move.turnDeg ?? 0)),
    radius,
  );
  const errorBefore = before ? COVERAGE * Math.hypot(before.shiftErrorMm, radius * before.turnErrorRad) : 0;
  return {
    stage,
    shift: now.move.shift,
    ...(now.turned && { turnDeg: now.move.turnDeg }),
    movedMm,
    uncertaintyMm,
    sinceMm,
    sinceUncertaintyMm: Math.hypot(uncertaintyMm, errorBefore),
    residuals: now.readings.map((r, i) => ({ mark: r.mark.id, off: now.move.residuals[i] ?? { x: 0, y: 0 } })),
    verdict: verdictFor(movedMm, uncertaintyMm, wishes.limitMm),
  };
}

function verdictFor(movedMm: number, uncertaintyMm: number, limitMm: number): DriftVerdict {
  if (movedMm <= limitMm - uncertaintyMm) return 'pass';
  return movedMm > limitMm + uncertaintyMm ? 'fail' : 'unproven';
}

/** Farthest that a point of a disc goes when the disc is shifted and turned about its centre: shift plus chord. */
function farthestMm(shift: Point, turnRad: number, radius: number): number {
  return Math.hypot(shift.x, shift.y) + 2 * radius * Math.abs(Math.sin(turnRad / 2));
}

function rad(deg: number): number {
  return (deg * Math.PI) / 180;
}

function sentencesFor(report: Omit<DriftReport, 'sentences'>, shown: StageDrift): Wording[] {
  const values = {
    moved: inMm(shown.movedMm, 2),
    limit: inMm(report.limitMm, 2),
    uncertainty: inMm(shown.uncertaintyMm, 2),
  };
  const verdict = { pass: 'drift.pass', fail: 'drift.fail', unproven: 'drift.unproven' } as const;
  const stages = report.stages.length;
  return [
    CUT_EN.say(verdict[report.verdict], values),
    ...(report.movedIn === undefined || stages < 2
      ? []
      : [CUT_EN.say('drift.movedIn', { stage: amount(report.movedIn), of: amount(stages) })]),
    ...(shown.turnDeg === undefined ? [CUT_EN.say('drift.turnUnknown')] : []),
    ...report.doubtful.map((mark) => CUT_EN.say('drift.doubtfulMark', { mark })),
  ];
}
