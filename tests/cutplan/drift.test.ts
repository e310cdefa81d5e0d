import { describe, expect, it } from 'vitest';
import { type DriftWishes, judgeDrift } from '../../geometry/cutplan/drift/judge-drift.ts';
import { offsetNoiseMm, offsetOfWidths, widthsAgree } from '../../geometry/cutplan/drift/read-offset.ts';
import { moveBy, register } from '../../geometry/cutplan/drift/registration.ts';
import { gaussian, LARGE, marksOf, type Moved, offsetOf } from './drift-set-up.ts';

const of = (marks: ReturnType<typeof marksOf>) => marks.filter((m) => m.plate === 'a#1');
const judged = (moved: Moved, wishes: DriftWishes = LARGE) =>
  judgeDrift(
    of(marksOf(1)).map((mark) => ({ mark, offset: offsetOf(mark, moved) })),
    wishes,
  )!;

describe('registration', () => {
  it('gives back a move with scale to the last digits', () => {
    const move = { about: { x: 40, y: -9 }, shift: { x: 0.4, y: -1.1 }, turnDeg: 3, scale: 1.002 };
    const marks = [
      [0, 0],
      [900, 20],
      [400, 700],
    ].map(([x, y]) => ({ at: { x: x!, y: y! }, found: moveBy(move, { x: x!, y: y! }) }));
    const fit = register(marks, { about: move.about, scaled: true })!;
    expect(fit.shift.x).toBeCloseTo(move.shift.x, 9);
    expect(fit.shift.y).toBeCloseTo(move.shift.y, 9);
    expect(fit.turnDeg).toBeCloseTo(3, 9);
    expect(fit.scale).toBeCloseTo(1.002, 12);
    // Left out, a pure scale s leaves radius * |s - 1| at each mark about their middle.
    expect(
      register(marks)!
        .residuals.map((r) => Math.hypot(r.x, r.y))
        .every((r) => r > 0.5),
    ).toBe(true);
  });
  it('needs two places', () => {
    const at = { x: 1, y: 2 };
    expect(register([{ at, found: at }])).toBeUndefined();
    expect(
      register([
        { at, found: at },
        { at, found: { x: 3, y: 3 } },
      ]),
    ).toBeUndefined();
  });
});

describe('drift', () => {
  it('passes what stayed, fails what moved, and says when it cannot tell (ISO 14253-1)', () => {
    const still = judged({ x: 0, y: 0, turnDeg: 0 });
    expect(still).toMatchObject({ verdict: 'pass', doubtful: [] });
    expect(still.movedIn).toBeUndefined();
    expect(judged({ x: 0.5, y: 0, turnDeg: 0 })).toMatchObject({ verdict: 'fail', movedIn: 1 });
    // Just under the limit, by less than the measuring may err.
    expect(judged({ x: 0.34, y: 0, turnDeg: 0 }).verdict).toBe('unproven');
    expect(judged({ x: 0.34, y: 0, turnDeg: 0 }, { ...LARGE, noiseMm: 0.001 }).verdict).toBe('pass');
    expect(judged({ x: 0.36, y: 0, turnDeg: 0 }).verdict).toBe('unproven');
  });
  it('sees a turn that leaves the middle where it was', () => {
    // 0.1 degrees at 254 mm from the middle: 2 * 254 * sin(0.05 degrees) = 0.443 mm.
    const report = judged({ x: 0, y: 0, turnDeg: 0.1 });
    expect(report.stages[0]!.movedMm).toBeCloseTo(0.4433, 4);
    expect(report.verdict).toBe('fail');
    expect(report.sentences[0]!.english).toContain('0.44 mm');
  });
  it('says in which stage it happened', () => {
    const noise = gaussian(3, LARGE.noiseMm);
    const readings = of(marksOf(4)).map((mark) => {
      const moved = { x: mark.stage >= 3 ? 0.6 : 0, y: 0, turnDeg: 0 };
      return { mark, offset: offsetOf(mark, moved, noise) };
    });
    const report = judgeDrift(readings, LARGE)!;
    expect(report.movedIn).toBe(3);
    expect(report.sentences.map((s) => s.key)).toContain('drift.movedIn');
  });
  it('knows no turn from one mark, and nothing from none', () => {
    const [mark] = of(marksOf(1));
    const report = judgeDrift([{ mark: mark!, offset: { x: 0.1, y: 0 } }], LARGE)!;
    expect(report.stages[0]!.turnDeg).toBeUndefined();
    expect(report.sentences.map((s) => s.key)).toContain('drift.turnUnknown');
    expect(judgeDrift([], LARGE)).toBeUndefined();
  });
});

describe('a reading', () => {
  it('is half the difference of the widths', () => {
    // The small circle lies 0.2 to the right and 0.1 up: wider on the left and below.
    const offset = offsetOfWidths({ left: 3.2, right: 2.8, above: 2.9, below: 3.1 });
    expect(offset.x).toBeCloseTo(0.2, 12);
    expect(offset.y).toBeCloseTo(0.1, 12);
  });
  it('is what a calliper finds on a ring that is drawn, to the square of the offset', () => {
    const [inner, outer, dx, dy] = [2, 5, 0.23, -0.14];
    // Widest reach of the small circle to each side, and the large edge on the same line.
    const edge = (off: number) => Math.sqrt(outer * outer - off * off);
    const widths = {
      left: edge(dy) + dx - inner,
      right: edge(dy) - dx - inner,
      above: edge(dx) - dy - inner,
      below: edge(dx) + dy - inner,
    };
    const offset = offsetOfWidths(widths);
    expect(offset.x).toBeCloseTo(dx, 9);
    expect(offset.y).toBeCloseTo(dy, 9);
    expect(widthsAgree(widths, 0.02)).toBe(true);
    // 3.2 read as 3.7: a slip of a whole division.
    expect(widthsAgree({ ...widths, left: widths.left + 0.5 }, 0.02)).toBe(false);
  });
  it('is as uncertain as thousands of readings with that noise are', () => {
    const noise = gaussian(7, 0.02);
    const off = Array.from({ length: 4000 }, () => {
      const [left, right, above, below] = [3 + noise(), 3 + noise(), 3, 3];
      return offsetOfWidths({ left, right, above, below }).x;
    });
    const spread = Math.sqrt(off.reduce((sum, x) => sum + x * x, 0) / off.length);
    expect(spread / offsetNoiseMm(0.02)).toBeGreaterThan(0.96);
    expect(spread / offsetNoiseMm(0.02)).toBeLessThan(1.04);
  });
});
