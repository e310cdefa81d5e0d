import { describe, expect, it } from 'vitest';
import {
  secondMomentMm4,
  sectionModulusMm3,
  torsionConstantMm4,
  torsionModulusMm3,
} from '../../geometry/measure/beam.ts';
import {
  type Beam,
  greatestStressMPa,
  GROUND,
  groupsOf,
  liftAt,
  motionUnder,
  type Section,
} from '../../geometry/measure/grillage.ts';
import type { Point } from '../../geometry/shapes.ts';
import { builtInMiddleMm, cantileverTip, cantileverTipSpread, guidedTipMm } from './beam-formulas.ts';

describe('beams against published worked examples', () => {
  // Examples 13.1 and 13.6 of a strength-of-materials text as worked in the FOSSEE Scilab companion 3863.
  it('a cantilever of 3 m under 25 kN: 10.71 mm, 0.005357 rad', () => {
    const { mm, slopeRad } = cantileverTip(25_000, 3000, 3000, 2.1e5 * 1e8);
    expect(Math.abs(mm - 10.71)).toBeLessThan(0.005);
    expect(Math.abs(slopeRad - 0.005357)).toBeLessThan(5e-7);
  });

  it('10 N/mm on the outer 2 m of a cantilever of 3 m: 4.833 mm, 0.002167 rad', () => {
    const { mm, slopeRad } = cantileverTipSpread(10, 1000, 3000, 2e5 * 1e8);
    expect(Math.abs(mm - 4.833)).toBeLessThan(0.0005);
    expect(Math.abs(slopeRad - 0.002167)).toBeLessThan(5e-7);
  });

  it('a built-in beam of 6 m under 50 kN: 3.434 mm (textbook example, from memory)', () => {
    expect(Math.abs(builtInMiddleMm(50_000, 6000, 2.1e5 * 78e6) - 3.434)).toBeLessThan(0.0005);
  });

  // Roark, Table 8.1, as engineering references give it: PL3/192EI, PL3/3EI, PL3/12EI, wL4/8EI.
  it('ends as Roark has them: built in at both ends 1/64 of a cantilever, guided a quarter, spread 3/8', () => {
    const cantilever = cantileverTip(7, 900, 900, 4e6).mm;
    expect(builtInMiddleMm(7, 900, 4e6) / cantilever).toBeCloseTo(1 / 64, 12);
    expect(guidedTipMm(7, 900, 4e6) / cantilever).toBeCloseTo(1 / 4, 12);
    expect(cantileverTipSpread(7 / 900, 0, 900, 4e6).mm / cantilever).toBeCloseTo(3 / 8, 12);
  });
});

describe('sections', () => {
  it('of a rectangle', () => {
    expect(secondMomentMm4(6, 2)).toBe(4);
    expect(sectionModulusMm3(6, 2)).toBe(4);
  });

  // Timoshenko and Goodier, Theory of Elasticity, torsion of rectangular bars: sides' ratio, J / b h3, Z / b h2; from memory.
  it.each([
    [1, 0.1406, 0.208],
    [1.5, 0.196, 0.231],
    [2, 0.229, 0.246],
    [3, 0.263, 0.267],
    [5, 0.291, 0.291],
    [10, 0.312, 0.312],
  ])('twist as the table has it, sides 1 : %d', (ratio, constant, modulus) => {
    const [t, w] = [2, 2 * ratio];
    expect(Math.abs(torsionConstantMm4(w, t) / (w * t ** 3) / constant - 1)).toBeLessThan(0.006);
    expect(Math.abs(torsionModulusMm3(w, t) / (w * t ** 2) / modulus - 1)).toBeLessThan(0.01);
    expect(torsionConstantMm4(t, w)).toBe(torsionConstantMm4(w, t));
  });
});

const SECTION: Section = { thicknessMm: 2, youngMPa: 200_000, shearMPa: 77_000 };
const ORIGIN: Point = { x: 0, y: 0 };

function lift(beams: Beam[], centres: Point[], body: number, at: Point, forceN: number, section = SECTION): number {
  const group = groupsOf(centres, beams, section).find(({ bodies }) => bodies.includes(body));
  if (!group) throw new Error('no such body');
  const load = new Float64Array(3 * group.bodies.length);
  const shape = liftAt(at, centres[body]!);
  const first = 3 * group.bodies.indexOf(body);
  shape.forEach((share, i) => (load[first + i] = share * forceN));
  const motion = motionUnder(group, load);
  if (!motion) throw new Error('not held');
  return shape.reduce((sum, share, i) => sum + share * motion[first + i]!, 0);
}

const beam = (from: Point, to: Point, a: number, b: number, widthMm = 3): Beam => ({ from, to, a, b, widthMm });
const ei = SECTION.youngMPa * secondMomentMm4(3, 2);
const gj = SECTION.shearMPa * torsionConstantMm4(3, 2);

describe('a grillage against single beams', () => {
  const spoke = beam({ x: 30, y: 0 }, ORIGIN, GROUND, 0);

  it('one beam is a cantilever; its body turns with its tip', () => {
    const tip = cantileverTip(5, 30, 30, ei);
    expect(lift([spoke], [ORIGIN], 0, ORIGIN, 5)).toBeCloseTo(tip.mm, 9);
    // A force 8 mm past the tip on the rigid body: the cantilever under force and moment.
    const beyond = tip.mm + 2 * tip.slopeRad * 8 + (5 * 8 * 8 * 30) / ei;
    expect(lift([spoke], [ORIGIN], 0, { x: -8, y: 0 }, 5)).toBeCloseTo(beyond, 9);
  });

  it('a force beside the beam twists it by TL/GJ', () => {
    const aside = lift([spoke], [ORIGIN], 0, { x: 0, y: 8 }, 5) - lift([spoke], [ORIGIN], 0, ORIGIN, 5);
    expect(aside).toBeCloseTo((5 * 8 * 8 * 30) / gj, 9);
  });

  it('two opposite beams share the load as guided beams: 12EI/L3 each, and half a built-in beam of twice the length', () => {
    const pair = [spoke, beam(ORIGIN, { x: -30, y: 0 }, 0, GROUND)];
    expect(lift(pair, [ORIGIN], 0, ORIGIN, 5)).toBeCloseTo(guidedTipMm(2.5, 30, ei), 9);
    expect(lift(pair, [ORIGIN], 0, ORIGIN, 5)).toBeCloseTo(builtInMiddleMm(5, 60, ei), 9);
  });

  it('beams in a row add up: a body between two halves of a cantilever changes nothing', () => {
    const centres = [{ x: 12, y: 0 }, ORIGIN];
    const halves = [beam({ x: 30, y: 0 }, centres[0]!, GROUND, 0), beam(centres[0]!, ORIGIN, 0, 1)];
    expect(lift(halves, centres, 1, ORIGIN, 5)).toBeCloseTo(cantileverTip(5, 30, 30, ei).mm, 9);
  });

  it('says stress at the root as M/Z and T/Zt', () => {
    const group = groupsOf([ORIGIN], [spoke], SECTION)[0]!;
    const stress = (load: number[]) =>
      greatestStressMPa(group, motionUnder(group, Float64Array.from(load))!, [ORIGIN], SECTION);
    expect(stress([5, 0, 0])).toBeCloseTo((5 * 30) / sectionModulusMm3(3, 2), 9);
    expect(stress([0, 40, 0])).toBeCloseTo((Math.sqrt(3) * 40) / torsionModulusMm3(3, 2), 9);
  });

  it('refuses what nothing holds', () => {
    expect(() => lift([], [ORIGIN], 0, ORIGIN, 5)).toThrow('not held');
    expect(() => lift([beam(ORIGIN, { x: 9, y: 0 }, 0, 1)], [ORIGIN, { x: 9, y: 0 }], 0, ORIGIN, 5)).toThrow(
      'not held',
    );
  });
});
