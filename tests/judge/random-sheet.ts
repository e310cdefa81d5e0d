import type { CutPlan } from '../../geometry/cutplan/cut-plan.ts';
import type { CutSettings } from '../../geometry/cutplan/sheet-plan.ts';
import type { NestedSheet, PlacedPlate } from '../../geometry/sheet/sheets.ts';
import { seeded } from './seeded.ts';

export interface PoolPlate {
  readonly id: string;
  readonly diameterMm: number;
  readonly plan: CutPlan;
}

/** A plate with round waste in its middle, in which a smaller one may lie: a ring that masks. */
export function ringPlate(id: string, diameterMm: number, wasteMm: number): PoolPlate {
  const r = wasteMm / 2;
  const contour = [
    { x: r, y: 0, bulge: 1 },
    { x: -r, y: 0, bulge: 1 },
  ];
  const opening = { kind: 'opening', id: 'middle', elementIds: [], word: 'middle/0', isLoose: true, contour } as const;
  const rim = { kind: 'rim', id: 'rim', elementIds: [], diameterMm } as const;
  return {
    id,
    diameterMm,
    plan: { contours: [opening, rim], cuttingLengthMm: Math.PI * (diameterMm + wasteMm), pierces: 2 },
  };
}

export interface RandomSheet {
  readonly sheet: NestedSheet;
  readonly settings: CutSettings;
  readonly plans: ReadonlyMap<string, CutPlan>;
}

/**
 * One to three plates of a pool in a row, turned anyhow, 5 to 12 mm apart, now and then with one in the middle of a
 * ring; kerf, lead-in, slats and head as a seed throws them. The same seed gives the same sheet.
 */
export function randomSheet(seed: number, pool: readonly PoolPlate[]): RandomSheet {
  const random = seeded(seed);
  const plans = new Map<string, CutPlan>();
  const plates: PlacedPlate[] = [];
  const add = (plate: PoolPlate, x: number, y: number, inside?: string) => {
    plans.set(plate.id, plate.plan);
    const id = `${plate.id}#${plates.length + 1}`;
    const turnDeg = random.whole(0, 359);
    const placed = { id, wish: plate.id, diameterMm: plate.diameterMm, x, y, turnDeg, locked: false };
    plates.push(inside === undefined ? placed : { ...placed, inside });
    return id;
  };
  let right = random.between(6, 20);
  let top = 0;
  for (let i = random.whole(1, 2); i > 0; i--) {
    const plate = random.pick(pool);
    const y = random.between(6, 20) + plate.diameterMm / 2;
    add(plate, right + plate.diameterMm / 2, y);
    right += plate.diameterMm + random.between(5, 12);
    top = Math.max(top, y + plate.diameterMm / 2);
  }
  if (random.next() < 0.3) {
    const guest = random.pick(pool);
    const ring = ringPlate('ring', guest.diameterMm + 60, guest.diameterMm + random.between(12, 24));
    const [x, y] = [right + ring.diameterMm / 2, 8 + ring.diameterMm / 2];
    add(guest, x, y, add({ ...ring, id: `ring-${guest.id}` }, x, y));
    right += ring.diameterMm + 8;
    top = Math.max(top, y + ring.diameterMm / 2);
  }
  return {
    plans,
    sheet: { kind: 'seeded', number: seed, widthMm: right + 5, heightMm: top + 8, gone: [], plates, usedShare: 0 },
    settings: {
      kerfMm: random.pick([0.15, 0.3, 0.8]),
      feedMmMin: random.between(1000, 8000),
      pierceS: random.between(0.1, 1),
      accelerationMmS2: 3000,
      rapidMmMin: random.between(10000, 80000),
      cornerMm: 0.05,
      raiseS: random.pick([0.2, 0.5, 1]),
      leadInMm: random.pick([1.5, 3, 5]),
      slats: { pitchMm: random.between(15, 80), edgeMm: random.between(1, 6) },
      coolS: random.between(2, 20),
    },
  };
}
