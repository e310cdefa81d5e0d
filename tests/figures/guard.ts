import type { Claim } from './claim.ts';
import { CLIPPING_CLAIMS } from './guard/clipping-libraries.ts';
import { FAULT_CLAIMS } from './guard/faults.ts';
import { FONT_CLAIMS } from './guard/font-libraries.ts';
import { MUTANT_CLAIMS } from './guard/mutants.ts';
import { READER_CLAIMS } from './guard/readers.ts';
import { TWIN_CLAIMS } from './guard/twins.ts';
import { SERVER_CLAIMS } from './guard/server.ts';

/** Nothing that comes from outside stops the page or the server, and nothing stands for something else. */
export const claims: readonly Claim[] = [
  ...READER_CLAIMS,
  ...FAULT_CLAIMS,
  ...SERVER_CLAIMS,
  ...TWIN_CLAIMS,
  ...MUTANT_CLAIMS,
  ...CLIPPING_CLAIMS,
  ...FONT_CLAIMS,
];
