import type { Claim } from './claim.ts';
import { GROWTH_CLAIMS } from './series/growth.ts';
import { TROUBLE_CLAIMS } from './series/trouble.ts';

/** A plate a row: what many rows take, and what becomes of bad rows and of runs that are killed. */
export const claims: readonly Claim[] = [...GROWTH_CLAIMS, ...TROUBLE_CLAIMS];
