import type { DriftWishes } from '../../geometry/cutplan/drift/judge-drift.ts';
import { placeWitness, type WitnessMark } from '../../geometry/cutplan/drift/witness.ts';
import { seeded } from '../judge/seeded.ts';
import type { NestedSheet, PlacedPlate } from '../../geometry/sheet/sheets.ts';

export const WISHES = { kerfMm: 0.2, leastWebMm: 1.5, leastOpeningMm: 0.6, leadInMm: 3, edgeMm: 10 };

/** Two plates of 508 mm and one of 254 mm on a sheet of 1250 by 1250 mm. */
export function sheetOfThree(): NestedSheet {
  const plate = (id: string, diameterMm: number, x: number, y: number): PlacedPlate => ({
    id,
    wish: id,
    diameterMm,
    x,
    y,
    turnDeg: 0,
    locked: false,
  });
  const plates = [plate('a#1', 508, 300, 300), plate('a#2', 508, 880, 320), plate('b#1', 254, 300, 800)];
  const gone = [{ x: 1000, y: 1000, radiusMm: 150 }];
  return { kind: 'rack', number: 1, widthMm: 1250, heightMm: 1250, gone, plates, usedShare: 0 };
}

export function marksOf(stages: number): WitnessMark[] {
  return [...placeWitness(sheetOfThree(), { ...WISHES, stages }).marks];
}

/** The large plate at the lower left; ISO 9013 class 1 allows 0.35 mm of 508 mm in sheet of 1.5 mm. */
export const LARGE: DriftWishes = { plate: { x: 300, y: 300, diameterMm: 508 }, limitMm: 0.35, noiseMm: 0.02 };

/** A sheet that shifted by so much at the middle of the plate and turned about it, counter-clockwise. */
export interface Moved {
  readonly x: number;
  readonly y: number;
  readonly turnDeg: number;
}

/** Offset of a mark of a sheet that moved, by plain trigonometry: nothing of ours takes part. */
export function offsetOf(mark: WitnessMark, moved: Moved, noise: () => number = () => 0) {
  const rad = (moved.turnDeg * Math.PI) / 180;
  const [dx, dy] = [mark.at.x - LARGE.plate.x, mark.at.y - LARGE.plate.y];
  return {
    x: dx * Math.cos(rad) - dy * Math.sin(rad) - dx + moved.x + noise(),
    y: dx * Math.sin(rad) + dy * Math.cos(rad) - dy + moved.y + noise(),
  };
}

/** Gaussian noise from a seed (Box-Muller). */
export function gaussian(seed: number, sigma: number): () => number {
  const random = seeded(seed);
  return () => sigma * Math.sqrt(-2 * Math.log(1 - random.next())) * Math.cos(2 * Math.PI * random.next());
}
