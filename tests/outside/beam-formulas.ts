/**
 * Deflections of single beams in closed form, to hold the kernel's grillage against: Euler-Bernoulli, small deflections.
 * Lengths mm, forces N, bending stiffness (E times I) Nmm2, angles radians. Roark's Formulas for Stress and Strain.
 */

/** What a beam does at one place. */
export interface Sway {
  readonly mm: number;
  readonly slopeRad: number;
}

/** Free end of a cantilever under a force at `at` mm from the built-in end (the end itself: at = length). */
export function cantileverTip(forceN: number, at: number, lengthMm: number, bendingNmm2: number): Sway {
  const slopeRad = (forceN * at ** 2) / (2 * bendingNmm2);
  return { mm: (forceN * at ** 3) / (3 * bendingNmm2) + slopeRad * (lengthMm - at), slopeRad };
}

/** Free end of a cantilever under a load of forceNPerMm from `from` mm off the built-in end to the free end. */
export function cantileverTipSpread(forceNPerMm: number, from: number, lengthMm: number, bendingNmm2: number): Sway {
  // The integral of cantileverTip over the loaded length.
  const [l, a, k] = [lengthMm, from, forceNPerMm / bendingNmm2];
  return {
    mm: k * ((l * (l ** 3 - a ** 3)) / 6 - (l ** 4 - a ** 4) / 24),
    slopeRad: (k * (l ** 3 - a ** 3)) / 6,
  };
}

/** Middle of a beam built in at both ends under a force there. Roark, Table 8.1 case 1d. */
export function builtInMiddleMm(forceN: number, lengthMm: number, bendingNmm2: number): number {
  return (forceN * lengthMm ** 3) / (192 * bendingNmm2);
}

/** Tip of a beam built in at one end whose other end moves but cannot turn. Roark, Table 8.1 case 1b: PL3/12EI. */
export function guidedTipMm(forceN: number, lengthMm: number, bendingNmm2: number): number {
  return (forceN * lengthMm ** 3) / (12 * bendingNmm2);
}
