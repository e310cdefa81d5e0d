/**
 * Radius in mm of the sphere of which a crowned head is a cap, from its diameter and the height of its middle above
 * its edge: (c^2 + a^2) / 2c with a half the diameter (chord and sagitta). Infinity for a flat head.
 */
export function crownRadiusMm(headDiameterMm: number, crownMm: number): number {
  const c = Math.abs(crownMm);
  if (c === 0) return Infinity;
  const a = headDiameterMm / 2;
  return (c * c + a * a) / (2 * c);
}

/** Sagitta in mm of an arc of the given radius over the given chord: r - sqrt(r^2 - (chord/2)^2). */
export function sagittaMm(radiusMm: number, chordMm: number): number {
  if (!Number.isFinite(radiusMm)) return 0;
  const half = Math.min(chordMm / 2, radiusMm);
  // The same as the formula above, without the difference of two nearly equal numbers.
  return (half * half) / (radiusMm + Math.sqrt(radiusMm * radiusMm - half * half));
}

/**
 * Greatest gap in mm between a flat round plate laid centred on the head and the wood: under the plate's edge where
 * the head bulges (crown above 0), under its middle where the head is hollow (crown below 0).
 */
export function crownGapMm(headDiameterMm: number, crownMm: number, plateDiameterMm: number): number {
  return sagittaMm(crownRadiusMm(headDiameterMm, crownMm), Math.min(plateDiameterMm, headDiameterMm));
}
