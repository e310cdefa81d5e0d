import type { VersionStep } from './bring-up-to-date.ts';

/**
 * Version 3 brings options to choose among, findings that somebody accepted, and revisions that are kept; an approval
 * says its moment and how it was given. One of version 2 was typed in from paper.
 */
export const FROM_2_TO_3: VersionStep = {
  from: 2,
  step: (old) => {
    const { approval } = old;
    if (typeof approval !== 'object' || approval === null) return old;
    const { date, ...rest } = approval as Record<string, unknown>;
    return { ...old, approval: { ...rest, at: date, how: 'paper' } };
  },
};
