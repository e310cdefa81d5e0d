import type { VersionStep } from './bring-up-to-date.ts';

/**
 * Version 4 brings offers, and approvals that bind one. An approval of version 3 has none and goes on binding the
 * drawing only.
 */
export const FROM_3_TO_4: VersionStep = { from: 3, step: (old) => old };
