/**
 * What undo makes of a change.
 * step: one step of its own. merge: one step with the change before, when both are about the same thing
 * (typing in one field, one drag). none: not recorded (what was saved is read back at the start).
 */
export type UndoPolicy = 'step' | 'merge' | 'none';

/** Everything that undo and redo can bring back: of the design being worked on, or of plates moved on their sheets. */
export interface History<T> {
  readonly past: readonly T[];
  readonly present: T;
  readonly future: readonly T[];
  /** What the change last recorded was about, while more of its kind may still join it. */
  readonly open: string | undefined;
}

/** Documents are plain data that share their unchanged parts: many steps cost little. */
const MOST_STEPS = 500;

export function startHistory<T>(present: T): History<T> {
  return { past: [], present, future: [], open: undefined };
}

/** Takes the next state in. The very same state as before leaves no step behind. */
export function record<T>(history: History<T>, next: T, undo: UndoPolicy = 'step', topic = ''): History<T> {
  if (next === history.present) return history;
  if (undo === 'none') return { ...history, present: next, open: undefined };
  const open = undo === 'merge' ? topic : undefined;
  if (open !== undefined && open === history.open) return { ...history, present: next, future: [] };
  return { past: [...history.past, history.present].slice(-MOST_STEPS), present: next, future: [], open };
}

/** Ends the run of merging changes: the next one is a step of its own. */
export function closeMerge<T>(history: History<T>): History<T> {
  return history.open === undefined ? history : { ...history, open: undefined };
}

export function stepBack<T>(history: History<T>): History<T> {
  const last = history.past.at(-1);
  if (last === undefined) return history;
  return {
    past: history.past.slice(0, -1),
    present: last,
    future: [history.present, ...history.future],
    open: undefined,
  };
}

export function stepForward<T>(history: History<T>): History<T> {
  const [next, ...rest] = history.future;
  if (next === undefined) return history;
  return { past: [...history.past, history.present], present: next, future: rest, open: undefined };
}
