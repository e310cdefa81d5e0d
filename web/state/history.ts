import type { Design } from '../../geometry/design/schema.ts';

/**
 * What an action hands back: the design as it shall be, and what undo makes of it.
 * step: one step of its own. merge: one step with the change before, when both are about the same thing
 * (typing in one field, one drag). none: not recorded (what was saved is read back at the start).
 */
export type UndoPolicy = 'step' | 'merge' | 'none';

export interface Change {
  readonly design: Design;
  readonly undo: UndoPolicy;
  /** What a merging change is about, such as `text:ring-1`. */
  readonly about?: string;
}

export interface History {
  readonly past: readonly Design[];
  readonly present: Design;
  readonly future: readonly Design[];
  /** What the change last recorded was about, while more of its kind may still join it. */
  readonly open: string | undefined;
}

/** Designs are plain data that share their unchanged parts: many steps cost little. */
const MOST_STEPS = 500;

export function startHistory(design: Design): History {
  return { past: [], present: design, future: [], open: undefined };
}

/** Takes a change in; a change that changes nothing leaves no step behind. */
export function record(history: History, change: Change): History {
  if (change.design === history.present) return history;
  if (change.undo === 'none') return { ...history, present: change.design, open: undefined };
  const about = change.undo === 'merge' ? (change.about ?? '') : undefined;
  if (about !== undefined && about === history.open) return { ...history, present: change.design, future: [] };
  return {
    past: [...history.past, history.present].slice(-MOST_STEPS),
    present: change.design,
    future: [],
    open: about,
  };
}

/** Ends the run of merging changes: the next one is a step of its own. */
export function closeMerge(history: History): History {
  return history.open === undefined ? history : { ...history, open: undefined };
}

export function stepBack(history: History): History {
  const last = history.past.at(-1);
  if (last === undefined) return history;
  return {
    past: history.past.slice(0, -1),
    present: last,
    future: [history.present, ...history.future],
    open: undefined,
  };
}

export function stepForward(history: History): History {
  const [next, ...rest] = history.future;
  if (next === undefined) return history;
  return { past: [...history.past, history.present], present: next, future: rest, open: undefined };
}
