import type { UndoPolicy } from '../../history.ts';

/**
 * Numbers are typed, digit by digit, and so are one step; words such as `fit` or `inward` are chosen, each a step.
 * Takes the part of the design that an action sets.
 */
export function typedOrChosen(part: object): UndoPolicy {
  return Object.values(part).some((value) => typeof value === 'string') ? 'step' : 'merge';
}
