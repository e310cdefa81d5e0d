import type { Design } from '../../geometry/design/schema.ts';
import type { UndoPolicy } from './history.ts';

/** What an action hands back: the design as it shall be, and what undo makes of it. */
export interface Change {
  readonly design: Design;
  readonly undo: UndoPolicy;
  /** What a merging change is about, such as `text:ring-1`. */
  readonly about?: string;
}
