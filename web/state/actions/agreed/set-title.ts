import type { Design } from '../../../../geometry/design/schema.ts';
import type { Change } from '../../change.ts';

export const LONGEST_TITLE = 120;

/** Names the design; typing is one step. */
export function setTitle(design: Design, title: string): Change {
  return { design: { ...design, title: title.slice(0, LONGEST_TITLE) }, undo: 'merge', about: 'title' };
}
