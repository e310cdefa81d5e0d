/**
 * Beams of rectangular section, loaded out of the sheet's plane, by Euler-Bernoulli: shear is left out and deflections
 * are small. Lengths mm, forces N, moduli MPa (= N/mm2), moments Nmm, angles radians.
 *
 * Sources: Roark's Formulas for Stress and Strain, Table 8.1 (beams) and Table 10.1 case 4 (torsion of a solid
 * rectangle; from memory, held in the tests against Timoshenko's table).
 */

/** Second moment of area of a bar lying flat: width x thickness^3 / 12, mm4. */
export function secondMomentMm4(widthMm: number, thicknessMm: number): number {
  return (widthMm * thicknessMm ** 3) / 12;
}

/** Torsion constant of a solid rectangle, mm4; within 0.5 % of the exact series. Roark, Table 10.1 case 4. */
export function torsionConstantMm4(sideMm: number, otherMm: number): number {
  const a = Math.max(sideMm, otherMm) / 2;
  const b = Math.min(sideMm, otherMm) / 2;
  return a * b ** 3 * (16 / 3 - 3.36 * (b / a) * (1 - b ** 4 / (12 * a ** 4)));
}

/** Torque over greatest shear stress of a solid rectangle, mm3. Roark, Table 10.1 case 4. */
export function torsionModulusMm3(sideMm: number, otherMm: number): number {
  const a = Math.max(sideMm, otherMm) / 2;
  const b = Math.min(sideMm, otherMm) / 2;
  const s = b / a;
  return (8 * a * b ** 2) / (3 * (1 + 0.6095 * s + 0.8865 * s ** 2 - 1.8023 * s ** 3 + 0.91 * s ** 4));
}

/** Bending moment over greatest bending stress of a bar lying flat, mm3. */
export function sectionModulusMm3(widthMm: number, thicknessMm: number): number {
  return (widthMm * thicknessMm ** 2) / 6;
}
