import type { Claim } from './claim.ts';
import { SERVER_CLAIMS } from './guard/server.ts';

/** Nothing that comes from outside stops the page or the server, and nothing stands for something else. */
export const claims: readonly Claim[] = [...SERVER_CLAIMS];
