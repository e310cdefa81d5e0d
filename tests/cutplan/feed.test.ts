import { describe, expect, it } from 'vitest';
import { closeRun } from '../../geometry/cutplan/contour-walk.ts';
import { mmAt, type Motion, secondsAt, timeRun } from '../../geometry/cutplan/cost/feed.ts';
import { runLengthMm } from '../../geometry/cutplan/contour-walk.ts';
import { timePlan } from '../../geometry/cutplan/cost/time-plan.ts';
import type { CutPass, CutSettings, Run, SheetPlan } from '../../geometry/cutplan/sheet-plan.ts';
import { inChords, inParts, straightS } from './run-time.ts';

const LASER: Motion = { feedMmMin: 12_000, accelerationMmS2: 8000, cornerMm: 0.05 };
const at = (x: number, y: number, bulge = 0) => ({ x, y, bulge });
const SQUARE: Run = [at(0, 0), at(30, 0), at(30, 30), at(0, 30), at(0, 0)];
const circle = (r: number) => closeRun([at(r, 0, 1), at(-r, 0, 1)]);
/** A stadium with one sharp corner, lines and arcs of several sizes. */
const MIXED: Run = [
  at(0, 0),
  at(40, 0, 1),
  at(40, 12),
  at(25, 12, -0.4),
  at(15, 12),
  at(0, 30),
  at(0, 5, 0.4142),
  at(0, 0),
];

describe('a straight run', () => {
  it.each([0.01, 1, 4.999, 5, 5.001, 20, 1000])('of %f mm takes what the closed formula says', (mm) => {
    expect(timeRun([at(0, 0), at(mm, 0)], LASER).seconds).toBeCloseTo(straightS(mm, LASER), 12);
  });

  it('of nothing takes no time', () => {
    expect(timeRun([], LASER).seconds).toBe(0);
    expect(timeRun([at(1, 1), at(1, 1)], LASER).seconds).toBe(0);
  });
});

describe('corners and arcs', () => {
  it('a corner that may not be cut short is a stop', () => {
    const { seconds } = timeRun(SQUARE, { ...LASER, cornerMm: 0 });
    expect(seconds).toBeCloseTo(4 * straightS(30, LASER), 12);
  });

  it('passes a square corner at the speed of the arc that cuts it short', () => {
    // r (sqrt 2 - 1) = 0.05: an arc that touches both sides of a right angle and passes its corner at 0.05 mm.
    const r = 0.05 / (Math.SQRT2 - 1);
    const [corner] = timeRun(SQUARE, LASER).moments.filter((m) => Math.abs(m.mm - 30) < 1e-9);
    expect(corner?.speed).toBeCloseTo(Math.sqrt(8000 * r), 9);
  });

  it('a turn on the spot is a stop, and no limit is no slowing', () => {
    const back = timeRun([at(0, 0), at(50, 0), at(0, 0)], LASER);
    expect(back.seconds).toBeCloseTo(2 * straightS(50, LASER), 12);
    const on = timeRun([at(0, 0), at(20, 0), at(50, 0)], LASER);
    expect(on.seconds).toBeCloseTo(straightS(50, LASER), 12);
  });

  it.each([0.2, 2, 4.9, 50])('runs a circle of %f mm no faster than v^2 / r allows', (r) => {
    const v = Math.min(200, Math.sqrt(8000 * r));
    const timed = timeRun(circle(r), LASER);
    expect(timed.lengthMm).toBeCloseTo(2 * Math.PI * r, 9);
    expect(Math.max(...timed.moments.map((m) => m.speed))).toBeLessThanOrEqual(v + 1e-9);
    expect(timed.seconds).toBeCloseTo(straightS(2 * Math.PI * r, { ...LASER, feedMmMin: v * 60 }), 9);
  });

  it('never breaks its own limits', () => {
    const { moments } = timeRun(MIXED, LASER);
    for (let i = 1; i < moments.length; i++) {
      const [a, b] = [moments[i - 1]!, moments[i]!];
      expect(b.speed).toBeLessThanOrEqual(200 + 1e-9);
      expect(Math.abs(b.speed - a.speed)).toBeLessThanOrEqual(8000 * (b.s - a.s) + 1e-9);
      expect(b.mm - a.mm).toBeCloseTo(((a.speed + b.speed) / 2) * (b.s - a.s), 9);
    }
    expect(moments.at(-1)?.speed).toBe(0);
  });
});

describe('finer steps', () => {
  it('in parts that run on as one take the same time', () => {
    for (const run of [SQUARE, circle(3), MIXED]) {
      expect(timeRun(inParts(run, 10), LASER).seconds).toBeCloseTo(timeRun(run, LASER).seconds, 6);
    }
  });

  it('as chords take the time of the arcs, the nearer the finer', () => {
    for (const run of [circle(0.8), circle(3), circle(40), MIXED]) {
      const whole = timeRun(run, LASER).seconds;
      for (const step of [0.2, 0.02]) {
        expect(Math.abs(timeRun(inChords(run, step), LASER).seconds / whole - 1)).toBeLessThan(0.01);
      }
    }
  });
});

describe('where the head is', () => {
  it('begins at nothing, ends at the length, never goes back and never jumps', () => {
    const timed = timeRun(MIXED, LASER);
    let last = 0;
    for (let i = 0; i <= 500; i++) {
      const mm = mmAt(timed, (timed.seconds * i) / 500);
      expect(mm).toBeGreaterThanOrEqual(last - 1e-9);
      expect(mm - last).toBeLessThanOrEqual((200 * timed.seconds) / 500 + 1e-9);
      last = mm;
    }
    expect(mmAt(timed, 0)).toBe(0);
    expect(last).toBeCloseTo(runLengthMm(MIXED), 9);
    expect(mmAt(timed, 99)).toBe(timed.lengthMm);
    for (let i = 0; i <= 500; i++) {
      const mm = (timed.lengthMm * i) / 500;
      expect(mmAt(timed, secondsAt(timed, mm))).toBeCloseTo(mm, 7);
    }
  });
});

const SETTINGS: CutSettings = {
  ...LASER,
  kerfMm: 0.2,
  pierceS: 0.3,
  rapidMmMin: 60_000,
  raiseS: 0.5,
  leadInMm: 2,
  slats: { pitchMm: 30, edgeMm: 3 },
  coolS: 8,
};

describe('a sheet', () => {
  const pass = (id: string, more: Partial<CutPass> = {}): CutPass => ({
    id,
    kind: 'opening',
    plate: 'p#1',
    word: '',
    net: [],
    path: SQUARE.slice(0, -1),
    pierce: { x: -2, y: 0 },
    leadIn: [at(-2, 0), at(0, 0)],
    after: [],
    ...more,
  });
  const plan = (passes: CutPass[], raised: boolean): SheetPlan => ({
    widthMm: 100,
    heightMm: 100,
    passes,
    rapids: passes.map((p, i) => ({
      from: passes[i - 1]?.id ?? '',
      to: p.id,
      way: [
        { x: 0, y: 0 },
        { x: 60, y: 0 },
      ],
      raised,
    })),
    cuttingMm: 0,
    rapidMm: 0,
    slugs: [],
    notes: [],
  });

  it('is the sum of its ways, lifts, pierces and cuts', () => {
    const time = timePlan(plan([pass('a'), pass('b')], true), SETTINGS);
    const rapid = straightS(60, { ...LASER, feedMmMin: 60_000 });
    // The lead-in runs on into the first side as one: 32 + 30 + 30 + 30 mm with three corners.
    const cut = timeRun([at(-2, 0), ...SQUARE.slice(1)], LASER).seconds;
    expect(time).toMatchObject({ raiseS: 1, pierceS: 0.6 });
    expect(time.rapidS).toBeCloseTo(2 * rapid, 9);
    expect(time.cutS).toBeCloseTo(2 * cut, 9);
    expect(time.totalS).toBeCloseTo(2 * (rapid + cut + 0.8), 9);
    expect(time.passes[1]?.fromS).toBeCloseTo(time.totalS / 2, 9);
    expect(timePlan(plan([pass('a')], false), SETTINGS).raiseS).toBe(0);
  });

  it('stops at a tab and pierces again behind it', () => {
    const tabbed = timePlan(
      plan([pass('a', { tabsMm: [{ fromMm: 10, toMm: 11, leadIn: [at(10, 1), at(11, 0)] }] })], false),
      SETTINGS,
    );
    const whole = timePlan(plan([pass('a')], false), SETTINGS);
    expect(tabbed.pierceS).toBe(0.6);
    const { moments } = tabbed.passes[0]!.cut;
    expect(moments.filter((m) => m.speed === 0).map((m) => m.mm)).toEqual([0, 12, 13, 122]);
    expect(tabbed.cutS).toBeGreaterThan(whole.cutS);
  });
});
