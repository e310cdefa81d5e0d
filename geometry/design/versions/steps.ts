import type { VersionStep } from '../bring-up-to-date.ts';

/**
 * All steps, oldest first. Version 1 is the first, so there is none yet. When version 2 comes, its step goes into
 * `from-1-to-2.ts` beside this file and is listed here; a step once published never changes.
 */
export const VERSION_STEPS: readonly VersionStep[] = [];
