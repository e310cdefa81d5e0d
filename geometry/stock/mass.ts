import { M3_PER_MM3 } from '../units.ts';

/** Mass of flat sheet in kg: area (mm2) x thickness (mm) x density (kg/m3). */
export function sheetMassKg(areaMm2: number, thicknessMm: number, densityKgM3: number): number {
  return areaMm2 * thicknessMm * densityKgM3 * M3_PER_MM3;
}
