import { describe, expect, it } from 'vitest';
import { sequenceOpenings } from '../../geometry/cutplan/plate/cutting-sequence.ts';
import type { OpeningContour } from '../../geometry/cutplan/cut-plan.ts';
import { planCuts } from '../../geometry/cutplan/plate/plan-cuts.ts';
import { circleRing, handPlate } from '../files/hand-plate.ts';

const at = (id: string, word: string, x: number, y = 0): OpeningContour => ({
  kind: 'opening',
  id,
  elementIds: [],
  word,
  contour: [{ x, y, bulge: 1 }],
});

describe('planCuts', () => {
  it('cuts every opening once and the rim last', () => {
    const plate = handPlate(400);
    const plan = planCuts(plate);
    expect(plan.contours.map((c) => c.id).sort()).toEqual([...plate.openings.map((o) => o.id), 'rim'].sort());
    expect(plan.contours.at(-1)).toEqual({ kind: 'rim', id: 'rim', elementIds: [], diameterMm: 400 });
    expect(plan.pierces).toBe(plate.openings.length + 1);
  });

  it('finishes a word before the next', () => {
    const words = planCuts(handPlate(400)).contours.flatMap((c) => (c.kind === 'opening' ? [c.word] : []));
    const begun = words.filter((word, i) => word !== words[i - 1]);
    expect(begun.length).toBe(new Set(words).size);
  });

  it('goes to the nearest next word, and within it to the nearest next opening', () => {
    const openings = [at('a1', 'a', 50), at('a2', 'a', 20), at('b1', 'b', 10), at('b2', 'b', 90)].map((c) => [c]);
    expect(sequenceOpenings(openings, { x: 0, y: 0 }).map((c) => c.id)).toEqual(['b1', 'b2', 'a1', 'a2']);
  });

  it('cuts a hole in an opening before what is around it', () => {
    const plate = handPlate(400);
    const hole = [...circleRing(0, 0, 5)].reverse();
    const ring = { id: 'ring', elementIds: ['e'], word: 'e/0', region: { outer: circleRing(0, 0, 20), holes: [hole] } };
    const plan = planCuts({ ...plate, openings: [ring] });
    expect(plan.contours.map((c) => c.id)).toEqual(['ring/hole1', 'ring', 'rim']);
  });

  it('adds up all cuts, the rim included', () => {
    const plate = { ...handPlate(200), openings: handPlate(200).openings.slice(0, 1) };
    // One bead of radius 3 mm and the rim.
    expect(planCuts(plate).cuttingLengthMm).toBeCloseTo(2 * Math.PI * 3 + Math.PI * 200, 2);
  });

  it('plans a plate with nothing to cut but its rim', () => {
    const plan = planCuts({ ...handPlate(200), openings: [] });
    expect(plan.contours.map((c) => c.kind)).toEqual(['rim']);
  });
});
