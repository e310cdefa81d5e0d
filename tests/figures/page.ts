import type { Claim } from './claim.ts';
import { BUNDLE_CLAIMS } from './page/bundle.ts';
import { HOSTILE_CLAIMS } from './page/hostile.ts';
import { LINK_CLAIMS } from './page/link.ts';
import { STAGE_CLAIMS } from './page/stage.ts';

/** The page: what it costs to open, how it moves, what it can be handed on as. */
export const claims: readonly Claim[] = [...BUNDLE_CLAIMS, ...LINK_CLAIMS, ...HOSTILE_CLAIMS, ...STAGE_CLAIMS];
