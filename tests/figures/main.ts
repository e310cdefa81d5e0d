import type { Claim } from './claim.ts';
import { ARC_CLAIMS } from './main/arcs.ts';
import { BAD_INPUT_CLAIMS } from './main/bad-input.ts';
import { COUNTED_CLAIMS } from './main/counted.ts';
import { FILE_CLAIMS } from './main/files.ts';
import { JUDGED_CLAIMS } from './main/judged.ts';
import { SPEED_CLAIMS } from './main/speed.ts';

/** From a typed name to a bridged plate, a cut file and a page. */
export const claims: readonly Claim[] = [
  ...JUDGED_CLAIMS,
  ...FILE_CLAIMS,
  ...ARC_CLAIMS,
  ...BAD_INPUT_CLAIMS,
  ...COUNTED_CLAIMS,
  ...SPEED_CLAIMS,
];
