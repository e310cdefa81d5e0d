import { LAW_CLAIMS } from './bridges/laws.ts';
import { LEGIBLE_CLAIMS } from './bridges/legible.ts';
import { LOOKS_CLAIMS } from './bridges/looks.ts';
import { SPEED_CLAIMS } from './bridges/speed.ts';
import { STRENGTH_CLAIMS } from './bridges/strength.ts';
import { SWEEP_CLAIMS } from './bridges/sweep.ts';
import type { Claim } from './claim.ts';

/** Bridges: do they hold, can the letter be read, do they suit it, do they keep to it, how fast. */
export const claims: readonly Claim[] = [
  ...SWEEP_CLAIMS,
  ...LEGIBLE_CLAIMS,
  ...LOOKS_CLAIMS,
  ...LAW_CLAIMS,
  ...STRENGTH_CLAIMS,
  ...SPEED_CLAIMS,
];
