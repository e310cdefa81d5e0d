import type { VersionStep } from './bring-up-to-date.ts';
import { FROM_1_TO_2 } from './from-1-to-2.ts';
import { FROM_2_TO_3 } from './from-2-to-3.ts';
import { FROM_3_TO_4 } from './from-3-to-4.ts';

/** All steps, oldest first; a step once published never changes. */
export const VERSION_STEPS: readonly VersionStep[] = [FROM_1_TO_2, FROM_2_TO_3, FROM_3_TO_4];
