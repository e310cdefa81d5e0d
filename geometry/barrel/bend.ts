/**
 * Strain of the outer fibre, as a share, of a sheet rolled to an inside radius: (t / 2) / (r + t / 2), plane sections
 * staying plane (Euler-Bernoulli).
 */
export function bendStrain(insideRadiusMm: number, thicknessMm: number): number {
  return thicknessMm / 2 / (insideRadiusMm + thicknessMm / 2);
}

/** Least inside radius a sheet may be rolled to without breaking or buckling, in thicknesses. */
export interface LeastBend {
  readonly thicknesses: number;
  readonly source: string;
}

const METAL = 'common practice, no source; ask the mill for the temper at hand';

/** By material id (geometry/stock/materials.ts); a material that is not listed can't be rolled here. */
const LEAST_BENDS: Readonly<Record<string, LeastBend>> = {
  'stainless-304': { thicknesses: 1, source: METAL },
  'stainless-316': { thicknesses: 1, source: METAL },
  'stainless-430': { thicknesses: 1, source: METAL },
  'mild-steel': { thicknesses: 1, source: METAL },
  'aluminium-5052': { thicknesses: 1.5, source: METAL },
  'aluminium-6061': { thicknesses: 4, source: METAL },
  polycarbonate: {
    thicknesses: 100,
    source: 'from memory: makers advise 100 thicknesses for sheet that stays bent cold',
  },
  'pet-film': { thicknesses: 20, source: 'common practice, no source' },
  hdpe: { thicknesses: 50, source: 'common practice, no source' },
  'birch-plywood': { thicknesses: 100, source: 'common practice, no source: across the face grain; along it more' },
};

/** Least inside radius in mm for a sheet, or undefined for a material that nobody here knows how to roll. */
export function leastBendRadiusMm(material: string, thicknessMm: number): number | undefined {
  const least = LEAST_BENDS[material];
  return least && least.thicknesses * thicknessMm;
}
