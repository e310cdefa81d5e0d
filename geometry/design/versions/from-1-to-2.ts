import type { VersionStep } from './bring-up-to-date.ts';

/**
 * Version 2 brings motifs, artwork, elements that stand fast, and texts that fill an extent by their size. A design of
 * version 1 has none of them and means the same as before.
 */
export const FROM_1_TO_2: VersionStep = { from: 1, step: (old) => old };
