import { judgeDrift } from '../../../geometry/cutplan/drift/judge-drift.ts';
import { register } from '../../../geometry/cutplan/drift/registration.ts';
import { gaussian, LARGE, marksOf, offsetOf } from '../../cutplan/drift-set-up.ts';
import { UMEYAMA } from '../../outside/registration-published.ts';
import { type Claim, rounded } from '../claim.ts';

const TRIALS = 500;

/** Sheets that moved, found out by their marks. */
export const DRIFT_CLAIMS: readonly Claim[] = [
  {
    name: 'drift-recovered',
    wanted: 'shift and turn off by 0.8 to 1.2 of the standard error that was foretold, over 500 sheets',
    measure() {
      const { shiftRatio, turnRatio } = recovered();
      const ok = [shiftRatio, turnRatio].every((r) => r > 0.8 && r < 1.2);
      const value = `shift ${rounded(shiftRatio)}, turn ${rounded(turnRatio)}`;
      return Promise.resolve({ value, unit: 'of what was foretold', ok });
    },
  },
  {
    name: 'drift-recovered-exact',
    wanted: 'without noise at most 1e-9 mm off at the rim',
    measure() {
      const marks = marksOf(1).filter((m) => m.plate === 'a#1');
      const moved = { x: 0.21, y: -0.34, turnDeg: 0.05 };
      const [stage] = judgeDrift(
        marks.map((mark) => ({ mark, offset: offsetOf(mark, moved) })),
        LARGE,
      )!.stages;
      const turnMm = (LARGE.plate.diameterMm / 2) * Math.abs(((stage!.turnDeg! - moved.turnDeg) * Math.PI) / 180);
      const off = Math.hypot(stage!.shift.x - moved.x, stage!.shift.y - moved.y) + turnMm;
      return Promise.resolve({ value: off.toExponential(1), unit: 'mm', ok: off <= 1e-9 });
    },
  },
  {
    name: 'drift-stage-found',
    wanted: 'the stage in which the sheet moved 0.3 mm, in at least 99 % of 500 sheets of 4 stages',
    measure() {
      const marks = marksOf(4).filter((m) => m.plate === 'a#1');
      const noise = gaussian(7, LARGE.noiseMm);
      let right = 0;
      for (let i = 0; i < TRIALS; i++) {
        const when = 1 + (i % 4);
        const readings = marks.map((mark) => {
          const moved = mark.stage >= when ? { x: 0.3, y: 0, turnDeg: 0 } : { x: 0, y: 0, turnDeg: 0 };
          return { mark, offset: offsetOf(mark, moved, noise) };
        });
        if (judgeDrift(readings, LARGE)!.movedIn === when) right++;
      }
      return Promise.resolve({ value: rounded((100 * right) / TRIALS), unit: '%', ok: right >= 0.99 * TRIALS });
    },
  },
  {
    name: 'registration-published',
    wanted: 'Umeyama 1991 within half of its last printed digit',
    measure() {
      const fit = register(UMEYAMA.marks, { scaled: true })!;
      const rad = (fit.turnDeg * Math.PI) / 180;
      const offs = [
        [Math.cos(rad), UMEYAMA.cos, 5e-4],
        [-Math.sin(rad), UMEYAMA.sin, 5e-4],
        [fit.scale, UMEYAMA.scale, 5e-4],
        [fit.shift.x, UMEYAMA.shift.x, 5e-4],
        [fit.shift.y, UMEYAMA.shift.y, 5e-4],
        [fit.meanSquareMm2, UMEYAMA.meanSquare, 5e-4],
      ].map(([found, printed, half]) => Math.abs(found! - printed!) / half!);
      const worst = Math.max(...offs);
      return Promise.resolve({
        value: rounded(worst),
        unit: `of half a digit, worst of ${offs.length} values`,
        ok: worst <= 1,
      });
    },
  },
];

/** Root mean square of what was found less what was so, over the standard error that was foretold. */
function recovered(): { shiftRatio: number; turnRatio: number } {
  const marks = marksOf(1).filter((m) => m.plate === 'a#1');
  const [noise, chance] = [gaussian(1, LARGE.noiseMm), gaussian(2, 1)];
  let [shift2, turn2] = [0, 0];
  let foretold = { shiftMm: NaN, turnDeg: NaN };
  for (let i = 0; i < TRIALS; i++) {
    const moved = { x: 0.3 * chance(), y: 0.3 * chance(), turnDeg: 0.05 * chance() };
    const found = marks.map((mark) => {
      const offset = offsetOf(mark, moved, noise);
      return { at: mark.at, found: { x: mark.at.x + offset.x, y: mark.at.y + offset.y } };
    });
    const fit = register(found, { about: LARGE.plate, noiseMm: LARGE.noiseMm })!;
    foretold = fit.errors!;
    shift2 += ((fit.shift.x - moved.x) ** 2 + (fit.shift.y - moved.y) ** 2) / 2;
    turn2 += (fit.turnDeg - moved.turnDeg) ** 2;
  }
  return {
    shiftRatio: Math.sqrt(shift2 / TRIALS) / foretold.shiftMm,
    turnRatio: Math.sqrt(turn2 / TRIALS) / foretold.turnDeg,
  };
}
