import { canonicalJson } from '../../geometry/design/canonical-json.ts';
import type { Design } from '../../geometry/design/schema.ts';
import type { Change } from '../state/history.ts';

/**
 * Takes another design in place of this one (a beginning, an opened file); undo brings the old one back. A beginning
 * brings lettering, not a barrel: given all beginnings, a head that is none of theirs was measured, and stays.
 */
export function beginWith(before: Design, design: Design, beginnings: readonly Design[] = []): Change {
  const own = canonicalJson(before.head);
  const measured = beginnings.length > 0 && beginnings.every(({ head }) => canonicalJson(head) !== own);
  return { design: measured ? { ...design, head: before.head } : design, undo: 'step' };
}
