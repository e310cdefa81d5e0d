import { MAPPING_CLAIMS } from './barrel/mapping.ts';
import { REFUSAL_CLAIMS } from './barrel/refusals.ts';
import { SPREAD_CLAIMS } from './barrel/spread.ts';
import { PICTURE_CLAIMS } from './barrel/picture.ts';
import { VIEW_CLAIMS } from './barrel/view.ts';
import { VOLUME_CLAIMS } from './barrel/volumes.ts';
import type { Claim } from './claim.ts';

/** The barrel: true sizes, what lies on it and what does not, and how it is seen. */
export const claims: readonly Claim[] = [
  ...MAPPING_CLAIMS,
  ...REFUSAL_CLAIMS,
  ...VOLUME_CLAIMS,
  ...SPREAD_CLAIMS,
  ...PICTURE_CLAIMS,
  ...VIEW_CLAIMS,
];
