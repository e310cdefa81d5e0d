import type { Claim } from './claim.ts';

/** The cut: sheets, paths, heat and slugs, drift, time and price. One file of claims in cut/ for each. */
export const claims: readonly Claim[] = [];
