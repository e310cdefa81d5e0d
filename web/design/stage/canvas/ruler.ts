import type { Opening } from '../../../../geometry/bridges/types.ts';
import { regionHolds, ringBox } from '../../../../geometry/measure/ring.ts';
import { MM_PER_INCH } from '../../../../geometry/units.ts';

/** Ticks along a radius. Pure. */
export interface Tick {
  readonly mm: number;
  /** Words at the labelled ticks only. */
  readonly label: string | undefined;
}

export type Units = 'mm' | 'inch';

const STEPS: Record<Units, readonly number[]> = {
  mm: [1, 2, 5, 10, 20, 50, 100, 200, 500],
  inch: [0.125, 0.25, 0.5, 1, 2, 4, 8, 16],
};

/** From the centre out to the radius: a tick at least every 7 px, a number at least every 44 px, on round figures. */
export function radiusTicks(radiusMm: number, units: Units, pxPerMm: number): Tick[] {
  const unitMm = units === 'mm' ? 1 : MM_PER_INCH;
  const small = stepFor(units, unitMm * pxPerMm, 7);
  const large = STEPS[units].find((s) => s * unitMm * pxPerMm >= 44 && s >= small) ?? lastStep(units);
  const ticks: Tick[] = [];
  for (let n = 1; n * small * unitMm <= radiusMm; n++) {
    const value = n * small;
    const whole = Math.abs(value / large - Math.round(value / large)) < small / large / 4;
    ticks.push({ mm: value * unitMm, label: whole ? String(value) : undefined });
  }
  return ticks;
}

/** True when a figure of that half width, standing so high on the radius at three o'clock, falls on metal only. */
export function isBare(openings: readonly Opening[], xMm: number, halfWidthMm: number, heightMm: number): boolean {
  const near = openings.filter(({ region }) => {
    const box = ringBox(region.outer);
    return box.minX <= xMm + halfWidthMm && box.maxX >= xMm - halfWidthMm && box.minY <= heightMm && box.maxY >= 0;
  });
  for (let i = -3; i <= 3; i++) {
    for (let j = 0; j <= 2; j++) {
      const p = { x: xMm + (i / 3) * halfWidthMm, y: (j / 2) * heightMm };
      if (near.some((o) => regionHolds(o.region, p))) return false;
    }
  }
  return true;
}

function stepFor(units: Units, pxPerUnit: number, leastPx: number): number {
  return STEPS[units].find((s) => s * pxPerUnit >= leastPx) ?? lastStep(units);
}

function lastStep(units: Units): number {
  return STEPS[units].at(-1) ?? 1;
}
