import { COMMON_PRACTICE, type Sourced } from './sourced.ts';

/** Above this, kg, one person holds a plate over a barrel badly. */
export const HEAVY_KG: Sourced = { value: 8, source: COMMON_PRACTICE };

/** Mass of flat sheet in kg: area (mm2) x thickness (mm) x density (kg/m3). */
export function sheetMassKg(areaMm2: number, thicknessMm: number, densityKgM3: number): number {
  return areaMm2 * thicknessMm * densityKgM3 * 1e-9;
}
